package org.bagwright.geometry;

import java.util.List;
import java.util.Set;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.bagwright.geometry.GaugeModel.Value;

/** The least-squares problem of a set of gauge readings: some unknowns are free, the others keep their values. */
final class GaugeProblem {
    private static final double STEP_DEG = 1e-4;
    private static final int MOST_STEPS = 200;

    private final GaugeModel model;
    private final List<Value> values;
    private final List<Unknown> free;
    private final double repeatabilityDeg;

    GaugeProblem(GaugeModel model, List<Value> values, Set<Unknown> free, double repeatabilityDeg) {
        this.model = model;
        this.values = values;
        this.free = List.copyOf(free);
        this.repeatabilityDeg = repeatabilityDeg;
    }

    List<Value> values() {
        return values;
    }

    List<Unknown> free() {
        return free;
    }

    /** The state that the book states. */
    double[] stated() {
        return model.stated();
    }

    /** The state nearest to the readings, looked for from another one; perhaps not of finite numbers. */
    double[] nearest(double[] start) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(free.stream()
                        .mapToDouble(unknown -> start[unknown.index()])
                        .toArray())
                .model(point -> expectedAndSlopes(start, point))
                .target(values.stream()
                        .mapToDouble(value -> value.readDeg() / repeatabilityDeg)
                        .toArray())
                .maxEvaluations(MOST_STEPS)
                .maxIterations(MOST_STEPS)
                .lazyEvaluation(false)
                .build();
        return stateAt(
                start, new LevenbergMarquardtOptimizer().optimize(problem).getPoint());
    }

    /** What a state expects of a number, degrees. */
    double expectedDeg(double[] state, Value value) {
        return model.expectedDeg(state, value);
    }

    /** A number read less the number that a state expects, in standard deviations of the gauge. */
    double residualRatio(double[] state, Value value) {
        return (value.readDeg() - expectedDeg(state, value)) / repeatabilityDeg;
    }

    /** How fast an expected number changes with each free unknown. */
    double[] slopes(double[] state, Value value) {
        return free.stream()
                .mapToDouble(unknown -> slope(state, value, unknown))
                .toArray();
    }

    private double slope(double[] state, Value value, Unknown unknown) {
        double low = model.expectedDeg(moved(state, unknown, -STEP_DEG), value);
        double high = model.expectedDeg(moved(state, unknown, STEP_DEG), value);
        return (high - low) / (2 * STEP_DEG);
    }

    /**
     * How fast the expected numbers, in standard deviations of the gauge, change with the free unknowns: by central
     * differences, good to some 1e-9 since the model is smooth over degrees.
     */
    RealMatrix jacobian(double[] at) {
        RealMatrix slopes = new Array2DRowRealMatrix(values.size(), Math.max(1, free.size()));
        for (int column = 0; column < free.size(); column++) {
            RealVector high = expected(moved(at, free.get(column), STEP_DEG));
            RealVector low = expected(moved(at, free.get(column), -STEP_DEG));
            slopes.setColumnVector(column, high.subtract(low).mapDivide(2 * STEP_DEG));
        }
        return slopes;
    }

    private static double[] moved(double[] state, Unknown unknown, double stepDeg) {
        double[] moved = state.clone();
        moved[unknown.index()] += stepDeg;
        return moved;
    }

    private Pair<RealVector, RealMatrix> expectedAndSlopes(double[] start, RealVector point) {
        double[] at = stateAt(start, point);
        return new Pair<>(expected(at), jacobian(at));
    }

    private RealVector expected(double[] at) {
        return new ArrayRealVector(
                values.stream()
                        .mapToDouble(value -> model.expectedDeg(at, value) / repeatabilityDeg)
                        .toArray(),
                false);
    }

    private double[] stateAt(double[] start, RealVector point) {
        double[] at = start.clone();
        for (int i = 0; i < free.size(); i++) {
            at[free.get(i).index()] = point.getEntry(i);
        }
        return at;
    }
}
