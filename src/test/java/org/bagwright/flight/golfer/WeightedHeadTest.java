package org.bagwright.flight.golfer;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.bagwright.flight.golfer.WeightedHead.Inertia;
import org.bagwright.flight.golfer.WeightedHead.Shift;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeightedHeadTest {
    private static final Inertia INERTIA = new Inertia(2.8e-4, 3e-4, 4.8e-4, 2e-5, -3e-5, 1e-5);

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {0, -0.2, Double.NaN, Double.POSITIVE_INFINITY})
    void massOfNoHead_isRefused(double massKg) {
        assertThrows(IllegalArgumentException.class, () -> new WeightedHead(massKg, 0.2, Shift.NONE, INERTIA, 0.03));
        assertThrows(IllegalArgumentException.class, () -> new WeightedHead(0.2, massKg, Shift.NONE, INERTIA, 0.03));
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void centreBeforeTheFaceOrNowhere_isRefused(double depthM) {
        assertThrows(IllegalArgumentException.class, () -> new WeightedHead(0.2, 0.2, Shift.NONE, INERTIA, depthM));
    }

    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"NaN, 0, 0", "0, NaN, 0", "0, 0, Infinity"})
    void shiftWithoutANumber_isRefused(double xM, double yM, double zM) {
        assertThrows(IllegalArgumentException.class, () -> new Shift(xM, yM, zM));
    }

    /** Whatever the general-purpose library's smallest eigenvalue says of the tensor. */
    @net.jqwik.api.Tag("analytic")
    @Property(tries = 500)
    void tensor_isRefusedWhenATurnWouldHaveNoEnergy(
            @ForAll @DoubleRange(min = -1, max = 5) double xx,
            @ForAll @DoubleRange(min = -1, max = 5) double yy,
            @ForAll @DoubleRange(min = -1, max = 5) double zz,
            @ForAll @DoubleRange(min = -3, max = 3) double xy,
            @ForAll @DoubleRange(min = -3, max = 3) double xz,
            @ForAll @DoubleRange(min = -3, max = 3) double yz) {
        double[][] rows = MatrixUtils.createRealMatrix(new double[][] {{xx, xy, xz}, {xy, yy, yz}, {xz, yz, zz}})
                .scalarMultiply(1e-4)
                .getData();
        double[] eigen = new EigenDecomposition(MatrixUtils.createRealMatrix(rows)).getRealEigenvalues();
        double least = Math.min(eigen[0], Math.min(eigen[1], eigen[2]));
        if (least > 1e-12) {
            assertArrayEquals(rows, Inertia.ofRows(rows).rows());
        } else if (least < -1e-12) {
            assertThrows(IllegalArgumentException.class, () -> Inertia.ofRows(rows));
        }
    }

    @Tag("analytic")
    @Test
    void rowsThatAreNoTensor_areRefused() {
        double[][] uneven = INERTIA.rows();
        uneven[1][0] += 1e-8;
        assertThrows(IllegalArgumentException.class, () -> Inertia.ofRows(uneven));
        double[][] rounded = INERTIA.rows();
        rounded[1][0] += 1e-15;
        assertDoesNotThrow(() -> Inertia.ofRows(rounded));
        double[][] nan = INERTIA.rows();
        nan[2][2] = Double.NaN;
        assertThrows(IllegalArgumentException.class, () -> Inertia.ofRows(nan));
        assertThrows(IllegalArgumentException.class, () -> Inertia.ofRows(new double[][] {{1, 0}, {0, 1}}));
        assertThrows(IllegalArgumentException.class, () -> Inertia.ofRows(new double[3][2]));
    }
}
