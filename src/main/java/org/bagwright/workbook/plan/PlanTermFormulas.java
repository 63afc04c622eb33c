package org.bagwright.workbook.plan;

import static org.bagwright.workbook.plan.PlanFormulas.importance;
import static org.bagwright.workbook.plan.PlanFormulas.tolerance;

/** The formulas of the sheet Plan for the terms of the penalty and the greatest miss. */
final class PlanTermFormulas {
    private final PlanFormulas looked;

    PlanTermFormulas(PlanFormulas looked) {
        this.looked = looked;
    }

    String term(PlanState state, PlanTerm term, PlanPlace place) {
        String points =
                switch (term) {
                    case LOFT ->
                        target(
                                state,
                                term,
                                SettingsColumn.LOFT,
                                PlanColumn.LOFT_TARGET,
                                SettingsColumn.LOFT_TARGET,
                                place);
                    case LIE ->
                        target(
                                state,
                                term,
                                SettingsColumn.LIE,
                                PlanColumn.LIE_TARGET,
                                SettingsColumn.LIE_TARGET,
                                place);
                    case CARRY ->
                        target(
                                state,
                                term,
                                SettingsColumn.CARRY,
                                PlanColumn.CARRY_TARGET,
                                SettingsColumn.CARRY_TARGET,
                                place);
                    case SWINGWEIGHT ->
                        target(
                                state,
                                term,
                                SettingsColumn.SWINGWEIGHT,
                                PlanColumn.TARGET_POINTS,
                                SettingsColumn.SWINGWEIGHT_TARGET,
                                place);
                    case SITS -> sits(state, place);
                    case GAP ->
                        squared(
                                term,
                                place.at(state, "GAP"),
                                wanted(state, PlanColumn.GAP_WISH, SettingsColumn.GAP_WISH, place));
                    case SPREAD -> spread(state, place);
                    case CHANGE ->
                        place.at(state, "CHANGES") + "*" + importance("change") + "/" + tolerance("change") + "^2";
                };
        return "IF(" + place.at(state, "ROW") + "=0,\"?\"," + points + ")";
    }

    private String target(
            PlanState state,
            PlanTerm term,
            SettingsColumn value,
            PlanColumn cell,
            SettingsColumn ofOption,
            PlanPlace place) {
        return squared(term, looked.index(state, value, place), wanted(state, cell, ofOption, place));
    }

    /** What is wanted: the cell that a person may fill, or with candidates what the book wants of the state's own club. */
    private String wanted(PlanState state, PlanColumn cell, SettingsColumn ofOption, PlanPlace place) {
        return place.fixed() ? place.at(cell) : looked.index(state, ofOption, place);
    }

    private static String squared(PlanTerm term, String value, String wanted) {
        return "IF(OR(" + wanted + "=\"\"," + value + "=\"\"),0,IFERROR(" + importance(term.measure()) + "*((" + value
                + "-" + wanted + ")/" + tolerance(term.measure()) + ")^2,\"?\"))";
    }

    private String sits(PlanState state, PlanPlace place) {
        String value = looked.index(state, SettingsColumn.SITS, place);
        return "IF(" + value + "=\"\",0,IFERROR(" + importance("sits") + "*(" + outside(value, place) + "/"
                + tolerance("sits") + ")^2,\"?\"))";
    }

    private static String outside(String sits, PlanPlace place) {
        String open = place.at(PlanColumn.MOST_OPEN);
        String closed = place.at(PlanColumn.MOST_CLOSED);
        return "MAX(0,IF(" + closed + "=\"\",0," + sits + "-" + closed + "),IF(" + open + "=\"\",0," + open + "-" + sits
                + "))";
    }

    private static String spread(PlanState state, PlanPlace place) {
        return "IF(" + place.at(state, "GROUP") + "=\"\",0,IFERROR(" + importance("spread") + "*("
                + fromMean(state, place) + "/" + tolerance("spread") + ")^2,\"?\"))";
    }

    /** How far a club is from the mean of its group in the golfer's bag. */
    private static String fromMean(PlanState state, PlanPlace place) {
        return "(" + place.at(state, "MATCH") + "-AVERAGEIFS(" + place.bag(PlanColumn.of(state, "MATCH")) + ","
                + place.bag(PlanColumn.of(state, "GROUP")) + "," + place.at(state, "GROUP") + "))";
    }

    static String penalty(PlanState state, PlanPlace place) {
        return "IF(" + place.at(state, "ROW") + "=0,\"?\",SUM("
                + PlanTerm.LOFT.column(state).at(place.row()) + ":"
                + PlanTerm.CHANGE.column(state).at(place.row()) + "))";
    }

    /** The greatest miss of the live choice, in tolerances; spread only where it counts. */
    static String worst(PlanPlace place) {
        String sits = place.at(PlanColumn.LIVE_SITS);
        String group = place.at(PlanColumn.LIVE_GROUP);
        return "IFERROR(MAX("
                + String.join(
                        ",",
                        miss("loft", PlanColumn.LIVE_LOFT, PlanColumn.LOFT_TARGET, place),
                        miss("lie", PlanColumn.LIVE_LIE, PlanColumn.LIE_TARGET, place),
                        "IF(" + sits + "=\"\",0," + outside(sits, place) + "/" + tolerance("sits") + ")",
                        miss("carry", PlanColumn.LIVE_CARRY, PlanColumn.CARRY_TARGET, place),
                        miss("gap", PlanColumn.LIVE_GAP, PlanColumn.GAP_WISH, place),
                        miss("swingweight", PlanColumn.LIVE_POINTS, PlanColumn.TARGET_POINTS, place),
                        "IF(OR(" + group + "=\"\"," + importance("spread") + "=0),0,ABS("
                                + fromMean(PlanState.LIVE, place) + ")/" + tolerance("spread") + ")")
                + "),\"?\")";
    }

    private static String miss(String measure, PlanColumn value, PlanColumn target, PlanPlace place) {
        return "IF(OR(" + place.at(target) + "=\"\"," + place.at(value) + "=\"\"),0,ABS(" + place.at(value) + "-"
                + place.at(target) + ")/" + tolerance(measure) + ")";
    }
}
