package org.bagwright.workbook;

/** The columns of the sheet Plan, in order. */
enum PlanColumn {
    GOLFER("", "Golfer", 13),
    SLOT("", "Slot", 5.5),
    CLUB("", "Club", 15),

    TODAY_SETTING("Today", "Today setting", 8),
    TODAY_LOFT("Today", "Today loft [deg]", 7.5),
    TODAY_CARRY("Today", "Today carry [DIST]", 7.5),
    TODAY_GAP("Today", "Today gap [DIST]", 7.5),
    TODAY_PENALTY("Today", "Today penalty", 8.5),

    PLANNED_SETTING("Planned", "Planned setting", 8.5),
    PLANNED_LOFT_BEND("Planned", "Planned loft bend [deg]", 8.5),
    PLANNED_LIE_BEND("Planned", "Planned lie bend [deg]", 8.5),
    PLANNED_LOFT("Planned", "Planned loft [deg]", 8.5),
    PLANNED_CARRY("Planned", "Planned carry [DIST]", 8.5),
    PLANNED_GAP("Planned", "Planned gap [DIST]", 8.5),
    PLANNED_PENALTY("Planned", "Planned penalty", 8.5),

    LIVE_SETTING("Your choice", "Live setting", 8.5),
    LIVE_LOFT_BEND("Your choice", "Live loft bend [deg]", 8.5),
    LIVE_LIE_BEND("Your choice", "Live lie bend [deg]", 8.5),

    LIVE_LOFT("Live", "Live loft [deg]", 7.5),
    LIVE_LIE("Live", "Live lie [deg]", 7.5),
    LIVE_SITS("Live", "Live sits [deg closed]", 8),
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
    LIVE_FIT("Live", "Live fit", 11),

    LOFT_TARGET("Wanted", "Loft target [deg]", 8),
    LIE_TARGET("Wanted", "Lie target [deg]", 8),
    CARRY_TARGET("Wanted", "Carry target [DIST]", 8),
    MOST_OPEN("Wanted", "Most open [deg closed]", 8),
    MOST_CLOSED("Wanted", "Most closed [deg closed]", 8),

    TODAY_LOFT_BEND("How the penalty adds up", "Today loft bend [deg]", 8),
    TODAY_LIE_BEND("How the penalty adds up", "Today lie bend [deg]", 8),
    TODAY_ROW("How the penalty adds up", "Today row", 8),
    PLANNED_ROW("How the penalty adds up", "Planned row", 8),
    LIVE_ROW("How the penalty adds up", "Live row", 8),
    TODAY_LOFT_TERM("How the penalty adds up", "Today loft points", 8),
    TODAY_LIE_TERM("How the penalty adds up", "Today lie points", 8),
    TODAY_SITS_TERM("How the penalty adds up", "Today sits points", 8),
    TODAY_CARRY_TERM("How the penalty adds up", "Today carry points", 8),
    TODAY_GAP_TERM("How the penalty adds up", "Today gap points", 8),
    TODAY_CHANGE_TERM("How the penalty adds up", "Today change points", 8),
    PLANNED_LOFT_TERM("How the penalty adds up", "Planned loft points", 8),
    PLANNED_LIE_TERM("How the penalty adds up", "Planned lie points", 8),
    PLANNED_SITS_TERM("How the penalty adds up", "Planned sits points", 8),
    PLANNED_CARRY_TERM("How the penalty adds up", "Planned carry points", 8),
    PLANNED_GAP_TERM("How the penalty adds up", "Planned gap points", 8),
    PLANNED_CHANGE_TERM("How the penalty adds up", "Planned change points", 8),
    LIVE_LOFT_TERM("How the penalty adds up", "Live loft points", 8),
    LIVE_LIE_TERM("How the penalty adds up", "Live lie points", 8),
    LIVE_SITS_TERM("How the penalty adds up", "Live sits points", 8),
    LIVE_CARRY_TERM("How the penalty adds up", "Live carry points", 8),
    LIVE_GAP_TERM("How the penalty adds up", "Live gap points", 8),
    LIVE_CHANGE_TERM("How the penalty adds up", "Live change points", 8),
    LIVE_WORST("How the penalty adds up", "Live worst miss [tolerances]", 10);

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
    String at(int row) {
        return SheetPen.ref(row, ordinal());
    }

    /** This column and the ones that a state (today, planned, live) has alike. */
    static PlanColumn of(String state, String what) {
        return valueOf(state + "_" + what);
    }
}
