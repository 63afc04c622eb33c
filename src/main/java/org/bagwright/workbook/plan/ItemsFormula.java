package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;

/** Items that differ from today: each costs the same, and none is a miss. */
record ItemsFormula(Measure measure) implements TermFormula {

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
