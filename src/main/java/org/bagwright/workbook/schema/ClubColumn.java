package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Clubs. */
public enum ClubColumn implements SheetColumn {
    GOLFER(ColumnSpec.of(Kind.GOLFER, "Golfer", "The club's golfer, as on the sheet Golfers.")
            .ifBlank("the golfer, if the book has only one")),
    SLOT(ColumnSpec.whole("Slot", new Limit(1, 20, ""), "The place in the bag: 1 is the longest club, then 2, 3, ...")
            .mustBeFilled()
            .alsoCalled("Slot number", "Slot no", "Bag slot")),
    CLUB(ColumnSpec.of(Kind.TEXT, "Club", "Your name for the club.")
            .mustBeFilled()
            .alsoCalled("Name")),
    KIND(ColumnSpec.of(Kind.CHOICE, "Kind", "driver, wood (or fairway), hybrid (or rescue), iron, wedge or putter.")
            .offering("driver", "wood", "hybrid", "iron", "wedge", "putter")
            .mustBeFilled()
            .alsoCalled("Type", "Club type", "Club kind", "Category")),
    LOFT(ColumnSpec.angle("Loft", Limit.LOFT_DEG, "The loft your gauge reads, degrees.")
            .mustBeFilled()
            .alsoCalled("Static loft", "Gauge loft", "Measured loft", "Loft reading")),
    LIE(ColumnSpec.angle("Lie", Limit.LIE_DEG, "The lie your gauge reads, degrees.")
            .mustBeFilled()
            .alsoCalled("Static lie", "Gauge lie", "Measured lie", "Lie reading")),
    FACE(ColumnSpec.angle(
                    "Face", Limit.FACE_DEG, "Face angle of the head soled as designed, degrees, closed is positive.")
            .ifBlank("0")
            .alsoCalled("Clubface", "Gauge face", "Measured face")),
    STATED_AT(ColumnSpec.of(Kind.MARK, "Stated at", "With a sleeve: the setting at which Loft, Lie and Face were read.")
            .ifBlank("on the bore, without the sleeve's bend")
            .alsoCalled("Measured at", "Read at", "Loft stated at", "Loft measured at", "Loft read at")),
    LENGTH(ColumnSpec.number(
                    "Length", Quantity.LENGTH, Limit.CLUB_LENGTH_M, "Club length, in the unit of the sheet Start.")
            .ifBlank("assumed from kind and loft")
            .alsoCalled("Club length", "Playing length", "Overall length")),
    SLEEVE(ColumnSpec.of(Kind.SLEEVE, "Sleeve", "The sleeve, as on the sheet Sleeves.")
            .ifBlank("a glued shaft")
            .alsoCalled("Hosel sleeve", "Shaft sleeve")),
    SETTING(ColumnSpec.of(Kind.MARK, "Setting", "Today's setting: the mark, as on the sheet Sleeves.")
            .ifBlank("only for a club without a sleeve")
            .alsoCalled("Sleeve setting", "Present setting")),
    LOFT_BEND(ColumnSpec.angle(
                    "Loft bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the loft is bent today from Loft, degrees, weaker is positive.")
            .ifBlank("0")
            .alsoCalled("Bent loft")),
    LIE_BEND(ColumnSpec.angle(
                    "Lie bend",
                    Limit.HOSEL_BEND_DEG,
                    "Irons and wedges: how far the lie is bent today from Lie, degrees, more upright is positive.")
            .ifBlank("0")
            .alsoCalled("Bent lie")),
    KIT(ColumnSpec.of(Kind.KIT, "Kit", "The kit of weights that fits the head, as on the sheet Weights.")
            .ifBlank("a head without ports, unless Weighting names the kit")
            .alsoCalled("Weight kit")),
    WEIGHTING(ColumnSpec.of(
                    Kind.MARK,
                    "Weighting",
                    "The weighting in the head today, as on the sheet Weights. Where Kit is blank, write it with"
                            + " its kit, as Kit: weighting.")
            .ifBlank("no kit, or the only weighting of the kit")
            .alsoCalled("Weight setting", "Present weighting")),
    IN_BAG(ColumnSpec.yesNo(
                    "In bag",
                    "yes: the club is in the bag today. no: it might take the slot. Write one row for every"
                            + " club that might fill a slot, with the same number in Slot. A slot whose rows all say no"
                            + " is empty today.")
            .ifBlank("yes for the first row of a slot, unless another row of it says yes; no for the others")
            .alsoCalled("In the bag", "Bagged")),
    PINNED(ColumnSpec.yesNo(
                    "Pinned", "yes: the club stays exactly as this row says. In its slot, the plan takes this row.")
            .ifBlank("no")
            .alsoCalled("Pin", "Fixed", "Keep")),
    OPTIONAL(ColumnSpec.yesNo("Optional", "yes: the slot may stay empty. Yes on one of its rows is enough.")
            .ifBlank("no")
            .alsoCalled("May be left out", "Can be left out")),
    ALLOWED(ColumnSpec.of(
                    Kind.MARKS, "Allowed", "The settings a plan may use, separated by commas, or a range such as 1-4.")
            .ifBlank("all settings of the sleeve")
            .alsoCalled("Allowed setting", "Settings allowed")),
    BEND_LIMIT(ColumnSpec.angle(
                    "Bend limit",
                    new Limit(0, Limit.HOSEL_BEND_DEG.mostMeasureUnits(), "degrees"),
                    "Irons and wedges: the most a plan may bend loft or lie, degrees either way from Loft and Lie.")
            .ifBlank("0, no bending")
            .alsoCalled("Most bend")),
    BEND_STEP(ColumnSpec.angle(
                    "Bend step", new Limit(0.05, 8, "degrees"), "The steps in which bends are planned, degrees.")
            .ifBlank("0.5")
            .alsoCalled("Step of bend")),
    LOFT_TARGET(ColumnSpec.angle("Loft target", Limit.LOFT_DEG, "The gauge loft the club should have, degrees.")),
    LIE_TARGET(ColumnSpec.angle("Lie target", Limit.LIE_DEG, "The lie the club should have, degrees.")
            .ifBlank("the golfer's lie with this club")),
    CARRY_TARGET(ColumnSpec.number(
            "Carry target", Quantity.DISTANCE, Limit.CARRY_M, "The carry the club should have, in the unit of Start.")),
    GAP_WISH(ColumnSpec.number(
                    "Gap wish",
                    Quantity.DISTANCE,
                    GolferColumn.gapM(),
                    "The carry gap wanted to the next club, in the unit of the sheet Start.")
            .ifBlank("the golfer's gap wish")),
    SWINGWEIGHT_TARGET(ColumnSpec.of(
                    Kind.MARK,
                    "Swingweight target",
                    "The swingweight the club should have: a letter and points, such as D2 or C9.5.")
            .alsoCalled("SW target")),
    GOLFER_LIE(ColumnSpec.angle(
                    "Golfer lie", Limit.LIE_DEG, "The lie at which the golfer holds the shaft with this club, degrees.")
            .ifBlank("the lie target, or the club's lie")
            .alsoCalled("Address lie", "Lie at address")),
    HEAD_MASS(ColumnSpec.number(
                    "Head mass",
                    Quantity.MASS,
                    new Limit(0.1, 0.7, "kg"),
                    "Mass of the head in grams, with any ports empty.")
            .ifBlank("assumed from kind and length")),
    SOLE_RADIUS(ColumnSpec.number(
                    "Sole radius",
                    Quantity.SMALL_LENGTH,
                    new Limit(10, 5000, "mm"),
                    "Radius of the sole in mm, from front to back. Two numbers, such as 200/250: front to back, heel to"
                            + " toe. With one number, heel to toe is 1.25 times that.")
            .as(Kind.NUMBER_OR_WORD)
            .ifBlank("assumed from the kind")
            .alsoCalled("Radius of the sole", "Sole radii")),
    CG_HEIGHT(ColumnSpec.number(
                    "CG height",
                    Quantity.SMALL_LENGTH,
                    new Limit(5, 60, "mm"),
                    "Height of the centre of gravity above the sole, mm.")
            .ifBlank("assumed from the kind")
            .alsoCalled("Height of the centre of gravity")),
    CG_DEPTH(ColumnSpec.number(
                    "CG depth",
                    Quantity.SMALL_LENGTH,
                    new Limit(0.5, 80, "mm"),
                    "Depth of the centre of gravity behind the face, mm, with any ports empty.")
            .ifBlank("assumed from the kind")
            .alsoCalled("Depth of the centre of gravity")),
    HEAD_INERTIA(ColumnSpec.number(
                    "Head inertia",
                    Quantity.INERTIA,
                    new Limit(1e-6, 6e-3, "kg m2"),
                    "Inertia of the head about the vertical axis through its centre of gravity, g cm2, with any"
                            + " ports empty.")
            .ifBlank("assumed from the kind")),
    SWINGWEIGHT(ColumnSpec.of(
                    Kind.MARK,
                    "Swingweight",
                    "The swingweight read on a scale, with the club exactly as in this row: a letter and points, such"
                            + " as D2 or C9.5.")
            .ifBlank("worked out from length, head, shaft and grip")
            .alsoCalled("SW", "Swing weight")),
    SHAFT_MASS(ColumnSpec.number(
                    "Shaft mass", Quantity.MASS, new Limit(0.02, 0.25, "kg"), "Mass of the cut shaft in grams.")
            .ifBlank("assumed from kind and length")
            .alsoCalled("Cut shaft mass")),
    SHAFT_BALANCE(ColumnSpec.number(
                    "Shaft balance",
                    Quantity.LENGTH,
                    new Limit(0.15, 1, "m"),
                    "Balance point of the cut shaft, measured from its butt end, in the length unit of Start.")
            .ifBlank("assumed from the length")
            .alsoCalled("Balance point", "Shaft balance point")),
    GRIP_MASS(ColumnSpec.number("Grip mass", Quantity.MASS, new Limit(0, 0.25, "kg"), "Mass of the grip in grams.")
            .ifBlank("assumed from the kind")),
    GAP_LEAST(ColumnSpec.number(
                    "Gap least",
                    Quantity.DISTANCE,
                    GolferColumn.leastGapM(),
                    "Limit: the smallest carry gap to the next club.")
            .ifBlank("the golfer's gap least")),
    GAP_MOST(ColumnSpec.number(
                    "Gap most",
                    Quantity.DISTANCE,
                    GolferColumn.gapM(),
                    "Limit: the largest carry gap to the next club.")
            .ifBlank("the golfer's gap most")),
    CARRY_LEAST(ColumnSpec.number(
                    "Carry least",
                    Quantity.DISTANCE,
                    Limit.CARRY_M,
                    "Limit: the club must carry as far or farther, in the unit of Start.")
            .ifBlank("no limit")),
    CARRY_MOST(ColumnSpec.number(
                    "Carry most",
                    Quantity.DISTANCE,
                    Limit.CARRY_M,
                    "Limit: the club must carry no farther, in the unit of Start.")
            .ifBlank("no limit")),
    LANDING_LEAST(ColumnSpec.angle(
                    "Landing least",
                    new Limit(0, 90, "degrees"),
                    "Limit: the ball must come down as steeply or steeper, degrees.")
            .ifBlank("no limit")),
    NOTE(ColumnSpec.of(Kind.TEXT, "Note", "Your own notes. Bagwright does not read them.")
            .alsoCalled("Comment", "Remark", "Memo"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Clubs",
            "One row per club as it is today, or per club that might fill its slot. Fill in at least Slot, Club, Kind,"
                    + " Loft and Lie; with an adjustable sleeve also Stated at, Sleeve and Setting.",
            List.of(values()),
            List.of(GOLFER, CLUB));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    ClubColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }
}
