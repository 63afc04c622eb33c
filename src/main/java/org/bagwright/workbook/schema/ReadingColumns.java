package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Readings. */
public final class ReadingColumns {
    public static final Column GOLFER = Column.of(Column.Kind.GOLFER, "Golfer", "The club's golfer, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one");
    public static final Column CLUB = Column.of(Column.Kind.TEXT, "Club", "The club, as on the sheet Clubs.")
            .mustBeFilled();
    public static final Column SETTING = Column.of(
                    Column.Kind.MARK, "Setting", "The setting at which it was read: the mark, as on the sheet Sleeves.")
            .ifBlank("only for a club without a sleeve");
    public static final Column LOFT = angle(
                    "Loft", Limit.LOFT_DEG, "The loft the gauge read, with today's bend, degrees.")
            .ifBlank("not read");
    public static final Column LIE = angle("Lie", Limit.LIE_DEG, "The lie the gauge read, with today's bend, degrees.")
            .ifBlank("not read");
    public static final Column FACE = angle(
                    "Face",
                    Limit.FACE_DEG,
                    "Face angle as read with the head soled as designed, degrees, closed is positive.")
            .ifBlank("not read");

    public static final SheetSchema SHEET = new SheetSchema(
            "Readings",
            "One row per reading of a loft-and-lie gauge: loft, lie or both. Read a club in settings far apart on the"
                    + " clock, some of them twice. bagwright gauge shows what the readings mean.",
            List.of(GOLFER, CLUB, SETTING, LOFT, LIE, FACE),
            List.of(GOLFER, CLUB));

    private ReadingColumns() {}

    private static Column angle(String header, Limit limit, String help) {
        return Column.number(header, Quantity.ANGLE, limit, help);
    }
}
