package org.bagwright.search.score;

import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What one solver made of one problem.
 *
 * @param cost what its plan costs by the plain sum, whatever the solver thinks of it
 * @param boundMicropoints what it has shown that no plan with as few breaks can be below; empty where it shows nothing
 * @param bestS when it had its best plan, seconds from its start
 * @param provenS when it had shown that nothing is better, seconds from its start; empty if it had not
 * @param note what else to say, or nothing
 */
public record Solved(Cost cost, OptionalLong boundMicropoints, double bestS, OptionalDouble provenS, String note) {

    /** Above the best bound that any solver has shown, percent of the penalty. */
    public double gapPercent(long bestBoundMicropoints) {
        return 100.0 * (cost.micropoints() - bestBoundMicropoints) / Math.max(1, cost.micropoints());
    }
}
