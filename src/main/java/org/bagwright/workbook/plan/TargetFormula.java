package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;

/**
 * A measure that compares a number with a target.
 *
 * @param measure the measure
 * @param value the number of a state
 * @param live the column with the live number
 * @param target what is wanted of a state
 * @param liveTarget the column with what is wanted of the live choice
 */
record TargetFormula(
        Measure measure,
        ValueFormula value,
        PlanColumn live,
        ValueFormula target,
        PlanColumn liveTarget)
        implements TermFormula {

    @Override
    public String points(PlanState state, PlanPlace place) {
        String found = value.of(state, place);
        String wanted = target.of(state, place);
        return "IF(OR(" + wanted + "=\"\"," + found + "=\"\"),0,IFERROR(" + PlanAims.importance(measure) + "*((" + found
                + "-" + wanted + ")/" + PlanAims.tolerance(measure) + ")^2,\"?\"))";
    }

    @Override
    public Optional<String> miss(PlanPlace place) {
        String found = place.at(live);
        String wanted = place.at(liveTarget);
        return Optional.of("IF(OR(" + wanted + "=\"\"," + found + "=\"\"),0,ABS(" + found + "-" + wanted + ")/"
                + PlanAims.tolerance(measure) + ")");
    }
}
