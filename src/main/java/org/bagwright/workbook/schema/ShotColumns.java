package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Shots. */
public final class ShotColumns {
    public static final Column GOLFER = Column.of(Column.Kind.GOLFER, "Golfer", "Who hit it, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one");
    public static final Column CLUB = Column.of(Column.Kind.TEXT, "Club", "The club, as on the sheet Clubs.")
            .mustBeFilled();
    public static final Column HEAD_SPEED = Column.number(
                    "Head speed", Quantity.SPEED, Limit.HEAD_SPEED_MPS, "Head speed, in the unit of the sheet Start.")
            .ifBlank("the golfer's head speed");
    public static final Column BALL_SPEED = Column.number(
            "Ball speed", Quantity.SPEED, Limit.BALL_SPEED_MPS, "Ball speed, in the unit of the sheet Start.");
    public static final Column LAUNCH =
            Column.number("Launch", Quantity.ANGLE, Limit.LAUNCH_DEG, "Launch angle above the ground, degrees.");
    public static final Column SPIN = Column.number("Spin", Quantity.SPIN, Limit.SPIN_RPM, "Backspin, rpm.");
    public static final Column ATTACK = Column.number(
                    "Attack", Quantity.ANGLE, Limit.ATTACK_DEG, "Angle of attack, degrees, upward is positive.")
            .ifBlank("assumed from the kind of club");
    public static final Column CARRY =
            Column.number("Carry", Quantity.DISTANCE, Limit.CARRY_M, "Carry, in the unit of the sheet Start.");

    /** A shot says something only when one of these is given. */
    public static final List<Column> TELLING = List.of(BALL_SPEED, LAUNCH, SPIN, CARRY);

    public static final SheetSchema SHEET = new SheetSchema(
            "Shots",
            "One row per shot, or per average of shots, hit with the club as it is today. Fill in what you measured:"
                    + " at least one of Ball speed, Launch, Spin and Carry.",
            List.of(GOLFER, CLUB, HEAD_SPEED, BALL_SPEED, LAUNCH, SPIN, ATTACK, CARRY),
            List.of(GOLFER, CLUB));

    private ShotColumns() {}
}
