package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Weights. */
public final class WeightColumns {
    private static final Limit MASS_KG = new Limit(0, 0.1, "kg");
    private static final Limit POSITION_MM = new Limit(-130, 130, "mm");
    private static final String ORIGIN = ", mm from the centre of gravity of the head with its ports empty.";

    public static final Column KIT = Column.of(Column.Kind.TEXT, "Kit", "Your name for the kit, on each of its rows.")
            .mustBeFilled();
    public static final Column WEIGHTING = Column.of(
                    Column.Kind.MARK,
                    "Weighting",
                    "Your name for this way to fill the ports: one row for every port that holds a piece.")
            .mustBeFilled();
    public static final Column PORT = Column.of(Column.Kind.MARK, "Port", "The port, only once in a weighting.")
            .mustBeFilled();
    public static final Column MASS = Column.number(
                    "Mass",
                    Quantity.MASS,
                    MASS_KG,
                    "Mass of the piece in this port in grams, 0 where the port stays empty.")
            .mustBeFilled();
    public static final Column X =
            position("X", "Where the piece sits: toward the target" + ORIGIN + " Back is negative.");
    public static final Column Y = position(
            "Y",
            "Where the piece sits: toward the golfer (the heel side, right- or left-handed)" + ORIGIN
                    + " The toe side is negative.");
    public static final Column Z = position("Z", "Where the piece sits: upward" + ORIGIN + " Below is negative.");

    public static final SheetSchema SHEET = new SheetSchema(
            "Weights",
            "One row per port of a weighting. A weighting is one way to fill the ports of a head; a kit is all the"
                    + " weightings that heads with these ports may have.",
            List.of(KIT, WEIGHTING, PORT, MASS, X, Y, Z),
            List.of(KIT));

    private WeightColumns() {}

    private static Column position(String header, String help) {
        return Column.number(header, Quantity.SMALL_LENGTH, POSITION_MM, help).ifBlank("0, with a message");
    }
}
