package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Clubs. */
public final class ClubColumns {
    static final int MOST_SLOTS = 20;
    private static final Limit HEAD_MASS_KG = new Limit(0.1, 0.7, "kg");
    private static final Limit SOLE_RADIUS_MM = new Limit(10, 5000, "mm");
    private static final Limit CG_HEIGHT_MM = new Limit(5, 60, "mm");
    private static final Limit CG_DEPTH_MM = new Limit(0.5, 80, "mm");
    private static final Limit HEAD_INERTIA_KG_M2 = new Limit(1e-6, 6e-3, "kg m2");
    private static final Limit SHAFT_MASS_KG = new Limit(0.02, 0.25, "kg");
    private static final Limit SHAFT_BALANCE_M = new Limit(0.15, 1, "m");
    private static final Limit GRIP_MASS_KG = new Limit(0, 0.25, "kg");

    public static final Column GOLFER = Column.of(Column.Kind.GOLFER, "Golfer", "The club's golfer, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one");
    public static final Column SLOT = Column.whole(
                    "Slot", new Limit(1, MOST_SLOTS, ""), "The place in the bag: 1 is the longest club, then 2, 3, ...")
            .mustBeFilled();
    public static final Column CLUB =
            Column.of(Column.Kind.TEXT, "Club", "Your name for the club.").mustBeFilled();
    public static final Column KIND = Column.of(
                    Column.Kind.CHOICE, "Kind", "driver, wood (or fairway), hybrid, iron, wedge or putter.")
            .offering("driver", "wood", "hybrid", "iron", "wedge", "putter")
            .mustBeFilled();
    public static final Column LOFT =
            angle("Loft", Limit.LOFT_DEG, "The loft your gauge reads, degrees.").mustBeFilled();
    public static final Column LIE =
            angle("Lie", Limit.LIE_DEG, "The lie your gauge reads, degrees.").mustBeFilled();
    public static final Column FACE = angle(
                    "Face", Limit.FACE_DEG, "Face angle of the head soled as designed, degrees, closed is positive.")
            .ifBlank("0");
    public static final Column STATED_AT = Column.of(
                    Column.Kind.MARK, "Stated at", "With a sleeve: the setting at which Loft, Lie and Face were read.")
            .ifBlank("on the bore, without the sleeve's bend");
    public static final Column LENGTH = Column.number(
                    "Length", Quantity.LENGTH, Limit.CLUB_LENGTH_M, "Club length, in the unit of the sheet Start.")
            .ifBlank("assumed from kind and loft");
    public static final Column SLEEVE = Column.of(Column.Kind.SLEEVE, "Sleeve", "The sleeve, as on the sheet Sleeves.")
            .ifBlank("a glued shaft");
    public static final Column SETTING = Column.of(
                    Column.Kind.MARK, "Setting", "Today's setting: the mark, as on the sheet Sleeves.")
            .ifBlank("only for a club without a sleeve");
    public static final Column LOFT_BEND = angle(
                    "Loft bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the loft is bent today from Loft, degrees, weaker is positive.")
            .ifBlank("0");
    public static final Column LIE_BEND = angle(
                    "Lie bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the lie is bent today from Lie, degrees, more upright is positive.")
            .ifBlank("0");
    public static final Column KIT = Column.of(
                    Column.Kind.KIT, "Kit", "The kit of weights that fits the head, as on the sheet Weights.")
            .ifBlank("a head without ports, unless Weighting names the kit");
    public static final Column WEIGHTING = Column.of(
                    Column.Kind.MARK,
                    "Weighting",
                    "The weighting in the head today, as on the sheet Weights. Where Kit is blank, write it with"
                            + " its kit, as Kit: weighting.")
            .ifBlank("no kit, or the only weighting of the kit");
    public static final Column IN_BAG = Column.yesNo(
                    "In bag",
                    "yes: the club is in the bag today. no: it might take the slot. Write one row for every"
                            + " club that might fill a slot, with the same number in Slot. A slot whose rows all say no"
                            + " is empty today.")
            .ifBlank("yes for the first row of a slot, unless another row of it says yes; no for the others");
    public static final Column PINNED = Column.yesNo(
                    "Pinned", "yes: the club stays exactly as this row says. In its slot, the plan takes this row.")
            .ifBlank("no");
    public static final Column OPTIONAL = Column.yesNo(
                    "Optional", "yes: the slot may stay empty. Yes on one of its rows is enough.")
            .ifBlank("no");
    public static final Column ALLOWED = Column.of(
                    Column.Kind.MARKS, "Allowed", "The settings a plan may use, separated by commas.")
            .ifBlank("all settings of the sleeve");
    public static final Column BEND_LIMIT = angle(
                    "Bend limit",
                    new Limit(0, Limit.HOSEL_BEND_DEG.mostMeasureUnits(), "degrees"),
                    "Irons and wedges: the most a plan may bend loft or lie, degrees either way from Loft and Lie.")
            .ifBlank("0, no bending");
    public static final Column BEND_STEP = angle(
                    "Bend step", new Limit(0.05, 8, "degrees"), "The steps in which bends are planned, degrees.")
            .ifBlank("0.5");
    public static final Column LOFT_TARGET =
            angle("Loft target", Limit.LOFT_DEG, "The gauge loft the club should have, degrees.");
    public static final Column LIE_TARGET = angle("Lie target", Limit.LIE_DEG, "The lie the club should have, degrees.")
            .ifBlank("the golfer's lie with this club");
    public static final Column CARRY_TARGET = Column.number(
            "Carry target", Quantity.DISTANCE, Limit.CARRY_M, "The carry the club should have, in the unit of Start.");
    public static final Column GAP_WISH = Column.number(
                    "Gap wish",
                    Quantity.DISTANCE,
                    GolferColumns.GAP_M,
                    "The carry gap wanted to the next club, in the unit of the sheet Start.")
            .ifBlank("the golfer's gap wish");
    public static final Column SWINGWEIGHT_TARGET = Column.of(
            Column.Kind.MARK,
            "Swingweight target",
            "The swingweight the club should have: a letter and points, such as D2 or C9.5.");
    public static final Column GOLFER_LIE = angle(
                    "Golfer lie", Limit.LIE_DEG, "The lie at which the golfer holds the shaft with this club, degrees.")
            .ifBlank("the lie target, or the club's lie");
    public static final Column HEAD_MASS = Column.number(
                    "Head mass", Quantity.MASS, HEAD_MASS_KG, "Mass of the head in grams, with any ports empty.")
            .ifBlank("assumed from kind and length");
    public static final Column SOLE_RADIUS = Column.number(
                    "Sole radius",
                    Quantity.SMALL_LENGTH,
                    SOLE_RADIUS_MM,
                    "Radius of the sole in mm, from front to back. Two numbers, such as 200/250: front to back, heel to"
                            + " toe. With one number, heel to toe is 1.25 times that.")
            .as(Column.Kind.NUMBER_OR_WORD)
            .ifBlank("assumed from the kind");
    public static final Column CG_HEIGHT = Column.number(
                    "CG height",
                    Quantity.SMALL_LENGTH,
                    CG_HEIGHT_MM,
                    "Height of the centre of gravity above the sole, mm.")
            .ifBlank("assumed from the kind");
    public static final Column CG_DEPTH = Column.number(
                    "CG depth",
                    Quantity.SMALL_LENGTH,
                    CG_DEPTH_MM,
                    "Depth of the centre of gravity behind the face, mm, with any ports empty.")
            .ifBlank("assumed from the kind");
    public static final Column HEAD_INERTIA = Column.number(
                    "Head inertia",
                    Quantity.INERTIA,
                    HEAD_INERTIA_KG_M2,
                    "Inertia of the head about the vertical axis through its centre of gravity, g cm2, with any"
                            + " ports empty.")
            .ifBlank("assumed from the kind");
    public static final Column SWINGWEIGHT = Column.of(
                    Column.Kind.MARK,
                    "Swingweight",
                    "The swingweight read on a scale, with the club exactly as in this row: a letter and points, such"
                            + " as D2 or C9.5.")
            .ifBlank("worked out from length, head, shaft and grip");
    public static final Column SHAFT_MASS = Column.number(
                    "Shaft mass", Quantity.MASS, SHAFT_MASS_KG, "Mass of the cut shaft in grams.")
            .ifBlank("assumed from kind and length");
    public static final Column SHAFT_BALANCE = Column.number(
                    "Shaft balance",
                    Quantity.LENGTH,
                    SHAFT_BALANCE_M,
                    "Balance point of the cut shaft, measured from its butt end, in the length unit of Start.")
            .ifBlank("assumed from the length");
    public static final Column GRIP_MASS = Column.number(
                    "Grip mass", Quantity.MASS, GRIP_MASS_KG, "Mass of the grip in grams.")
            .ifBlank("assumed from the kind");
    public static final Column NOTE = Column.of(Column.Kind.TEXT, "Note", "Your own notes. Bagwright does not read them.");

