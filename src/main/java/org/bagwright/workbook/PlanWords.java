package org.bagwright.workbook;

import org.bagwright.domain.BookResult;
import org.bagwright.domain.Numbers;

/** Sentences about a plan. */
final class PlanWords {
    private PlanWords() {}

    /** How good the plan is, in one line. */
    static String verdict(BookResult result) {
        String planned = Numbers.fixed(result.plannedPoints(), 2);
        String text = "Planned penalty " + planned + " points, against " + Numbers.fixed(result.todayPoints(), 2)
                + " today. " + how(result);
        return result.plannedBreaks() > 0 ? text + " Not every must can be met: see the sheet Messages." : text;
    }

    private static String how(BookResult result) {
        if (result.proven()) {
            return "Proven best: no other choice of settings and bends scores lower.";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return "At most " + Numbers.fixed(above, 2) + " points above the best possible.";
    }
}
