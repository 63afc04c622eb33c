package org.bagwright.workbook.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;

/** The formulas of the sheet Plan for the terms of the penalty and the greatest miss. */
final class PlanTermFormulas {
    private final PlanFormulas looked;
    private final Map<Measure, TermFormula> byMeasure = new EnumMap<>(Measure.class);

    PlanTermFormulas(PlanFormulas looked) {
        this.looked = looked;
        for (Measure measure : Measure.values()) {
            byMeasure.put(measure, formula(measure));
        }
    }

    private TermFormula formula(Measure measure) {
        return switch (measure) {
            case LOFT -> target(measure, number(SettingsColumn.LOFT), PlanColumn.LIVE_LOFT, PlanColumn.LOFT_TARGET, SettingsColumn.LOFT_TARGET);
            case LIE -> target(measure, number(SettingsColumn.LIE), PlanColumn.LIVE_LIE, PlanColumn.LIE_TARGET, SettingsColumn.LIE_TARGET);
            case SITS -> new SitsFormula(looked);
            case CARRY -> target(measure, number(SettingsColumn.CARRY), PlanColumn.LIVE_CARRY, PlanColumn.CARRY_TARGET, SettingsColumn.CARRY_TARGET);
            case GAP -> target(measure, PlanTermFormulas::gap, PlanColumn.LIVE_GAP, PlanColumn.GAP_WISH, SettingsColumn.GAP_WISH);
            case SWINGWEIGHT -> target(measure, number(SettingsColumn.SWINGWEIGHT), PlanColumn.LIVE_POINTS, PlanColumn.TARGET_POINTS, SettingsColumn.SWINGWEIGHT_TARGET);
            case SPREAD -> new SpreadFormula();
            case CHANGE -> new ItemsFormula(measure);
        };
    }

    /**
     * What is wanted is in a cell that a person may fill, or with candidates what the book wants of the state's own club.
     *
     * @param wanted the column with what is wanted of the live choice
     * @param ofOption where the sheet Settings has what is wanted of an option
     */
    private TermFormula target(
            Measure measure, ValueFormula value, PlanColumn live, PlanColumn wanted, SettingsColumn ofOption) {
        ValueFormula target =
                (state, place) -> place.fixed() ? place.at(wanted) : looked.index(state, ofOption, place);
        return new TargetFormula(measure, value, live, target, wanted);
    }

    private ValueFormula number(SettingsColumn column) {
        return (state, place) -> looked.index(state, column, place);
    }

    private static String gap(PlanState state, PlanPlace place) {
        return place.at(state, PlanQuantity.GAP);
    }

    /** What a measure costs in a state, points; a question mark for a choice that is no option. */
    String term(PlanState state, Measure measure, PlanPlace place) {
        String points = byMeasure.get(measure).points(state, place);
        return "IF(" + place.at(state, PlanQuantity.ROW) + "=0,\"?\"," + points + ")";
    }

    /** The sum of a state's terms. */
    String penalty(PlanState state, PlanPlace place) {
        Measure[] measures = Measure.values();
        String first = new TermColumn(state, measures[0]).at(place.row());
        String last = new TermColumn(state, measures[measures.length - 1]).at(place.row());
        return "IF(" + place.at(state, PlanQuantity.ROW) + "=0,\"?\",SUM(" + first + ":" + last + "))";
    }

    /** The greatest miss of the live choice, in tolerances. */
    String worst(PlanPlace place) {
        return "IFERROR(MAX("
                + byMeasure.values().stream()
                        .map(formula -> formula.miss(place))
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(","))
                + "),\"?\")";
    }
}
