package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BuildNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("analytic")
class HeadInertiaTest {
    /**
     * 12 g at (-30, 40, -10) mm in a head of 200 g and 4500 g cm2. Sum of masses 212 g. Shift 12/212 of the place:
     * (-1.69811, 2.26415, -0.56604) mm. Two bodies 50 mm apart seen from above (3, 4, 5) have the reduced mass
     * 200 x 12 / 212 = 11.32075 g, which adds 11.32075 x 5^2 = 283.019 g cm2.
     */
    @Test
    void onePiece_isTheHandCalculation() {
        BuildNumbers build = DRIVER.balance().build(pieces(piece(12, -30, 40, -10)));
        assertEquals(0.212, build.headMassKg(), 1e-12);
        Vector3D shiftM = DRIVER.balance().head(pieces(piece(12, -30, 40, -10))).shiftM();
        assertEquals(-1.69811, 1000 * shiftM.getX(), 5e-6);
        assertEquals(2.26415, 1000 * shiftM.getY(), 5e-6);
        assertEquals(-0.56604, 1000 * shiftM.getZ(), 5e-6);
        assertEquals(4783.019, build.headInertiaKgM2() * 1e7, 5e-4);
    }

    /**
     * 10 g at heel and toe, (0, 50, 0) and (0, -50, 0) mm: the centre stays, and each adds 10 x 5^2 = 250 g cm2 about the
     * vertical axis and about the one toward the target, nothing about the one from toe to heel.
     */
    @Test
    void heelAndToe_addTheirSquares() {
        HeadInertia bare = DRIVER.balance().head(Optional.empty());
        HeadInertia both = DRIVER.balance().head(pieces(piece(10, 0, 50, 0), piece(10, 0, -50, 0)));
        RealMatrix added =
                both.aboutCentreKgM2().subtract(bare.aboutCentreKgM2()).scalarMultiply(1e7);
        assertEquals(0, both.shiftM().getNorm(), 1e-15);
        assertEquals(
                0,
                MatrixUtils.createRealDiagonalMatrix(new double[] {500, 0, 500})
                        .subtract(added)
                        .getNorm(),
                1e-8);
    }

    @Test
    void emptyPorts_leaveTheStatedHead() {
        BuildNumbers build = DRIVER.build();
        assertEquals(4500, build.headInertiaKgM2() * 1e7, 1e-9);
        assertEquals(Vector3D.ZERO, DRIVER.balance().head(Optional.empty()).shiftM());
        assertEquals(0.2, build.headMassKg(), 0);
        assertEquals(build, DRIVER.balance().build(pieces(piece(0, 10, 20, 30))));
    }

    /** A body can have these three inertias only if none exceeds the two others together. */
    @ParameterizedTest
    @EnumSource(ClubKind.class)
    void assumedShares_areThoseOfABody(ClubKind kind) {
        RealMatrix tensor =
                BalanceBench.of(kind).balance().head(Optional.empty()).aboutCentreKgM2();
        double[] principal = new EigenDecomposition(tensor).getRealEigenvalues();
        double sum = principal[0] + principal[1] + principal[2];
        for (double one : principal) {
            assertTrue(one > 0 && one < sum - one, kind + " " + one);
        }
        assertEquals(3000, tensor.getEntry(2, 2) * 1e7, 1e-9);
    }

    @Test
    void tensorHandedOut_isACopy() {
        HeadInertia head = DRIVER.balance().head(Optional.empty());
        head.aboutCentreKgM2().setEntry(2, 2, 0);
        assertEquals(4500, head.verticalKgM2() * 1e7, 1e-9);
    }
}
