package org.bagwright.domain.plan;

import java.util.List;
import org.bagwright.domain.units.Checks;

/**
 * How sure the planned choice of one slot is: the share of likely cases in which it is the best one.
 *
 * @param index position of the slot in the bag
 * @param plannedRatio the share of cases, 0 to 1, in which the planned option or one just like it is best
 * @param best the options that are best most often, at most three, the most frequent first
 */
public record ChoiceSureness(int index, double plannedRatio, List<Share> best) {
    public ChoiceSureness {
        best = List.copyOf(best);
        Checks.that(plannedRatio >= 0 && plannedRatio <= 1, "a share must be 0 to 1, found " + plannedRatio);
    }

    /** The share in words, such as {@code best in 79 of 100 likely cases}. */
    public String inWords() {
        return "best in " + Math.round(100 * plannedRatio) + " of 100 likely cases";
    }

    /**
     * How often one option is best.
     *
     * @param option its place among the options of the slot
     * @param caseRatio the share of cases, 0 to 1
     */
    public record Share(int option, double caseRatio) {}
}
