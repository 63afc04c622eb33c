package org.bagwright.domain.plan;

import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;

/**
 * The gap between two neighbouring carrying clubs and what it costs.
 *
 * @param fromIndex position in the bag of the longer club, by slot
 * @param toIndex position in the bag of the next carrying club
 * @param gapM carry of the first less carry of the second, metres
 * @param wishM the gap wanted, metres
 * @param sdM standard deviation of the gap, metres
 * @param terms what it costs, and what it breaks of must and limits
 * @param orderBreaks 0 if the carry falls from the first club to the second, else 1000 and one for each millimetre missing
 */
public record GapTerm(
        int fromIndex, int toIndex, double gapM, double wishM, double sdM, Terms terms, long orderBreaks) {

    /** The gap less the gap wanted, metres. */
    public double deviationM() {
        return gapM - wishM;
    }

    /** What the gap costs, doubt and all, points. */
    public double penaltyPoints() {
        return terms.points(Measure.GAP);
    }

    /** How far the must of gaps is broken, thousandths of a tolerance. */
    public long mustBreaks() {
        return terms.breaks(Measure.GAP);
    }
}
