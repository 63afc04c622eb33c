package org.bagwright.flight;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * The loft of greatest carry among those within reach of a given one, by Brent's method, to 0.01 degrees where carry has one
 * top; where it still rises at the end of the reach, that end.
 *
 * @param loftDeg that loft, degrees
 * @param carryM its carry, m
 * @param atEdgeOfReach whether it is the last loft that was looked at, so that the true best may be beyond it
 */
public record BestLoft(double loftDeg, double carryM, boolean atEdgeOfReach) {
    /** How far from the given loft the search goes, degrees. */
    public static final double REACH_DEG = 8;

    private static final double EDGE_STEP_DEG = 0.1;
    private static final double LEAST_LOFT_DEG = 0;
    private static final double MOST_LOFT_DEG = 80;

    /**
     * Looks for it.
     *
     * @param carryM carry in m by loft in degrees
     * @param aroundDeg the loft to look around, degrees
     */
    public static BestLoft around(DoubleUnaryOperator carryM, double aroundDeg) {
        double startDeg = Math.max(LEAST_LOFT_DEG, Math.min(MOST_LOFT_DEG, aroundDeg));
        double leastDeg = Math.max(LEAST_LOFT_DEG, startDeg - REACH_DEG);
        double mostDeg = Math.min(MOST_LOFT_DEG, startDeg + REACH_DEG);
        if (carryM.applyAsDouble(leastDeg) > carryM.applyAsDouble(leastDeg + EDGE_STEP_DEG)) {
            return new BestLoft(leastDeg, carryM.applyAsDouble(leastDeg), true);
        }
        if (carryM.applyAsDouble(mostDeg) > carryM.applyAsDouble(mostDeg - EDGE_STEP_DEG)) {
            return new BestLoft(mostDeg, carryM.applyAsDouble(mostDeg), true);
        }
        UnivariatePointValuePair best = new BrentOptimizer(1e-6, 5e-3)
                .optimize(
                        new MaxEval(200),
                        new UnivariateObjectiveFunction(carryM::applyAsDouble),
                        GoalType.MAXIMIZE,
                        new SearchInterval(leastDeg, mostDeg, startDeg));
        return new BestLoft(best.getPoint(), best.getValue(), false);
    }
}
