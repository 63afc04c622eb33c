package org.bagwright.domain.plan;

import org.bagwright.domain.option.MatchValue;

/**
 * How far one club is from the mean of its group and what that costs.
 *
 * @param index position of its slot in the bag
 * @param group the name of its group
 * @param deviationMeasureUnits its value less the mean of the group, as in {@link MatchValue}
 * @param penaltyPoints what the deviation costs, points
 * @param hardBreaks broken must, thousandths of a tolerance
 */
public record SpreadTerm(
        int index, String group, double deviationMeasureUnits, double penaltyPoints, long hardBreaks) {}
