package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RigidHeadTest {
    private static final Ball BALL = Ball.STANDARD;

    /** About a driver's: heel to toe 0.0005, along the shot 0.00028, up 0.0003 kg m2 before mixing; assumed. */
    private static final RealMatrix INERTIA = MatrixUtils.createRealMatrix(
            new double[][] {{2.8e-4, 1e-5, -2e-5}, {1e-5, 5e-4, 3e-5}, {-2e-5, 3e-5, 3e-4}});

    /** The same head without mixing: symmetric heel to toe. */
    private static final RealMatrix EVEN_INERTIA =
            MatrixUtils.createRealDiagonalMatrix(new double[] {2.8e-4, 5e-4, 3e-4});

    /** Normal of a face of this loft, heading this far left. */
    private static Vector3D normal(double loftDeg, double closedDeg) {
        double loftRad = Math.toRadians(loftDeg);
        double closedRad = Math.toRadians(closedDeg);
        return new Vector3D(
                Math.cos(loftRad) * Math.cos(closedRad), Math.sin(loftRad), -Math.cos(loftRad) * Math.sin(closedRad));
    }

    /** Tilt of the spin axis against the horizontal, seen along the start, degrees; positive curves the ball to the left. */
    static double tiltClosedDeg(BallStart start) {
        Vector3D mps = start.ballMps();
        Vector3D spin = start.ballRadPerS();
        Vector3D toRight = new Vector3D(-mps.getZ(), 0, mps.getX()).normalize();
        return Math.toDegrees(Math.atan2(spin.getY(), spin.dotProduct(toRight)));
    }

    private static RigidHead head(RealMatrix inertia, double speedMps, double massKg, Restitution restitution) {
        return new RigidHead(massKg, inertia, new Vector3D(speedMps, 0, 0), Vector3D.ZERO, restitution);
    }

    private static BallStart central(double speedMps, double massKg, Restitution restitution, Vector3D normal) {
        return head(INERTIA, speedMps, massKg, restitution)
                .strike(BALL, new RigidHead.Contact(normal, Vector3D.ZERO))
                .ball();
    }

    private static RigidHead.Result driver(double upM, double toToeM) {
        return head(EVEN_INERTIA, 45, 0.2, Restitution.PENNER_DRIVER)
                .strike(BALL, new RigidHead.Contact(normal(0, 0), new Vector3D(0.035, upM, toToeM)));
    }

    @net.jqwik.api.Tag("analytic")
    @Property(tries = 300)
    void centralBlow_isTheClosedForm(
            @ForAll @DoubleRange(min = 20, max = 60) double speedMps,
            @ForAll @DoubleRange(min = 0.15, max = 0.4) double massKg,
            @ForAll @DoubleRange(min = 0, max = 88) double loftDeg) {
        Restitution restitution = Restitution.PENNER_DRIVER;
        Rebound closed = new PointHead(speedMps, massKg, restitution).strike(BALL, loftDeg);
        BallStart start = central(speedMps, massKg, restitution, normal(loftDeg, 0));
        assertEquals(1, start.launch().ballSpeedMps() / closed.ballSpeedMps(), 1e-12);
        assertEquals(
                Math.toRadians(closed.launchFromPathDeg()),
                Math.toRadians(start.launch().launchDeg()),
                1e-12);
        assertEquals(closed.spinRpm(), start.launch().spinRpm(), 1e-12 * Math.max(1, closed.spinRpm()));
        assertEquals(0, start.ballMps().getZ(), 1e-12);
    }

    @net.jqwik.api.Tag("analytic")
    @Property(tries = 500)
    void anyBlow_keepsMomentumAndNeverGainsEnergy(
            @ForAll @DoubleRange(min = 0, max = 1) double restitutionRatio,
            @ForAll @DoubleRange(min = 0, max = 75) double loftDeg,
            @ForAll @DoubleRange(min = -30, max = 30) double closedDeg,
            @ForAll @DoubleRange(min = -0.06, max = 0.06) double upM,
            @ForAll @DoubleRange(min = -0.06, max = 0.06) double toToeM,
            @ForAll @DoubleRange(min = -0.05, max = 0.05) double forwardM,
            @ForAll @DoubleRange(min = -40, max = 40) double turnRadPerS) {
        RigidHead before = new RigidHead(
                0.2,
                INERTIA,
                new Vector3D(45, -3, 2),
                new Vector3D(0.3, 1, -0.5).scalarMultiply(turnRadPerS),
                normalMps -> restitutionRatio);
        RigidHead.Contact contact =
                new RigidHead.Contact(normal(loftDeg, closedDeg), new Vector3D(forwardM, upM, toToeM));
        RigidHead.Result after = before.strike(BALL, contact);
        Vector3D impulse = after.ball().ballMps().scalarMultiply(BALL.massKg());
        Vector3D momentum = impulse.add(after.centreMps().scalarMultiply(0.2));
        assertEquals(0, momentum.distance(before.centreMps().scalarMultiply(0.2)), 1e-12);
        Vector3D turned = times(after.headRadPerS().subtract(before.radPerS()))
                .add(contact.fromCentreM().crossProduct(impulse));
        assertEquals(0, turned.getNorm(), 1e-12);
        double energyBefore = energyOfHead(before.centreMps(), before.radPerS());
        double energyAfter = energyOfHead(after.centreMps(), after.headRadPerS()) + energyOfBall(after.ball());
        assertTrue(energyAfter <= energyBefore * (1 + 1e-12), energyAfter + " J after " + energyBefore + " J");
    }

    private static double energyOfHead(Vector3D centreMps, Vector3D radPerS) {
        return 0.5 * 0.2 * centreMps.getNormSq() + 0.5 * radPerS.dotProduct(times(radPerS));
    }

    private static double energyOfBall(BallStart ball) {
        double inertiaKgM2 = 0.4 * BALL.massKg() * BALL.radiusM() * BALL.radiusM();
        return 0.5 * BALL.massKg() * ball.ballMps().getNormSq()
                + 0.5 * inertiaKgM2 * ball.ballRadPerS().getNormSq();
    }

    private static Vector3D times(Vector3D radPerS) {
        return new Vector3D(INERTIA.operate(radPerS.toArray()));
    }

    /** Rolling, or else sliding with all the grip there is. */
    @net.jqwik.api.Tag("analytic")
    @Property(tries = 300)
    void ball_leavesRollingOrAtTheEndOfTheGrip(
            @ForAll @DoubleRange(min = 0, max = 75) double loftDeg,
            @ForAll @DoubleRange(min = -0.04, max = 0.04) double upM,
            @ForAll @DoubleRange(min = -0.04, max = 0.04) double toToeM) {
        Vector3D normal = normal(loftDeg, 1);
        Vector3D armM = new Vector3D(0.03, upM, toToeM);
        RigidHead.Result after =
                head(INERTIA, 40, 0.25, normalMps -> 0.8).strike(BALL, new RigidHead.Contact(normal, armM));
        Vector3D ballMps = after.ball()
                .ballMps()
                .subtract(BALL.radiusM(), after.ball().ballRadPerS().crossProduct(normal));
        Vector3D faceMps = after.centreMps().add(after.headRadPerS().crossProduct(armM));
        Vector3D apartMps = ballMps.subtract(faceMps);
        double slipMps = apartMps.subtract(apartMps.dotProduct(normal), normal).getNorm();
        double pressMps = after.ball().ballMps().dotProduct(normal);
        double alongMps = after.ball().ballMps().subtract(pressMps, normal).getNorm();
        assertTrue(apartMps.dotProduct(normal) > 0);
        assertTrue(slipMps < 1e-9 || Math.abs(alongMps / pressMps - PointHead.GRIP_RATIO) < 1e-9, slipMps + " m/s");
    }

    /** Seen in a mirror: a head even from heel to toe, struck as far to the other side, spins the ball the other way. */
    @net.jqwik.api.Tag("analytic")
    @Property(tries = 200)
    void mirroredBlow_hasTheMirroredResult(
            @ForAll @DoubleRange(min = 0, max = 70) double loftDeg,
            @ForAll @DoubleRange(min = -10, max = 10) double closedDeg,
            @ForAll @DoubleRange(min = -0.04, max = 0.04) double toToeM) {
        BallStart one = even(normal(loftDeg, closedDeg), toToeM);
        BallStart other = even(normal(loftDeg, -closedDeg), -toToeM);
        assertEquals(one.launch().ballSpeedMps(), other.launch().ballSpeedMps(), 1e-9);
        assertEquals(one.launch().launchDeg(), other.launch().launchDeg(), 1e-9);
        assertEquals(one.startClosedDeg(), -other.startClosedDeg(), 1e-9);
        assertEquals(one.ballRadPerS().getY(), -other.ballRadPerS().getY(), 1e-8);
        assertEquals(one.ballRadPerS().getZ(), other.ballRadPerS().getZ(), 1e-8);
    }

    private static BallStart even(Vector3D normal, double toToeM) {
        return head(EVEN_INERTIA, 45, 0.2, Restitution.PENNER_DRIVER)
                .strike(BALL, new RigidHead.Contact(normal, new Vector3D(0.035, 0.005, toToeM)))
                .ball();
    }

    /** Gear effect: the head turns open under a blow on the toe, and its face drags the ball into a closing spin. */
    @Tag("analytic")
    @Test
    void blowOnTheToe_opensTheHeadAndClosesTheSpin() {
        RigidHead.Result toe = driver(0, 0.015);
        assertTrue(toe.headRadPerS().getY() < 0);
        assertTrue(tiltClosedDeg(toe.ball()) > 0);
        assertTrue(toe.ball().startClosedDeg() < 0);
        RigidHead.Result heel = driver(0, -0.015);
        assertTrue(tiltClosedDeg(heel.ball()) < 0 && heel.headRadPerS().getY() > 0);
        double centreMps = driver(0, 0).ball().launch().ballSpeedMps();
        assertTrue(toe.ball().launch().ballSpeedMps() < centreMps);
        assertTrue(driver(0, 0.03).ball().ballRadPerS().getY()
                > toe.ball().ballRadPerS().getY());
    }

    /** The same in the upright plane: high on the face less backspin and a higher launch, low the reverse. */
    @Tag("analytic")
    @Test
    void highBlow_launchesHigherWithLessBackspin() {
        BallStart high = driver(0.01, 0).ball();
        BallStart low = driver(-0.01, 0).ball();
        assertTrue(high.ballRadPerS().getZ() < 0 && low.ballRadPerS().getZ() > 0);
        assertTrue(high.launch().launchDeg() > 0 && low.launch().launchDeg() < 0);
    }

    /** Without a lever arm to the centre of gravity along the shot there is no gear effect. */
    @Tag("analytic")
    @Test
    void centreOfGravityInTheFace_givesNoGearEffect() {
        RigidHead.Result toe = head(EVEN_INERTIA, 45, 0.2, Restitution.PENNER_DRIVER)
                .strike(BALL, new RigidHead.Contact(normal(0, 0), new Vector3D(0, 0, 0.015)));
        assertEquals(0, toe.ball().ballRadPerS().getNorm(), 1e-9);
        assertTrue(toe.headRadPerS().getY() < -10);
    }

    @Tag("analytic")
    @Test
    void headThatMovesAway_leavesTheBallAlone() {
        BallStart start = central(-10, 0.2, Restitution.PERFECT, normal(10, 0));
        assertEquals(0, start.ballMps().getNorm());
    }

    /**
     * Wood, Henrikson and Broadie 2018, Proceedings 2(6), 249 [read]: the ball starts 61 to 83 % of the way from path to
     * face. Met by lofts of 10 to 45 degrees for a central blow; over about 55 degrees the model starts the
     * ball closer to the path than that.
     */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"10, 0.20", "20, 0.22", "30, 0.27", "40, 0.28", "45, 0.29"})
    void start_liesBetweenPathAndFace(double loftDeg, double massKg) {
        double share = central(42, massKg, Restitution.PENNER_DRIVER, normal(loftDeg, 2))
                        .startClosedDeg()
                / 2;
        assertTrue(share > 0.61 && share < 0.83, () -> "share " + share);
    }

    /**
     * Face headings of a lie 2 degrees off, atan(tan(loft) sin(2 deg)), and start directions [own], which come
     * without head and speed; one head of 0.26 kg at 32 m/s meets all within 0.005 degrees.
     */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({
        "10, 0.353, 0.286",
        "20, 0.728, 0.580",
        "30, 1.154, 0.894",
        "40, 1.677, 1.225",
        "50, 2.382, 1.565",
        "60, 3.459, 1.859"
    })
    void lieOff_startsTheBallLessFarOffThanTheFace(double loftDeg, double faceDeg, double startDeg) {
        double headingDeg = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(loftDeg)) * Math.sin(Math.toRadians(2))));
        assertEquals(faceDeg, headingDeg, 0.0006);
        BallStart start = central(32, 0.26, Restitution.PENNER_DRIVER, normal(loftDeg, headingDeg));
        assertEquals(startDeg, start.startClosedDeg(), 0.005);
    }
}
