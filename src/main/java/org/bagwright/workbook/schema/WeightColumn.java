package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Weights. */
public enum WeightColumn implements SheetColumn {
    KIT(ColumnSpec.of(Kind.TEXT, "Kit", "Your name for the kit, on each of its rows.")
            .mustBeFilled()
            .alsoCalled("Weight kit")),
    WEIGHTING(ColumnSpec.of(
                    Kind.MARK,
                    "Weighting",
                    "Your name for this way to fill the ports: one row for every port that holds a piece.")
            .mustBeFilled()
            .alsoCalled("Weight setting")),
    PORT(ColumnSpec.of(Kind.MARK, "Port", "The port, only once in a weighting.")
            .mustBeFilled()
            .alsoCalled("Weight port")),
    MASS(ColumnSpec.number(
                    "Mass",
                    Quantity.MASS,
                    new Limit(0, 0.1, "kg"),
                    "Mass of the piece in this port in grams, 0 where the port stays empty.")
            .mustBeFilled()
            .alsoCalled("Piece mass")),
    X(position("X", "toward the target", "Back")),
    Y(position("Y", "toward the golfer (the heel side, right- or left-handed)", "The toe side")),
    Z(position("Z", "upward", "Below"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Weights",
            "One row per port of a weighting. A weighting is one way to fill the ports of a head; a kit is all the"
                    + " weightings that heads with these ports may have.",
            List.of(values()),
            List.of(KIT));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    WeightColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }

    private static ColumnSpec position(String header, String way, String otherWay) {
        String help = "Where the piece sits: " + way
                + ", mm from the centre of gravity of the head with its ports empty. " + otherWay + " is negative.";
        return ColumnSpec.number(header, Quantity.SMALL_LENGTH, new Limit(-130, 130, "mm"), help)
                .ifBlank("0, with a message");
    }
}
