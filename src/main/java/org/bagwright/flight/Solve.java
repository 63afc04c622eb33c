package org.bagwright.flight;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Roots of rising functions of one unknown. */
public final class Solve {
    /** The greatest angle between face normal and path that is thought of as a blow, degrees. */
    static final double MOST_SPIN_LOFT_DEG = 80;

    private Solve() {}

    /** The root of a rising function, to 1e-12 of the unknown; empty when it does not lie between the ends. */
    public static OptionalDouble root(UnivariateFunction rising, double least, double most) {
        double atLeast = rising.value(least);
        double atMost = rising.value(most);
        if (!(atLeast <= 0 && atMost >= 0)) {
            return OptionalDouble.empty();
        }
        if (atLeast == 0 || atMost == 0) {
            return OptionalDouble.of(atLeast == 0 ? least : most);
        }
        return OptionalDouble.of(new BrentSolver(1e-13, 1e-12).solve(500, rising, least, most));
    }

    /** The spin loft in degrees at which the ball leaves this far above the path; empty when no blow does that. */
    public static OptionalDouble spinLoftDeg(Impact.Head head, double launchFromPathDeg) {
        return root(
                spinLoftDeg -> Impact.strike(head, Ball.STANDARD, spinLoftDeg).launchFromPathDeg() - launchFromPathDeg,
                0,
                MOST_SPIN_LOFT_DEG);
    }
}
