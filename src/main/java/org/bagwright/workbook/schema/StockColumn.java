package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;

/** The columns of the sheet Stock. */
public enum StockColumn implements SheetColumn {
    ITEM(ColumnSpec.of(
                    Kind.TEXT,
                    "Item",
                    "What is on the bench: a piece by its kit and mass, such as Kit: 12 g (or 12 g for that mass in"
                            + " any kit), a sleeve by its name, or a head by its club's name.")
            .mustBeFilled()
            .alsoCalled("Part", "Piece", "Article")),
    COUNT(ColumnSpec.whole(
                    "Count",
                    new Limit(0, 10000, ""),
                    "How many are on the bench, without those in the clubs today. All golfers of the book"
                            + " share them, and whatever comes out of their clubs.")
            .mustBeFilled()
            .alsoCalled("Number", "Quantity", "Qty", "Amount", "In stock"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Stock",
            "One row per kind of piece, sleeve or head that is limited. What is not listed is never short.",
            List.of(values()),
            List.of(ITEM));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    StockColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }
}
