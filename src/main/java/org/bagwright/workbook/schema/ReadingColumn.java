package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;

/** The columns of the sheet Readings. */
public enum ReadingColumn implements SheetColumn {
    GOLFER(ColumnSpec.of(Kind.GOLFER, "Golfer", "The club's golfer, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one")),
    CLUB(ColumnSpec.of(Kind.TEXT, "Club", "The club, as on the sheet Clubs.").mustBeFilled()),
    SETTING(ColumnSpec.of(Kind.MARK, "Setting", "The setting at which it was read: the mark, as on the sheet Sleeves.")
            .ifBlank("only for a club without a sleeve")
            .alsoCalled("Sleeve setting", "Read at", "Measured at")),
    LOFT(ColumnSpec.angle("Loft", Limit.LOFT_DEG, "The loft the gauge read, with today's bend, degrees.")
            .ifBlank("not read")
            .alsoCalled("Static loft", "Gauge loft", "Measured loft", "Loft reading")),
    LIE(ColumnSpec.angle("Lie", Limit.LIE_DEG, "The lie the gauge read, with today's bend, degrees.")
            .ifBlank("not read")
            .alsoCalled("Static lie", "Gauge lie", "Measured lie", "Lie reading")),
    FACE(ColumnSpec.angle(
                    "Face",
                    Limit.FACE_DEG,
                    "Face angle as read with the head soled as designed, degrees, closed is positive.")
            .ifBlank("not read")
            .alsoCalled("Clubface", "Gauge face", "Measured face", "Face reading"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Readings",
            "One row per reading of a loft-and-lie gauge: loft, lie or both. Read a club in settings far apart on the"
                    + " clock, some of them twice. bagwright gauge shows what the readings mean.",
            List.of(values()),
            List.of(GOLFER, CLUB));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    ReadingColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }
}
