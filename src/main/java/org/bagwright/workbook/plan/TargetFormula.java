package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;

/**
 * A measure that compares a number with a target.
 *
 * @param looked how numbers of an option are looked up
 * @param measure the measure
 * @param live the column with the live number
 * @param target the column with what is wanted of the live choice
 */
record TargetFormula(PlanFormulas looked, Measure measure, PlanColumn live, PlanColumn target) implements TermFormula {

    @Override
    public String points(PlanState state, PlanPlace place) {
        String found = found(state, place);
        String wanted = wanted(state, place);
        String off = "((" + found + "-" + wanted + ")/" + PlanAims.tolerance(measure) + ")^2";
        String counted = PlanAims.countsDoubt(measure)
                ? PlanAims.importance(measure) + "*" + off + "+" + doubtPoints(variance(state, place))
                : PlanAims.importance(measure) + "*" + off;
        return "IF(OR(" + wanted + "=\"\"," + found + "=\"\"),0,IFERROR(" + counted + ",\"?\"))";
    }

    @Override
    public String doubtPoints(PlanState state, PlanPlace place) {
        return PlanAims.countsDoubt(measure)
                ? "IF(OR(" + wanted(state, place) + "=\"\"," + found(state, place) + "=\"\"),0,"
                        + doubtPoints(variance(state, place)) + ")"
                : "0";
    }

    private String doubtPoints(String variance) {
        return "IF(" + PlanAims.doubt(measure) + "=\"yes\"," + PlanAims.importance(measure) + "*" + variance + "/"
                + PlanAims.tolerance(measure) + "^2,0)";
    }

    private String variance(PlanState state, PlanPlace place) {
        return measure == Measure.GAP ? place.at(state, PlanQuantity.GAP_VARIANCE) : looked.carryVariance(state, place);
    }

    private String found(PlanState state, PlanPlace place) {
        return live.source()
                .map(column -> looked.index(state, column, place))
                .orElseGet(() -> place.at(live.in(state)));
    }

    /** The cell that a person may fill, or with candidates what the book wants of the state's own club. */
    private String wanted(PlanState state, PlanPlace place) {
        return place.fixed()
                ? place.at(target)
                : looked.index(state, target.source().orElseThrow(), place);
    }

    @Override
    public Optional<String> miss(PlanPlace place) {
        String found = place.at(live);
        String wanted = place.at(target);
        return Optional.of("IF(OR(" + wanted + "=\"\"," + found + "=\"\"),0,ABS(" + found + "-" + wanted + ")/"
                + PlanAims.tolerance(measure) + ")");
    }
}
