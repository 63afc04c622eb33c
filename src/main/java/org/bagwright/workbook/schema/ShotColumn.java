package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Shots. */
public enum ShotColumn implements SheetColumn {
    GOLFER(ColumnSpec.of(Kind.GOLFER, "Golfer", "Who hit it, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one")),
    CLUB(ColumnSpec.of(Kind.TEXT, "Club", "The club, as on the sheet Clubs.").mustBeFilled()),
    DATE(ColumnSpec.date("Date", "The day on which it was hit, such as 2026-05-31.")
            .ifBlank("not known")
            .alsoCalled("Day", "Shot date", "Session date")),
    SETTING(ColumnSpec.of(Kind.MARK, "Setting", "The setting of the sleeve with which it was hit: the mark.")
            .ifBlank("as today")
            .alsoCalled("Sleeve setting", "Hit at")),
    WEIGHTING(ColumnSpec.of(Kind.MARK, "Weighting", "The weighting that was in the head.")
            .ifBlank("as today")
            .alsoCalled("Weight setting")),
    LOFT_BEND(ColumnSpec.angle(
                    "Loft bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the loft was bent from Loft on the sheet Clubs, degrees, weaker is"
                            + " positive.")
            .ifBlank("as today")
            .alsoCalled("Bent loft")),
    LIE_BEND(ColumnSpec.angle(
                    "Lie bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the lie was bent from Lie on the sheet Clubs, degrees, more upright is"
                            + " positive.")
            .ifBlank("as today")
            .alsoCalled("Bent lie")),
    LENGTH(ColumnSpec.number(
                    "Length",
                    Quantity.LENGTH,
                    Limit.CLUB_LENGTH_M,
                    "The length that the club had, in the length unit of the sheet Start.")
            .ifBlank("as today")
            .alsoCalled("Club length")),
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
    SIDE(ColumnSpec.number(
                    "Side",
                    Quantity.DISTANCE,
                    new Limit(-200, 200, "m"),
                    "How far off the target line it came down, in the unit of Carry, right is positive.")
            .alsoCalled("Offline", "Off line", "Side carry", "Carry side")),
    LANDING(ColumnSpec.angle("Landing", new Limit(0, 90, "degrees"), "The angle at which it came down, degrees.")
            .alsoCalled("Landing angle", "Descent angle", "Angle of descent")),
    SHOTS(ColumnSpec.whole("Shots", new Limit(1, 1000, ""), "How many shots the row is the average of, a whole number.")
            .ifBlank("1")
            .alsoCalled("Shots averaged", "Shot count")),
    SPREAD(ColumnSpec.number(
                    "Spread",
                    Quantity.DISTANCE,
                    new Limit(0, 150, "m"),
                    "The standard deviation of the carries of these shots, in the unit of Carry.")
            .ifBlank("not known")
            .alsoCalled("Carry spread", "Standard deviation", "Carry deviation")),
    USE(ColumnSpec.yesNo("Use", "yes: the shot counts. no: the row is kept in the book but not read.")
            .ifBlank("yes"));

    /** A shot must have at least one of these. */
    public static final List<Column> MEASURED = List.of(BALL_SPEED, LAUNCH, SPIN, CARRY);

    /** How the club was set up. */
    public static final List<Column> SETUP = List.of(SETTING, WEIGHTING, LOFT_BEND, LIE_BEND, LENGTH);

    public static final SheetSchema SHEET = new SheetSchema(
            "Shots",
            "One row per shot, or per average of shots, with the set-up that it was hit with. Fill in what you measured:"
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
