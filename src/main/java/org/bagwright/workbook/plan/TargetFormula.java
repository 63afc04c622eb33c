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
        return "IF(OR(" + wanted + "=\"\"," + found + "=\"\"),0,IFERROR(" + PlanAims.importance(measure) + "*((" + found
                + "-" + wanted + ")/" + PlanAims.tolerance(measure) + ")^2,\"?\"))";
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
