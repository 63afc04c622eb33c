package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;

/** A club against the mean of its group in the golfer's bag; a miss only where spread counts or is a must. */
record SpreadFormula() implements TermFormula {

    @Override
    public String points(PlanState state, PlanPlace place) {
        return "IF(" + place.at(state, PlanQuantity.GROUP) + "=\"\",0,IFERROR(" + PlanAims.importance(Measure.SPREAD)
                + "*(" + fromMean(state, place) + "/" + PlanAims.tolerance(Measure.SPREAD) + ")^2,\"?\"))";
    }

    @Override
    public Optional<String> miss(PlanPlace place) {
        return Optional.of("IF(OR(" + place.at(PlanColumn.LIVE_GROUP) + "=\"\",AND("
                + PlanAims.importance(Measure.SPREAD) + "=0," + PlanAims.must(Measure.SPREAD) + "<>\"yes\")),0,ABS("
                + fromMean(PlanState.LIVE, place) + ")/" + PlanAims.tolerance(Measure.SPREAD) + ")");
    }

    private static String fromMean(PlanState state, PlanPlace place) {
        return "(" + place.at(state, PlanQuantity.MATCH) + "-AVERAGEIF("
                + place.bag(PlanColumn.of(state, PlanQuantity.GROUP)) + "," + place.at(state, PlanQuantity.GROUP) + ","
                + place.bag(PlanColumn.of(state, PlanQuantity.MATCH)) + "))";
    }
}
