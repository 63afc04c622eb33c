package org.bagwright.planning.outlook;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.WantedRange;

/**
 * Inside which a gap is good: the limits that the book states, if any, else the wish and a tolerance to each side.
 *
 * @param leastM the least good gap, m
 * @param mostM the greatest good gap, m
 */
record GoodGap(double leastM, double mostM) {
    /** The good gaps after a club. */
    static GoodGap after(Option from, double wishM, double toleranceM) {
        WantedRange stated = from.gapLimitsM();
        return stated.equals(WantedRange.ANY)
                ? new GoodGap(wishM - toleranceM, wishM + toleranceM)
                : new GoodGap(stated.leastMeasureUnits(), stated.mostMeasureUnits());
    }

    /**
     * The chance, 0 to 1, that a normal gap is good, ends included.
     *
     * @param gapM its mean, m
     * @param sdM its standard deviation, m; 0 for a gap that is certain
     */
    double chanceRatio(double gapM, double sdM) {
        if (sdM == 0) {
            return gapM >= leastM && gapM <= mostM ? 1 : 0;
        }
        NormalDistribution gap = new NormalDistribution(null, gapM, sdM);
        return gap.cumulativeProbability(mostM) - gap.cumulativeProbability(leastM);
    }
}
