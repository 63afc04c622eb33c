package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.PortPiece;

@Tag("analytic")
class HeadInertiaPropertiesTest {
    @Property(tries = 200, seed = "31")
    void pieceAndItsMirrorImage_leaveNoSidewaysShift(
            @ForAll @DoubleRange(min = 0.5, max = 30) double massG,
            @ForAll @DoubleRange(min = -80, max = 20) double xMm,
            @ForAll @DoubleRange(min = -60, max = 60) double yMm,
            @ForAll @DoubleRange(min = -30, max = 30) double zMm) {
        HeadInertia head = DRIVER.balance().head(pieces(piece(massG, xMm, yMm, zMm), piece(massG, xMm, -yMm, zMm)));
        assertEquals(0, head.shiftM().getY(), 1e-15);
        assertEquals(0, head.aboutCentreKgM2().getEntry(0, 1), 1e-18);
        assertEquals(0, head.aboutCentreKgM2().getEntry(1, 2), 1e-18);
        assertEquals(2 * massG * xMm / (200 + 2 * massG), 1000 * head.shiftM().getX(), 1e-9);
    }

    /** The head drawn as six points with the bare head's tensor, and everything summed over points about their centre. */
    @Property(tries = 200, seed = "32")
    void threePieces_areTheSumOverPointsByLinearAlgebra(
            @ForAll ClubKind kind,
            @ForAll @DoubleRange(min = 0, max = 30) double firstG,
            @ForAll @DoubleRange(min = 0, max = 30) double secondG,
            @ForAll @DoubleRange(min = -80, max = 20) double xMm,
            @ForAll @DoubleRange(min = -60, max = 60) double yMm,
            @ForAll @DoubleRange(min = -30, max = 30) double zMm) {
        List<PortPiece> ports =
                List.of(piece(firstG, xMm, yMm, zMm), piece(secondG, zMm, xMm, yMm), piece(7, yMm, zMm, xMm));
        ClubBalance balance = BalanceBench.of(kind).balance();
        List<Point> points = Point.head(0.25, diagonal(balance.head(Optional.empty())));
        ports.forEach(port -> points.add(Point.of(port)));

        HeadInertia head = balance.head(pieces(ports.toArray(PortPiece[]::new)));
        RealVector centreM = Point.centre(points);
        assertEquals(Point.mass(points), head.massKg(), 1e-12);
        assertArrayEquals(centreM.toArray(), head.shiftM().toArray(), 1e-14);
        assertEquals(
                0,
                Point.tensor(points, centreM).subtract(head.aboutCentreKgM2()).getNorm(),
                1e-15);
        assertEquals(Point.tensor(points, centreM).getEntry(2, 2), head.verticalKgM2(), 1e-15);
    }

    private static double[] diagonal(HeadInertia head) {
        RealMatrix tensor = head.aboutCentreKgM2();
        return new double[] {tensor.getEntry(0, 0), tensor.getEntry(1, 1), tensor.getEntry(2, 2)};
    }
}
