package org.bagwright.flight.golfer;

import java.util.List;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The unknowns of a golfer after his shots: normal, about the values at which {@code |x|^2 + sum r' C^-1 r} is least.
 *
 * @param mean the likeliest values, in prior standard deviations
 * @param covariance their covariance {@code H^-1}, H the Gauss-Newton Hessian there
 */
record Posterior(double[] mean, RealMatrix covariance) {
    /** Before any shot. */
    static Posterior prior(int unknowns) {
        return new Posterior(new double[unknowns], MatrixUtils.createRealIdentityMatrix(unknowns));
    }

    /** The minimum of {@code |x|^2 + sum |r - J (x - at)|^2} over whitened residuals, and its curvature. */
    static Posterior of(double[] at, List<Residuals> all) {
        int count = at.length;
        RealMatrix hessian = MatrixUtils.createRealIdentityMatrix(count);
        double[] pull = new double[count];
        for (Residuals residuals : all) {
            residuals.addTo(hessian, pull, at);
        }
        CholeskyDecomposition root = new CholeskyDecomposition(hessian, 1e-9, 1e-12);
        RealMatrix covariance = root.getSolver().getInverse();
        return new Posterior(covariance.operate(pull), covariance);
    }

    /** The variance of something that depends on the unknowns with these slopes. */
    double variance(double[] slopes) {
        double sum = 0;
        double[] times = covariance.operate(slopes);
        for (int i = 0; i < slopes.length; i++) {
            sum += slopes[i] * times[i];
        }
        return sum;
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

        private void addTo(RealMatrix hessian, double[] pull, double[] at) {
            for (int row = 0; row < residuals.length; row++) {
                double[] slope = slopes[row];
                double target = residuals[row];
                for (int i = 0; i < at.length; i++) {
                    target += slope[i] * at[i];
                }
                for (int i = 0; i < at.length; i++) {
                    if (slope[i] != 0) {
                        pull[i] += slope[i] * target;
                        addRow(hessian, i, slope);
                    }
                }
            }
        }

        private static void addRow(RealMatrix hessian, int row, double[] slope) {
            for (int column = 0; column < slope.length; column++) {
                if (slope[column] != 0) {
                    hessian.addToEntry(row, column, slope[row] * slope[column]);
                }
            }
        }
    }
}
