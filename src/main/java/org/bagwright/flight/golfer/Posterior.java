package org.bagwright.flight.golfer;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The unknowns of a golfer after his shots: normal, about the values at which {@code |x|^2 + sum r' C^-1 r} is least, with the
 * covariance {@code H^-1}, H the Gauss-Newton Hessian there.
 */
final class Posterior {
    private final double[] mean;
    private final DecompositionSolver hessian;

    private Posterior(double[] mean, DecompositionSolver hessian) {
        this.mean = mean;
        this.hessian = hessian;
    }

    /** Before any shot. */
    static Posterior prior(int unknowns) {
        return of(new double[unknowns], List.of());
    }

    /** The minimum of {@code |x|^2 + sum |r - J (x - at)|^2} over whitened residuals, and its curvature. */
    static Posterior of(double[] at, List<Residuals> all) {
        double[][] hessian = new double[at.length][at.length];
        for (int i = 0; i < at.length; i++) {
            hessian[i][i] = 1;
        }
        double[] pull = new double[at.length];
        for (Residuals residuals : all) {
            residuals.addTo(hessian, pull, at);
        }
        DecompositionSolver solver =
                new CholeskyDecomposition(new Array2DRowRealMatrix(hessian, false), 1e-9, 1e-12).getSolver();
        return new Posterior(solver.solve(new ArrayRealVector(pull, false)).toArray(), solver);
    }

    /** The same doubt about other values. */
    Posterior about(double[] other) {
        return new Posterior(other, hessian);
    }

    /** The likeliest values, in prior standard deviations. */
    double[] mean() {
        return mean;
    }

    /** Their covariance. */
    RealMatrix covariance() {
        return hessian.getInverse();
    }

    /** The variance of something that depends on the unknowns with these slopes. */
    double variance(double[] slopes) {
        RealVector vector = new ArrayRealVector(slopes, false);
        return vector.dotProduct(hessian.solve(vector));
    }

    /**
     * What one group of shots says about the unknowns near a golfer, whitened by the root of its covariance.
     *
     * @param head the head that was hit
     * @param residuals measured less expected, whitened
     * @param slopes how the expected depends on the unknowns, whitened
     */
    record Residuals(int head, double[] residuals, double[][] slopes) {
        static Residuals of(int head, double[] residuals, double[][] slopes, double[][] covariance) {
            RealMatrix root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance), 1e-9, 0).getL();
            RealMatrix inverse = MatrixUtils.inverse(root);
            RealMatrix white = inverse.multiply(MatrixUtils.createRealMatrix(slopes));
            return new Residuals(head, inverse.operate(residuals), white.getData());
        }

        private void addTo(double[][] hessian, double[] pull, double[] at) {
            for (int row = 0; row < residuals.length; row++) {
                double[] slope = slopes[row];
                double target = residuals[row];
                for (int i = 0; i < at.length; i++) {
                    target += slope[i] * at[i];
                }
                int[] places = IntStream.range(0, at.length)
                        .filter(i -> slope[i] != 0)
                        .toArray();
                for (int one : places) {
                    pull[one] += slope[one] * target;
                    for (int other : places) {
                        hessian[one][other] += slope[one] * slope[other];
                    }
                }
            }
        }
    }
}
