package org.bagwright.planning.sureness;

/**
 * Carries as they may be, with what each option of a chain costs by itself in them.
 *
 * @param carriesM the carry of each option by its number in the chain, m
 * @param ownPoints what each costs by itself, points
 * @param todayM the carry of today's longest club, m; not a number if nothing flies today
 * @param doubt what is still not known of the gaps
 */
record World(double[] carriesM, double[] ownPoints, double todayM, GapDoubt doubt) {
    /** What is not known of the gap between two options of a chain, by their numbers. */
    @FunctionalInterface
    interface GapDoubt {
        /** Nothing is left unknown. */
        GapDoubt NONE = (from, to) -> 0;

        /** The variance of the gap, m2. */
        double varianceM2(int from, int to);
    }
}
