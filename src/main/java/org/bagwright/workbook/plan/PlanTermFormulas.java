package org.bagwright.workbook.plan;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;

/** The formulas of the sheet Plan for the terms of the penalty and the greatest miss. */
final class PlanTermFormulas {
    private final Map<Measure, TermFormula> byMeasure = new EnumMap<>(Measure.class);

    PlanTermFormulas(PlanFormulas looked) {
        for (Measure measure : Measure.values()) {
            byMeasure.put(measure, formula(measure, looked));
        }
    }

    private static TermFormula formula(Measure measure, PlanFormulas looked) {
        return switch (measure) {
            case LOFT -> new TargetFormula(looked, measure, PlanColumn.LIVE_LOFT, PlanColumn.LOFT_TARGET);
            case LIE -> new TargetFormula(looked, measure, PlanColumn.LIVE_LIE, PlanColumn.LIE_TARGET);
            case SITS -> new SitsFormula(looked);
            case CARRY -> new TargetFormula(looked, measure, PlanColumn.LIVE_CARRY, PlanColumn.CARRY_TARGET);
            case GAP -> new TargetFormula(looked, measure, PlanColumn.LIVE_GAP, PlanColumn.GAP_WISH);
            case REACH -> new ReachFormula();
            case SWINGWEIGHT -> new TargetFormula(looked, measure, PlanColumn.LIVE_POINTS, PlanColumn.TARGET_POINTS);
            case SPREAD -> new SpreadFormula();
            case CHANGE -> new ItemsFormula(measure);
        };
    }

    /** What a measure costs in a state, points; a question mark for a choice that is no option. */
    String term(PlanState state, Measure measure, PlanPlace place) {
        String points = byMeasure.get(measure).points(state, place);
        return "IF(" + place.at(state, PlanQuantity.ROW) + "=0,\"?\"," + points + ")";
    }

    /** What of a state's penalty is doubt. */
    String doubt(PlanState state, PlanPlace place) {
        String points = Arrays.stream(Measure.values())
                .filter(PlanAims::countsDoubt)
                .map(measure -> byMeasure.get(measure).doubtPoints(state, place))
                .collect(Collectors.joining("+"));
        return "IF(" + place.at(state, PlanQuantity.ROW) + "=0,\"?\",IFERROR(" + points + ",\"?\"))";
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
        List<MissColumn> misses = MissColumn.all();
        String all = misses.get(0).at(place.row()) + ":"
                + misses.get(misses.size() - 1).at(place.row());
        return "IF(COUNT(" + all + ")=" + misses.size() + ",MAX(" + all + "),\"?\")";
    }

    /** How far the live choice misses by a measure, in tolerances. */
    String miss(MissColumn column, PlanPlace place) {
        String miss = byMeasure.get(column.measure()).miss(place).orElseThrow();
        return "IFERROR(" + miss + ",\"?\")";
    }

    /** Items that differ from today: each costs the same, and none is a miss. */
    private record ItemsFormula(Measure measure) implements TermFormula {

        @Override
        public String points(PlanState state, PlanPlace place) {
            return place.at(state, PlanQuantity.CHANGES) + "*" + PlanAims.importance(measure) + "/"
                    + PlanAims.tolerance(measure) + "^2";
        }

        @Override
        public Optional<String> miss(PlanPlace place) {
            return Optional.empty();
        }
    }
}
