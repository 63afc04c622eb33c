package org.bagwright.workbook.plan;

import org.bagwright.workbook.pen.SheetPen;

/** The columns of the sheet Plan, in order. */
public enum PlanColumn {
    GOLFER("", "Golfer", 13),
    SLOT("", "Slot", 5.5),
    TODAY_CLUB("", "Club", 15),

    TODAY_SETTING("Today", "Today setting", 8),
    TODAY_WEIGHTING("Today", "Today weighting", 10),
    TODAY_LOFT("Today", "Today loft [deg]", 7.5),
    TODAY_CARRY("Today", "Today carry [DIST]", 7.5),
    TODAY_GAP("Today", "Today gap [DIST]", 7.5),
    TODAY_PENALTY("Today", "Today penalty", 8.5),

    PLANNED_CLUB("Planned", "Planned club", 14),
    PLANNED_SETTING("Planned", "Planned setting", 8.5),
    PLANNED_WEIGHTING("Planned", "Planned weighting", 10),
    PLANNED_LOFT_BEND("Planned", "Planned loft bend [deg]", 8.5),
    PLANNED_LIE_BEND("Planned", "Planned lie bend [deg]", 8.5),
    PLANNED_LOFT("Planned", "Planned loft [deg]", 8.5),
    PLANNED_CARRY("Planned", "Planned carry [DIST]", 8.5),
    PLANNED_GAP("Planned", "Planned gap [DIST]", 8.5),
    PLANNED_PENALTY("Planned", "Planned penalty", 8.5),

    LIVE_CLUB("Your choice", "Live club", 14),
    LIVE_SETTING("Your choice", "Live setting", 8.5),
    LIVE_WEIGHTING("Your choice", "Live weighting", 10.5),
    LIVE_LOFT_BEND("Your choice", "Live loft bend [deg]", 8.5),
    LIVE_LIE_BEND("Your choice", "Live lie bend [deg]", 10.5),
    PIN("Your choice", "Pin", 10.5),

    LIVE_LOFT("Live", "Live loft [deg]", 10.5),
    LIVE_LIE("Live", "Live lie [deg]", 9),
    LIVE_SITS("Live", "Live sits [deg closed]", 10.5),
    LIVE_START_LINE("Live", "Live start line [deg closed]", 8),
    LIVE_CONTACT("Live", "Live contact shift [mm forward]", 9),
    LIVE_SHAFT_TURN("Live", "Live shaft turn [deg]", 8),
    LIVE_LAUNCH("Live", "Live launch [deg]", 7.5),
    LIVE_SPIN("Live", "Live spin [rpm]", 7.5),
    LIVE_LANDING("Live", "Live landing [deg]", 8.5),
    LIVE_CARRY("Live", "Live carry [DIST]", 7.5),
    LIVE_GAP("Live", "Live gap [DIST]", 7.5),
    GAP_WISH("Live", "Gap wish [DIST]", 7.5),
    LIVE_CHANGES("Live", "Live changes", 8.5),
    LIVE_PENALTY("Live", "Live penalty", 8.5),
    LIVE_FIT("Live", "Live fit", 12),

    LIVE_LENGTH("Live build", "Live length [LEN]", 8),
    LENGTH_CHANGE("Live build", "Length change [LEN]", 8.5),
    HEAD_MASS_CHANGE("Live build", "Head mass change [g]", 8.5),
    LIVE_TOTAL_MASS("Live build", "Live total mass [g]", 8),
    TODAY_SWINGWEIGHT("Live build", "Today swing- weight", 8),
    LIVE_SWINGWEIGHT("Live build", "Live swing- weight", 8),
    HEAD_GRAMS("Live build", "To swingweight target, at head [g]", 11),

    LOFT_TARGET("Wanted", "Loft target [deg]", 8),
    LIE_TARGET("Wanted", "Lie target [deg]", 8),
    CARRY_TARGET("Wanted", "Carry target [DIST]", 8),
    SWINGWEIGHT_TARGET("Wanted", "Swing- weight target", 8),
    MOST_OPEN("Wanted", "Most open [deg closed]", 8),
    MOST_CLOSED("Wanted", "Most closed [deg closed]", 8),

