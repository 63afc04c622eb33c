package org.bagwright.planning.sureness;

/** Carries as they may be, with what each option of a chain costs by itself in them. */
final class World {
    private final double[] carriesM;
    private final double[] ownPoints;
    private final double todayM;
    private final GapDoubt doubt;

    /**
     * A world, which keeps the arrays that it is given.
     *
     * @param carriesM the carry of each option by its number in the chain, m
     * @param ownPoints what each costs by itself, points
     * @param todayM the carry of today's longest club, m; not a number if nothing flies today
     * @param doubt what is still not known of the gaps
     */
    World(double[] carriesM, double[] ownPoints, double todayM, GapDoubt doubt) {
        this.carriesM = carriesM;
        this.ownPoints = ownPoints;
        this.todayM = todayM;
        this.doubt = doubt;
    }

    /** What is not known of the gap between two options of a chain, by their numbers. */
    @FunctionalInterface
    interface GapDoubt {
        /** Nothing is left unknown. */
        GapDoubt NONE = (from, to) -> 0;

        /** The variance of the gap, m2. */
        double varianceM2(int from, int to);
    }

    /** The carry of an option, m. */
    double carryM(int number) {
        return carriesM[number];
    }

    /** What an option costs by itself, points. */
    double ownPoints(int number) {
        return ownPoints[number];
    }

    /** The carry of today's longest club, m; not a number if nothing flies today. */
    double todayM() {
        return todayM;
    }

    /** What is still not known of the gap between two options, m2. */
    double gapVarianceM2(int from, int to) {
        return doubt.varianceM2(from, to);
    }

    /** Makes an option cost so much more, points. */
    void addPoints(int number, double points) {
        ownPoints[number] += points;
    }
}
