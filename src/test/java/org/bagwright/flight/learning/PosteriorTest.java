package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.flight.learning.Posterior.Residuals;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Against the dense update of a linear normal model with the prior N(0, I), as in Rasmussen and Williams, Gaussian Processes
 * for Machine Learning, section 2.1 [memory]: mean {@code K y}, covariance {@code I - K J}, gain
 * {@code K = J' (J J' + C)^-1}.
 */
@Tag("analytic")
class PosteriorTest {
    private static final int UNKNOWNS = 7;
    private final Random random = new Random(4);

    private double[][] any(int rows, int columns) {
        double[][] values = new double[rows][columns];
        for (double[] row : values) {
            for (int i = 0; i < columns; i++) {
                row[i] = random.nextGaussian();
            }
        }
        return values;
    }

    private double[][] covariance(int size) {
        RealMatrix root = MatrixUtils.createRealMatrix(any(size, size));
        return root.multiply(root.transpose())
                .add(MatrixUtils.createRealIdentityMatrix(size).scalarMultiply(0.1))
                .getData();
    }

    @Test
    void severalGroups_areTheDenseUpdate() {
        for (int trial = 0; trial < 50; trial++) {
            int[] sizes = {1 + random.nextInt(3), 1 + random.nextInt(3), 1 + random.nextInt(3)};
            int all = sizes[0] + sizes[1] + sizes[2];
            RealMatrix slopes = MatrixUtils.createRealMatrix(all, UNKNOWNS);
            RealMatrix noise = MatrixUtils.createRealMatrix(all, all);
            double[] told = any(1, all)[0];
            double[] at = any(1, UNKNOWNS)[0];
            List<Residuals> groups = new ArrayList<>();
            int row = 0;
            for (int size : sizes) {
                double[][] ofGroup = any(size, UNKNOWNS);
                double[][] ofNoise = covariance(size);
                slopes.setSubMatrix(ofGroup, row, 0);
                noise.setSubMatrix(ofNoise, row, row);
                double[] off = new double[size];
                for (int i = 0; i < size; i++) {
                    off[i] = told[row + i]
                            - MatrixUtils.createRowRealMatrix(ofGroup[i]).operate(at)[0];
                }
                groups.add(Residuals.of(0, off, ofGroup, ofNoise));
                row += size;
            }
            RealMatrix gain = slopes.transpose()
                    .multiply(MatrixUtils.inverse(
                            slopes.multiply(slopes.transpose()).add(noise)));
            RealMatrix expected = MatrixUtils.createRealIdentityMatrix(UNKNOWNS).subtract(gain.multiply(slopes));
            Posterior found = Posterior.of(at, groups);
            assertArrayEquals(gain.operate(told), found.mean(), 1e-9);
            assertEquals(0, found.covariance().subtract(expected).getNorm(), 1e-9);
            double[] direction = any(1, UNKNOWNS)[0];
            double variance = MatrixUtils.createRowRealMatrix(direction).operate(expected.operate(direction))[0];
            assertEquals(variance, found.variance(direction), 1e-9);
            assertTrue(found.variance(direction) <= Posterior.prior(UNKNOWNS).variance(direction));
        }
    }

    @Test
    void nothingTold_isThePrior() {
        Posterior prior = Posterior.prior(UNKNOWNS);
        assertArrayEquals(new double[UNKNOWNS], prior.mean());
        assertEquals(
                0,
                prior.covariance()
                        .subtract(MatrixUtils.createRealIdentityMatrix(UNKNOWNS))
                        .getNorm());
    }
}
