package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.SEVEN_IRON;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealVector;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.units.Swingweight;

@Tag("analytic")
class ClubBalancePropertiesTest {
    /** The whole club drawn as points in the head frame: 2000 slices a rod, the head as points, turned about the butt. */
    @Property(tries = 50, seed = "41")
    void club_isTheSumOverItsPoints(
            @ForAll @DoubleRange(min = 33, max = 47) double lengthIn,
            @ForAll @DoubleRange(min = 0, max = 25) double massG,
            @ForAll @DoubleRange(min = -80, max = 20) double xMm,
            @ForAll @DoubleRange(min = -60, max = 60) double yMm,
            @ForAll @DoubleRange(min = -30, max = 30) double zMm) {
        BalanceBench bench = DRIVER.withLengthIn(lengthIn);
        PortPiece port = piece(massG, xMm, yMm, zMm);
        double lieRad = Math.toRadians(bench.lieDeg());
        RealVector up = MatrixUtils.createRealVector(new double[] {0, Math.cos(lieRad), Math.sin(lieRad)});
        RealVector across = MatrixUtils.createRealVector(new double[] {0, -Math.sin(lieRad), Math.cos(lieRad)});
        RealVector butt = up.mapMultiply(lengthIn * M_PER_IN);
        // Assumed shares 0.60 and 0.65 of the stated 4500 g cm2.
        List<Point> points = Point.head(0.2, 2700e-7, 2925e-7, 4500e-7);
        points.add(Point.of(port));
        slices(points, 0.060, butt.subtract(up.mapMultiply(22 * M_PER_IN)), up.mapMultiply(lengthIn * M_PER_IN));
        slices(points, 0.050, butt.subtract(up.mapMultiply(3.5 * M_PER_IN)), up.mapMultiply(10.5 * M_PER_IN));

        BuildNumbers build = bench.balance().build(pieces(port));
        double fromButtM = butt.subtract(Point.centre(points)).dotProduct(up);
        assertEquals(Point.mass(points), build.totalMassKg(), 1e-12);
        assertEquals(fromButtM, build.balancePointM(), 1e-12);
        assertEquals(
                Point.mass(points) * (fromButtM - 14 * M_PER_IN),
                build.swingweight().momentKgM(),
                1e-12);
        assertEquals(Point.about(points, butt, across), build.clubInertiaKgM2(), 2e-9);
    }

    private static void slices(List<Point> points, double massKg, RealVector centre, RealVector length) {
        int count = 2000;
        for (int i = 0; i < count; i++) {
            RealVector place = centre.add(length.mapMultiply((i + 0.5) / count - 0.5));
            points.add(new Point(massKg / count, place));
        }
    }

    @Property(tries = 200, seed = "42")
    void swingweight_isLinearInAnAddedMass(
            @ForAll @DoubleRange(min = 0, max = 30) double massG,
            @ForAll @DoubleRange(min = 0, max = 3) double times,
            @ForAll @DoubleRange(min = -60, max = 60) double yMm) {
        double bare = SEVEN_IRON.swingweightPoints();
        double once = points(SEVEN_IRON.balance(), piece(massG, 5, yMm, -10)) - bare;
        double more = points(SEVEN_IRON.balance(), piece(massG * times, 5, yMm, -10)) - bare;
        assertEquals(times * once, more, 1e-9);
    }

    @Property(tries = 300, seed = "43")
    void clubInertia_isNeverBelowAllTheMassAtTheBalancePoint(
            @ForAll @DoubleRange(min = 20, max = 50) double lengthIn,
            @ForAll @DoubleRange(min = 100, max = 500) double headG,
            @ForAll @DoubleRange(min = 1, max = 200) double shaftG,
            @ForAll @DoubleRange(min = 0, max = 300) double gripG,
            @ForAll @DoubleRange(min = 0, max = 50) double massG,
            @ForAll @DoubleRange(min = -60, max = 60) double placeMm) {
        BalanceBench bench = DRIVER.withLengthIn(lengthIn)
                .withHeadG(headG)
                .withShaft(shaftG, lengthIn * 0.5)
                .withGripG(gripG);
        BuildNumbers build = bench.balance().build(pieces(piece(massG, placeMm, placeMm, -placeMm)));
        double least = build.totalMassKg() * build.balancePointM() * build.balancePointM();
        assertTrue(build.clubInertiaKgM2() >= least, build + " below " + least);
    }

    /** The reading wins, whatever the parts say, and a change of pieces adds what it adds by the parts. */
    @Property(tries = 200, seed = "44")
    void measuredSwingweight_winsAndChangesAdd(
            @ForAll @DoubleRange(min = 0, max = 60) double readPoints,
            @ForAll @DoubleRange(min = 0, max = 30) double todayG,
            @ForAll @DoubleRange(min = 0, max = 30) double otherG,
            @ForAll @DoubleRange(min = 0, max = 120) double gripG) {
        Weighting today = new Weighting("Now", List.of(piece(todayG, 0, -30, -10)));
        Weighting other = new Weighting("Then", List.of(piece(otherG, -40, 20, 5)));
        BalanceBench parts = DRIVER.withGripG(gripG);
        ClubBalance measured =
                parts.measured(new Swingweight(readPoints), today, other).balance();
        double byParts = points(parts.balance(), piece(otherG, -40, 20, 5))
                - points(parts.balance(), piece(todayG, 0, -30, -10));
        assertEquals(
                readPoints, measured.build(Optional.of(today)).swingweight().scalePoints(), 0);
        assertEquals(
                readPoints + byParts,
                measured.build(Optional.of(other)).swingweight().scalePoints(),
                1e-9);
    }

    private static double points(ClubBalance balance, PortPiece piece) {
        return balance.build(pieces(piece)).swingweight().scalePoints();
    }
}
