package org.bagwright.badbooks;

import java.util.Set;

/** Why nothing can be said of a number that changes a plan. */
enum HuntReason {
    WISH("a wish: it is the fitter's own"),
    BLANK("fewer figures: what is missing is computed, and the plan says so"),
    HUNDREDTH("within what monitors, scales and gauges repeat to"),
    PLAUSIBLE("plausible: others have such a figure"),
    NONE("not known yet");

    private static final Set<String> WISHES = Set.of(
            "Most open",
            "Most closed",
            "Gap wish",
            "Gap least",
            "Gap most",
            "Carry least",
            "Carry most",
            "Landing least",
            "Loft target",
            "Lie target",
            "Carry target",
            "Bend limit",
            "Bend step",
            "Most changes",
            "Count");
    private static final Set<String> PLAUSIBLE_FIGURES = Set.of(
            "Air temperature",
            "Altitude",
            "Humidity",
            "Head wind",
            "Shaft lean",
            "Loft bend",
            "Lie bend",
            "Shots",
            "Spread",
            "Setting",
            "Stated at",
            "Slot",
            "Face",
            "Mass");

    /** Plausible where they are off by a tenth, but not where they are off by more. */
    private static final Set<String> PLAUSIBLE_BY_A_TENTH = Set.of("Loft", "Shaft balance", "Spin", "Launch");

    private final String words;

    HuntReason(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Why a change is silent; {@link #NONE} where it should not be. */
    static HuntReason of(HuntTry tried) {
        String column = tried.place().column();
        if (tried.place().sheet().equals("Aims") || WISHES.contains(column)) {
            return WISH;
        }
        if (tried.change() == HuntChange.BLANK) {
            return BLANK;
        }
        if (tried.change() == HuntChange.HUNDREDTH) {
            return HUNDREDTH;
        }
        boolean tenth = tried.change() == HuntChange.TENTH && PLAUSIBLE_BY_A_TENTH.contains(column);
        return tenth || PLAUSIBLE_FIGURES.contains(column) ? PLAUSIBLE : NONE;
    }
}
