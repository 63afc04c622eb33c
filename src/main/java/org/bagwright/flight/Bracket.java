package org.bagwright.flight;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The values between which a root is looked for.
 *
 * @param leastMeasureUnits the least value of the unknown
 * @param mostMeasureUnits the greatest value of the unknown
 */
public record Bracket(double leastMeasureUnits, double mostMeasureUnits) {

    /** The root of a rising function, to 1e-12 of the unknown; empty when it is not between the ends. */
    public OptionalDouble root(UnivariateFunction rising) {
        double atLeast = rising.value(leastMeasureUnits);
        double atMost = rising.value(mostMeasureUnits);
        if (!(atLeast <= 0 && atMost >= 0)) {
            return OptionalDouble.empty();
        }
        if (atLeast == 0 || atMost == 0) {
            return OptionalDouble.of(atLeast == 0 ? leastMeasureUnits : mostMeasureUnits);
        }
        return OptionalDouble.of(new BrentSolver(1e-13, 1e-12).solve(500, rising, leastMeasureUnits, mostMeasureUnits));
    }
}
