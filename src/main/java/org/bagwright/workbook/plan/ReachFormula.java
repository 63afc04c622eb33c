package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;

/** How much less far the longest club flies than today's: the first row of the golfer with a carry. */
record ReachFormula() implements TermFormula {

    @Override
    public String points(PlanState state, PlanPlace place) {
        return "IF(" + isLongest(state, place) + ",IFERROR(" + PlanAims.importance(Measure.REACH) + "*("
                + lost(state, place) + "/" + PlanAims.tolerance(Measure.REACH) + ")^2,\"?\"),0)";
    }

    @Override
    public Optional<String> miss(PlanPlace place) {
        return Optional.of("IF(" + isLongest(PlanState.LIVE, place) + "," + lost(PlanState.LIVE, place) + "/"
                + PlanAims.tolerance(Measure.REACH) + ",0)");
    }

    private static String isLongest(PlanState state, PlanPlace place) {
        PlanColumn carries = PlanColumn.of(state, PlanQuantity.CARRY);
        String flies = "ISNUMBER(" + place.at(carries) + "),ISNUMBER(" + place.at(PlanColumn.LONGEST_TODAY) + ")";
        return place.row() == place.firstRow()
                ? "AND(" + flies + ")"
                : "AND(" + flies + ",COUNT(" + carries.from(place.firstRow(), place.row() - 1) + ")=0)";
    }

    private static String lost(PlanState state, PlanPlace place) {
        return "MAX(0," + place.at(PlanColumn.LONGEST_TODAY) + "-" + place.at(state, PlanQuantity.CARRY) + ")";
    }
}
