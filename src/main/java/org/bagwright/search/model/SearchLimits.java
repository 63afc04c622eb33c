package org.bagwright.search.model;

/**
 * When a search ends if its plan cannot be proven best.
 *
 * @param seed the seed of every random choice; the same seed gives the same plan
 * @param mostS the most time for improving plans, seconds; a cap only, the search usually ends by its count of steps
 */
public record SearchLimits(long seed, double mostS) {
    public SearchLimits {
        if (!(mostS > 0 && Double.isFinite(mostS))) {
            throw new IllegalArgumentException("the time for the search must be above 0 seconds, found " + mostS);
        }
    }
}
