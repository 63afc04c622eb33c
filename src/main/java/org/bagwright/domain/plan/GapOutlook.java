package org.bagwright.domain.plan;

import org.bagwright.domain.units.Checks;

/**
 * How sure one planned gap is.
 *
 * @param fromIndex position in the bag of the longer club
 * @param toIndex position in the bag of the next carrying club
 * @param leastM the least good gap, metres; minus infinity where there is none
 * @param mostM the greatest good gap, metres; infinity where there is none
 * @param chanceRatio the chance, 0 to 1, that the gap between the true average carries is inside these limits
 * @param gapSdM the standard deviation of that gap, metres
 */
public record GapOutlook(int fromIndex, int toIndex, double leastM, double mostM, double chanceRatio, double gapSdM) {
    public GapOutlook {
        Checks.that(chanceRatio >= 0 && chanceRatio <= 1, "a chance must be 0 to 1, found " + chanceRatio);
        Checks.notNegative(gapSdM, "spread of a gap");
    }
}
