package org.bagwright.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.geometry.GaugeModel.Value;

/**
 * A state of the gauge model with its covariance, for the unknowns that are free. The gauge's repeatability is known, so
 * it is not estimated from what is left of the readings.
 */
final class GaugeSolution {
    private static final double SINGULAR = 1e-9;

    private final GaugeProblem problem;
    private final List<Unknown> free;
    private final double[] state;
    private final RealMatrix jacobian;
    private final RealMatrix covariance;

    private GaugeSolution(GaugeProblem problem, double[] state) {
        this.problem = problem;
        this.free = problem.free();
        this.state = state;
        jacobian = problem.jacobian(state);
        covariance = covariance(jacobian);
    }

    /** The stated state, with the covariance that a fit would have there. */
    static GaugeSolution stated(GaugeModel model, List<Value> values, Set<Unknown> free, double repeatabilityDeg) {
        GaugeProblem problem = new GaugeProblem(model, values, free, repeatabilityDeg);
        return new GaugeSolution(problem, problem.stated());
    }

    /**
     * The state nearest to the readings in least squares, started from this one.
     *
     * @throws IllegalStateException when the fit does not end in finite numbers
     */
    GaugeSolution fitted() {
        if (free.isEmpty()) {
            return this;
        }
        GaugeSolution solution = new GaugeSolution(problem, problem.nearest(state));
        if (!Double.isFinite(solution.sumOfSquares())) {
            throw new IllegalStateException("the fit of the gauge readings did not end in finite numbers");
        }
        return solution;
    }

    List<Unknown> free() {
        return free;
    }

    double[] state() {
        return state.clone();
    }

    /** The bend, degrees; never negative. */
    double bendDeg() {
        return Math.hypot(state[3], state[4]);
    }

    /** How much later the shaft leans than the marks say, hours in (-6, 6]; 0 or 6 while the clock is held. */
    double clockOffsetH() {
        return Math.atan2(state[4], state[3]) / Tilt.RAD_PER_H;
    }

    /**
     * The standard error of a free unknown, in its unit; very great or infinite when the readings give nothing about it.
     *
     * @param leastBendDeg the clock is judged as with a bend of at least this
     */
    double standardError(Unknown unknown, double leastBendDeg) {
        if (!free.contains(Unknown.CLOCK) || unknown.index() < Unknown.BEND.index()) {
            return along(unknown, 1, 0);
        }
        double directionRad = Math.atan2(state[4], state[3]);
        double cos = Math.cos(directionRad);
        double sin = Math.sin(directionRad);
        return unknown == Unknown.BEND
                ? along(Unknown.BEND, cos, sin)
                : along(Unknown.BEND, -sin, cos) / Math.max(bendDeg(), leastBendDeg) / Tilt.RAD_PER_H;
    }

    private double along(Unknown unknown, double first, double second) {
        int i = free.indexOf(unknown);
        double variance = first * first * covariance.getEntry(i, i);
        if (second != 0) {
            variance += 2 * first * second * covariance.getEntry(i, i + 1);
            variance += second * second * covariance.getEntry(i + 1, i + 1);
        }
        return Math.sqrt(variance);
    }

    /** What this state expects of a number, degrees. */
    double expectedDeg(Value value) {
        return problem.expectedDeg(state, value);
    }

    /** The standard error of {@link #expectedDeg}, degrees. */
    double expectedErrorDeg(Value value) {
        double variance = 0;
        double[] slopes = problem.slopes(state, value);
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < slopes.length; j++) {
                variance += slopes[i] * slopes[j] * covariance.getEntry(i, j);
            }
        }
        return Math.sqrt(variance);
    }

    /** A number read less the number expected, degrees; also for numbers that took no part in the fit. */
    double residualDeg(Value value) {
        return value.readDeg() - expectedDeg(value);
    }

    /** The sum of the squares of the residuals, each in standard deviations of the gauge. */
    double sumOfSquares() {
        return problem.values().stream()
                .mapToDouble(value -> Math.pow(problem.residualRatio(state, value), 2))
                .sum();
    }

    /** The share of a number's error that shows in its residual and its neighbours': {@code I - J C J^T}. */
    RealMatrix redundancy() {
        RealMatrix identity =
                MatrixUtils.createRealIdentityMatrix(problem.values().size());
        if (free.isEmpty()) {
            return identity;
        }
        RealMatrix hat = jacobian.multiply(covariance).multiply(jacobian.transpose());
        return identity.subtract(hat);
    }

    /** Directions about which the readings give nothing get a very great variance, so their unknowns count as open. */
    private static RealMatrix covariance(RealMatrix jacobian) {
        EigenDecomposition parts = new EigenDecomposition(jacobian.transpose().multiply(jacobian));
        double[] strengths = parts.getRealEigenvalues();
        double least = SINGULAR * Arrays.stream(strengths).max().orElse(0);
        double[] variances = Arrays.stream(strengths)
                .map(strength -> 1 / Math.max(strength, least))
                .toArray();
        RealMatrix spread = MatrixUtils.createRealDiagonalMatrix(variances);
        return parts.getV().multiply(spread).multiply(parts.getVT());
    }
}