    TODAY_LOFT_BEND(Group.SUMS, "Today loft bend [deg]", 8),
    TODAY_LIE_BEND(Group.SUMS, "Today lie bend [deg]", 8),
    LIVE_LIST(Group.SUMS, "Live club in its list", 8),
    TODAY_ROW(Group.SUMS, "Today row", 8),
    PLANNED_ROW(Group.SUMS, "Planned row", 8),
    LIVE_ROW(Group.SUMS, "Live row", 8),
    TODAY_NEXT(Group.SUMS, "Today next carry [DIST]", 8),
    PLANNED_NEXT(Group.SUMS, "Planned next carry [DIST]", 8),
    LIVE_NEXT(Group.SUMS, "Live next carry [DIST]", 8),
    LIVE_NEXT_CLUB(Group.SUMS, "Live next club", 14),
    TODAY_GROUP(Group.SUMS, "Today match group", 10),
    TODAY_MATCH(Group.SUMS, "Today match value", 8),
    PLANNED_GROUP(Group.SUMS, "Planned match group", 10),
    PLANNED_MATCH(Group.SUMS, "Planned match value", 8),
    LIVE_GROUP(Group.SUMS, "Live match group", 10),
    LIVE_MATCH(Group.SUMS, "Live match value", 8),
    TODAY_CHANGES(Group.SUMS, "Today changes", 8),
    PLANNED_CHANGES(Group.SUMS, "Planned changes", 8),
    LIVE_POINTS(Group.SUMS, "Live swing- weight [points from A0]", 10),
    TARGET_POINTS(Group.SUMS, "Target swing- weight [points from A0]", 10),
    TODAY_LOFT_TERM(Group.SUMS, "Today loft points", 8),
    TODAY_LIE_TERM(Group.SUMS, "Today lie points", 8),
    TODAY_SITS_TERM(Group.SUMS, "Today sits points", 8),
    TODAY_CARRY_TERM(Group.SUMS, "Today carry points", 8),
    TODAY_GAP_TERM(Group.SUMS, "Today gap points", 8),
    TODAY_SWINGWEIGHT_TERM(Group.SUMS, "Today swingweight points", 11),
    TODAY_SPREAD_TERM(Group.SUMS, "Today spread points", 8),
    TODAY_CHANGE_TERM(Group.SUMS, "Today change points", 8),
    PLANNED_LOFT_TERM(Group.SUMS, "Planned loft points", 8),
    PLANNED_LIE_TERM(Group.SUMS, "Planned lie points", 8),
    PLANNED_SITS_TERM(Group.SUMS, "Planned sits points", 8),
    PLANNED_CARRY_TERM(Group.SUMS, "Planned carry points", 8),
    PLANNED_GAP_TERM(Group.SUMS, "Planned gap points", 8),
    PLANNED_SWINGWEIGHT_TERM(Group.SUMS, "Planned swingweight points", 11),
    PLANNED_SPREAD_TERM(Group.SUMS, "Planned spread points", 8),
    PLANNED_CHANGE_TERM(Group.SUMS, "Planned change points", 8),
    LIVE_LOFT_TERM(Group.SUMS, "Live loft points", 8),
    LIVE_LIE_TERM(Group.SUMS, "Live lie points", 8),
    LIVE_SITS_TERM(Group.SUMS, "Live sits points", 8),
    LIVE_CARRY_TERM(Group.SUMS, "Live carry points", 8),
    LIVE_GAP_TERM(Group.SUMS, "Live gap points", 8),
    LIVE_SWINGWEIGHT_TERM(Group.SUMS, "Live swingweight points", 11),
    LIVE_SPREAD_TERM(Group.SUMS, "Live spread points", 8),
    LIVE_CHANGE_TERM(Group.SUMS, "Live change points", 8),
    LIVE_WORST(Group.SUMS, "Live worst miss [tolerances]", 10);

    final String group;
    final String heading;
    final double widthChars;

    PlanColumn(String group, String heading, double widthChars) {
        this.group = group;
        this.heading = heading;
        this.widthChars = widthChars;
    }

    /** The letters of the column, such as {@code AB}. */
    String letters() {
        return SheetPen.letters(ordinal());
    }

    /** The cell of this column in a row that counts from 0, such as {@code $AB7}. */
    public String at(int row) {
        return SheetPen.ref(row, ordinal());
    }

    /** This column from a row to another, such as {@code $AB7:$AB12}. */
    String from(int firstRow, int lastRow) {
        return at(firstRow) + ":" + at(lastRow);
    }

    /** This column and the ones that the states have alike. */
    public static PlanColumn of(PlanState state, String what) {
        return valueOf(state.name() + "_" + what);
    }

    /** Headings of groups that many columns share. */
    private static final class Group {
        private static final String SUMS = "How the penalty adds up";
    }
}
