package org.bagwright.workbook;

import org.bagwright.domain.BookResult;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Option;

/** Sentences about a plan. */
final class PlanWords {
    /** What a pin does; a message beside a cell holds 255 characters. */
    static final String PIN = "yes: the next plan of this book keeps your choice in this row (club, setting, weighting"
            + " and bends) and plans the rest around it. Blank: the next plan is free to choose.";

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
            return "Proven best: no other choice scores lower.";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return "At most " + Numbers.fixed(above, 2) + " points above the best possible.";
    }

    /** What a person may do on the sheet. */
    static String howTo(boolean candidates) {
        String text = "Pick another setting in the framed cells of \"Your choice\": everything under \"Live\" follows. "
                + "Pin = yes: the next plan keeps your choice in that row. ";
        return candidates
                ? text
                        + "For another club, pick its setting, weighting and bends too. Blank means as in the book."
                        + " \"" + Option.LEFT_OUT + "\" leaves the slot empty. "
                : text;
    }
}
