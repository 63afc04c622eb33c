package org.bagwright.search.model;

import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * How hard the search tries. Both ends are counted, so that the plan does not depend on the machine.
 *
 * @param steps steps of the exact search for one team
 * @param relaySteps steps of the exact search for one bag that the planner's search lays anew
 * @param scoreCalculations where nothing is proven by then, the end of the planner's search for each bag of the team; counted
 *     in score calculations rather than steps, because late acceptance can try without end and make no step
 * @param mode how much the planner checks itself
 */
public record Effort(long steps, long relaySteps, long scoreCalculations, EnvironmentMode mode) {
    /** Far more than a fitter's bag needs. */
    public static final Effort USUAL = new Effort(2_000_000_000, 20_000_000, 50_000, EnvironmentMode.REPRODUCIBLE);

    /** The same for each of several bags that are searched at once. */
    public Effort times(int bags) {
        return new Effort(steps, relaySteps, scoreCalculations * bags, mode);
    }
}
