package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.bagwright.domain.book.BallModelKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PointHeadTest {
    /** The ball of the published impact figures. */
    private static final Ball BALL = new Ball(0.0459, 0.02135);

    private static Rebound driver(double headMps, double spinLoftDeg) {
        return new PointHead(headMps, 0.2, Restitution.PENNER_DRIVER).strike(BALL, spinLoftDeg);
    }

    /** Closed form, 200 g head, 45.9 g ball of 21.35 mm, Penner's restitution [own]. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({
        "45, 10, 62.45, 8.08,  2343",
        "45, 12, 62.07, 9.68,  2805",
        "50, 10, 68.81, 8.06,  2603",
        "40, 14, 55.22, 11.31, 2901"
    })
    void driverBlow_isTheClosedForm(double headMps, double loftDeg, double ballMps, double launchDeg, double rpm) {
        Rebound rebound = driver(headMps, loftDeg);
        assertEquals(ballMps, rebound.ballSpeedMps(), 0.0051);
        assertEquals(launchDeg, rebound.launchFromPathDeg(), 0.0051);
        assertEquals(rpm, rebound.spinRpm(), 0.51);
    }

    /** Zero loft: ball over head speed is (1 + e) / (1 + m / M), 1.488 at e 0.83 and 200 g [own]. */
    @Tag("analytic")
    @Test
    void straightBlow_givesTheSmashOfTheClosedForm() {
        Rebound rebound = new PointHead(50, 0.2, normalMps -> 0.83).strike(BALL, 0);
        assertEquals(1.488, rebound.ballSpeedMps() / 50, 0.0005);
        assertEquals(0, rebound.spinRpm());
        assertEquals(0, rebound.launchFromPathDeg());
    }

    /**
     * Penner 2003, Rep. Prog. Phys. 66, p. 161 [quoted]: at 45 m/s with a 200 g head the loft for greatest carry is 14.9
     * degrees, allowed 0.3; an independent program gave 210.6 yd [own], allowed 1 yd as for the carries.
     */
    @Tag("published")
    @Test
    void loftForGreatestCarry_isPenners() {
        double loftDeg = bestLoftDeg(45);
        assertEquals(14.9, loftDeg, 0.3);
        assertEquals(210.6, carryM(45, loftDeg) / 0.9144, 1);
    }

    @Tag("analytic")
    @Test
    void loftForGreatestCarry_fallsAsTheHeadIsFaster() {
        double before = 90;
        for (double headMps = 30; headMps <= 60; headMps += 5) {
            double loftDeg = bestLoftDeg(headMps);
            assertTrue(loftDeg < before - 0.5, headMps + " m/s: " + loftDeg);
            before = loftDeg;
        }
    }

    private static double bestLoftDeg(double headMps) {
        return new BrentOptimizer(1e-5, 1e-5)
                .optimize(
                        new MaxEval(200),
                        GoalType.MAXIMIZE,
                        new SearchInterval(5, 35, 15),
                        new UnivariateObjectiveFunction(loftDeg -> carryM(headMps, loftDeg)))
                .getPoint();
    }

    private static double carryM(double headMps, double loftDeg) {
        BallFlight flights = new BallFlight(
                BallFlightTest.CHECK_AIR, BallFlight.model(BallModelKind.BEARMAN_HARVEY), BallFlight.GRAVITY_MPS2);
        return flights.fly(driver(headMps, loftDeg).along(0), 1).carryM();
    }

    /** Momentum and, for a perfect blow without loft, energy are kept: the ball's speed is that of two bodies on a line. */
    @Tag("analytic")
    @Test
    void perfectStraightBlow_keepsEnergy() {
        double headKg = 0.25;
        Rebound rebound = new PointHead(40, headKg, Restitution.PERFECT).strike(BALL, 0);
        double ballMps = rebound.ballSpeedMps();
        double headAfterMps = 40 - BALL.massKg() * ballMps / headKg;
        double before = headKg * 40 * 40;
        double after = headKg * headAfterMps * headAfterMps + BALL.massKg() * ballMps * ballMps;
        assertEquals(before, after, 1e-9);
    }

    /** Rolling: the ball's surface moves along the face as the face does, here a face held still by a very heavy head. */
    @Tag("analytic")
    @Test
    void ballLeavesRolling_underAHeavyHead() {
        Rebound rebound = new PointHead(40, 1e9, normalMps -> 0.8).strike(BALL, 30);
        double spin = rebound.spinRpm() * Math.PI / 30;
        double alongMps = rebound.ballSpeedMps() * Math.sin(Math.toRadians(30 - rebound.launchFromPathDeg()));
        double faceMps = 40 * Math.sin(Math.toRadians(30));
        assertEquals(faceMps, alongMps + spin * BALL.radiusM(), 1e-6);
    }

    @Tag("analytic")
    @Test
    void steepBlow_slidesAndKeepsLaunchingHigher() {
        double before = -1;
        for (double loftDeg = 0; loftDeg <= 85; loftDeg += 0.5) {
            Rebound rebound = new PointHead(35, 0.3, normalMps -> 0.78).strike(Ball.STANDARD, loftDeg);
            assertTrue(rebound.launchFromPathDeg() > before, "at " + loftDeg);
            assertTrue(loftDeg - rebound.launchFromPathDeg() <= Math.toDegrees(Math.atan(0.4)) + 1e-9);
            before = rebound.launchFromPathDeg();
        }
    }
}