    private static final List<Column> COLUMNS = List.of(
            GOLFER,
            SLOT,
            CLUB,
            KIND,
            LOFT,
            LIE,
            FACE,
            STATED_AT,
            LENGTH,
            SLEEVE,
            SETTING,
            LOFT_BEND,
            LIE_BEND,
            KIT,
            WEIGHTING,
            IN_BAG,
            PINNED,
            OPTIONAL,
            ALLOWED,
            BEND_LIMIT,
            BEND_STEP,
            LOFT_TARGET,
            LIE_TARGET,
            CARRY_TARGET,
            GAP_WISH,
            SWINGWEIGHT_TARGET,
            GOLFER_LIE,
            HEAD_MASS,
            SOLE_RADIUS,
            CG_HEIGHT,
            CG_DEPTH,
            HEAD_INERTIA,
            SWINGWEIGHT,
            SHAFT_MASS,
            SHAFT_BALANCE,
            GRIP_MASS,
            NOTE);

    public static final SheetSchema SHEET = new SheetSchema(
            "Clubs",
            "One row per club as it is today, or per club that might fill its slot. Fill in at least Slot, Club, Kind,"
                    + " Loft and Lie; with an adjustable sleeve also Stated at, Sleeve and Setting.",
            COLUMNS,
            List.of(GOLFER, CLUB));

    private ClubColumns() {}

    private static Column angle(String header, Limit limit, String help) {
        return Column.number(header, Quantity.ANGLE, limit, help);
    }
}
