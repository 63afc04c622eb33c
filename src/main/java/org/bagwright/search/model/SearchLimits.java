package org.bagwright.search.model;

import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * When a search ends if its plan cannot be proven best. All ends but the time are counted, so that the plan does not
 * depend on the machine.
 *
 * @param seed the seed of every random choice; the same seed gives the same plan
 * @param mostS the most time for improving plans, seconds; a cap only, the search usually ends by its counts
 * @param steps steps of the exact search for one team
 * @param bagSteps steps of the exact search for one bag that the planner's search re-optimises
 * @param scoreCalculations where nothing is proven by then, the end of the planner's search for each bag of the team; counted
 *     in score calculations rather than steps, because late acceptance can try without end and make no step
 * @param mode how much the planner checks itself
 */
public record SearchLimits(
        long seed, double mostS, long steps, long bagSteps, long scoreCalculations, EnvironmentMode mode) {
    private static final long USUAL_STEPS = 2_000_000_000;
    private static final long USUAL_BAG_STEPS = 20_000_000;
    private static final long USUAL_SCORE_CALCULATIONS = 50_000;

    public SearchLimits {
        if (!(mostS > 0 && Double.isFinite(mostS))) {
            throw new IllegalArgumentException("the time for the search must be above 0 seconds, found " + mostS);
        }
    }

    /** The usual counts: far more than a fitter's bag needs. */
    public SearchLimits(long seed, double mostS) {
        this(seed, mostS, USUAL_STEPS, USUAL_BAG_STEPS, USUAL_SCORE_CALCULATIONS, EnvironmentMode.REPRODUCIBLE);
    }
}
