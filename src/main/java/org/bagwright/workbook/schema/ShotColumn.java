package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Shots. */
public enum ShotColumn implements SheetColumn {
    GOLFER(ColumnSpec.of(Kind.GOLFER, "Golfer", "Who hit it, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one")),
    CLUB(ColumnSpec.of(Kind.TEXT, "Club", "The club, as on the sheet Clubs.").mustBeFilled()),
    HEAD_SPEED(ColumnSpec.number(
                    "Head speed", Quantity.SPEED, Limit.HEAD_SPEED_MPS, "Head speed, in the unit of the sheet Start.")
            .ifBlank("the golfer's head speed")
            .alsoCalled("Club speed", "Club head speed", "Swing speed")),
    BALL_SPEED(ColumnSpec.number(
                    "Ball speed", Quantity.SPEED, Limit.BALL_SPEED_MPS, "Ball speed, in the unit of the sheet Start.")
            .alsoCalled("Ball")),
    LAUNCH(ColumnSpec.angle("Launch", Limit.LAUNCH_DEG, "Launch angle above the ground, degrees.")
            .alsoCalled("Vertical launch", "Launch vertical")),
    SPIN(ColumnSpec.number("Spin", Quantity.SPIN, Limit.SPIN_RPM, "Backspin, rpm.")
            .alsoCalled("Backspin")),
    ATTACK(ColumnSpec.angle("Attack", Limit.ATTACK_DEG, "Angle of attack, degrees, upward is positive.")
            .ifBlank("assumed from the kind of club")
            .alsoCalled("AoA")),
    CARRY(ColumnSpec.number("Carry", Quantity.DISTANCE, Limit.CARRY_M, "Carry, in the unit of the sheet Start.")),
    USE(ColumnSpec.yesNo("Use", "yes: the shot counts. no: the row is kept in the book but not read.")
            .ifBlank("yes"));

    /** A shot must have at least one of these. */
    public static final List<Column> MEASURED = List.of(BALL_SPEED, LAUNCH, SPIN, CARRY);

    public static final SheetSchema SHEET = new SheetSchema(
            "Shots",
            "One row per shot, or per average of shots, hit with the club as it is today. Fill in what you measured:"
                    + " at least one of Ball speed, Launch, Spin and Carry.",
            List.of(values()),
            List.of(GOLFER, CLUB));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    ShotColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }
}
