package org.bagwright.search.model;

import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * How hard a search tries, and when it ends if its plan cannot be proven best. All ends but the time are counted, so that
 * the plan does not depend on the machine.
 *
 * @param seed the seed of every random choice; the same seed gives the same plan
 * @param mostS the most time for improving plans, seconds; a cap only, the search usually ends by its counts
 * @param rounds how often the local search and the exact search take turns at most
 * @param calculationRatio score calculations of the first local search to options there are; each later one makes
 *     twice as many as the one before
 * @param steps steps of the first exact search; each later one makes a thousand times as many as the one before; 0 for none at all
 * @param mode how much the planner checks itself
 */
public record SearchLimits(
        long seed, double mostS, int rounds, double calculationRatio, long steps, EnvironmentMode mode) {
    private static final int USUAL_ROUNDS = 3;
    private static final double USUAL_CALCULATIONS_PER_OPTION = 1;
    private static final int ROUNDS_WITHOUT_EXACT = 5;
    private static final long USUAL_STEPS = 40_000_000;
    private static final double CALCULATIONS_GROWTH = 2;
    private static final double STEPS_GROWTH = 1000;

    public SearchLimits {
        if (!(mostS > 0 && Double.isFinite(mostS))) {
            throw new IllegalArgumentException("the time for the search must be above 0 seconds, found " + mostS);
        }
    }

    /** The usual counts: far more than a fitter's bag needs. */
    public SearchLimits(long seed, double mostS) {
        this(seed, mostS, USUAL_ROUNDS, USUAL_CALCULATIONS_PER_OPTION, USUAL_STEPS, EnvironmentMode.REPRODUCIBLE);
    }

    /** The same with other counts. */
    public SearchLimits counting(int otherRounds, double otherCalculationsPerOption, long otherSteps) {
        return new SearchLimits(seed, mostS, otherRounds, otherCalculationsPerOption, otherSteps, mode);
    }

    /** The same without the exact search: no plan is proven. */
    public SearchLimits withoutExact() {
        return counting(ROUNDS_WITHOUT_EXACT, calculationRatio, 0);
    }

    /** The same where the planner checks itself as much as this. */
    public SearchLimits in(EnvironmentMode otherMode) {
        return new SearchLimits(seed, mostS, rounds, calculationRatio, steps, otherMode);
    }

    /** The score calculations of the local search of a round, from 0 on, at least 1. */
    public long scoreCalculations(int round, long options) {
        return Math.max(1, (long) (calculationRatio * options * Math.pow(CALCULATIONS_GROWTH, round)));
    }

    /** The steps of the exact search of a round, from 0 on. */
    public long steps(int round) {
        return (long) (steps * Math.pow(STEPS_GROWTH, round));
    }

    /** The most steps for a question about one bag: as many as all rounds together may make for its plan. */
    public long mostSteps() {
        return steps(rounds);
    }
}
