package org.bagwright.domain.plan;

import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Terms;

/**
 * How far one club is from the mean of its group and what that costs.
 *
 * @param index position of its slot in the bag
 * @param group the name of its group
 * @param deviationMeasureUnits its value less the mean of the group, as in {@link MatchValue}
 * @param penaltyPoints what the deviation costs, points
 * @param mustBreaks how far the must of spread is broken, thousandths of a tolerance
 */
public record SpreadTerm(int index, String group, double deviationMeasureUnits, double penaltyPoints, long mustBreaks) {

    /** What it costs by measure. */
    public Terms terms() {
        return Terms.of(Measure.SPREAD, penaltyPoints, mustBreaks);
    }
}
