package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;

/** The sheet Stock. */
public final class StockColumns {
    private static final Limit PIECES = new Limit(0, 10000, "");

    public static final Column ITEM = Column.of(
                    Column.Kind.TEXT,
                    "Item",
                    "What is on the bench: a piece by its kit and mass, such as Kit: 12 g (or 12 g for that mass in"
                            + " any kit), a sleeve by its name, or a head by its club's name.")
            .mustBeFilled();
    public static final Column COUNT = Column.whole(
                    "Count",
                    PIECES,
                    "How many are on the bench, without those in the clubs today. All golfers of the book"
                            + " share them, and whatever comes out of their clubs.")
            .mustBeFilled();

    public static final SheetSchema SHEET = new SheetSchema(
            "Stock",
            "One row per kind of piece, sleeve or head that is limited. What is not listed is never short.",
            List.of(ITEM, COUNT),
            List.of(ITEM));

    private StockColumns() {}
}
