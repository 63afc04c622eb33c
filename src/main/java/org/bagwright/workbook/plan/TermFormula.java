package org.bagwright.workbook.plan;

import java.util.Optional;

/** How the sheet Plan computes what one measure costs. */
interface TermFormula {
    /** What it costs in a state that is an option, points. */
    String points(PlanState state, PlanPlace place);

    /** What of it is doubt, points. */
    default String doubtPoints(PlanState state, PlanPlace place) {
        return "0";
    }

    /** By how many tolerances the live choice misses; empty for a measure that has nothing to miss. */
    Optional<String> miss(PlanPlace place);
}
