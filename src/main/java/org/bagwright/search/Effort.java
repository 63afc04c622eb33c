package org.bagwright.search;

import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * How hard the search tries.
 *
 * @param pairs how many pairs of carries the chain may look at in one bag
 * @param scoreCalculations the end of the planner's search that decides, for one bag: counted, so that the plan does
 *     not depend on the machine, and counted in score calculations rather than steps, because late acceptance can try
 *     without end and make no step
 * @param mode how much the planner checks itself
 */
record Effort(long pairs, long scoreCalculations, EnvironmentMode mode) {
    /** A few seconds on a small machine for a bag far bigger than a fitter's, whichever way it is searched. */
    static final Effort USUAL = new Effort(1_000_000_000, 500_000, EnvironmentMode.REPRODUCIBLE);

    /** The same for each of several bags that are searched at once. */
    Effort times(int bags) {
        return new Effort(pairs, scoreCalculations * bags, mode);
    }
}
