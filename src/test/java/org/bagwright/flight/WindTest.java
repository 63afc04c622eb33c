package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Flights that leave the vertical plane, and flights in wind. */
class WindTest {
    /**
     * A start off line, or with a tilted spin axis.
     *
     * @param startClosedDeg direction of the start, degrees left of the target
     * @param tiltClosedDeg tilt of the spin axis seen from behind, degrees; positive curves the ball to the left
     */
    private static BallStart start(Launch launch, double startClosedDeg, double tiltClosedDeg) {
        BallStart straight = BallStart.of(launch);
        Rotation toLeft =
                new Rotation(Vector3D.PLUS_J, Math.toRadians(startClosedDeg), RotationConvention.VECTOR_OPERATOR);
        Rotation tilt =
                new Rotation(Vector3D.PLUS_I, -Math.toRadians(tiltClosedDeg), RotationConvention.VECTOR_OPERATOR);
        return new BallStart(toLeft.applyTo(straight.ballMps()), toLeft.applyTo(tilt.applyTo(straight.ballRadPerS())));
    }

    private static final double MPS_PER_MPH = 0.44704;

    private static BallFlight in(BallModelKind kind, double headMps, double crossMps) {
        return new BallFlight(new AirConditions(20, 0, 0.5, headMps, crossMps), kind);
    }

    private static Launch any(Random random) {
        return new Launch(
                30 + 45 * random.nextDouble(), 8 + 25 * random.nextDouble(), 1500 + 7000 * random.nextDouble());
    }

    /** Carries of the program before it knew of side and wind, at 1.2041 kg/m3. */
    @Tag("regression")
    @ParameterizedTest
    @CsvSource({
        "BEARMAN_HARVEY, 167.7, 10.8, 2599, 240.37293190071966",
        "SMITS_SMITH, 167.7, 10.8, 2599, 230.23465852162994",
        "BEARMAN_HARVEY, 120.0, 16, 7000, 150.88964101445703",
        "SMITS_SMITH, 120.0, 16, 7000, 167.73546309206924",
        "BEARMAN_HARVEY, 80.0, 30, 9500, 82.98443661402996",
        "SMITS_SMITH, 80.0, 30, 9500, 95.51666136175376"
    })
    void stillAirWithoutTilt_carriesAsInThePlane(
            BallModelKind kind, double mph, double deg, double rpm, double carryM) {
        BallFlight flights = new BallFlight(BallFlightTest.CHECK_AIR, BallFlight.model(kind), BallFlight.GRAVITY_MPS2);
        Flight flight = flights.fly(new Launch(mph * MPS_PER_MPH, deg, rpm), 1);
        assertEquals(carryM, flight.carryM(), 1e-9);
        assertEquals(0, flight.sidewaysClosedM());
    }

    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(BallModelKind.class)
    void equationsInSpace_areThoseOfThePlaneForAPlainBackspin(BallModelKind kind) {
        BallFlight flights = in(kind, 4, 0);
        BallStart start = BallStart.of(new Launch(60, 14, 3000));
        double[] plane = new double[FlightEquations.PLANE];
        double[] space = new double[FlightEquations.SPACE];
        flights.equations(start, 0.9).computeDerivatives(0, BallFlight.state(start, FlightEquations.PLANE), plane);
        flights.equations(start, 0.9, FlightEquations.SPACE)
                .computeDerivatives(0, BallFlight.state(start, FlightEquations.SPACE), space);
        assertArrayEquals(plane, java.util.Arrays.copyOf(space, FlightEquations.PLANE), 1e-12);
        assertEquals(0, space[FlightEquations.SIDE]);
        assertEquals(0, space[FlightEquations.SPEED_SIDE]);
    }

    /** The same flight in the plane and in space, where the second is only forced by a hair of cross wind. */
    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(BallModelKind.class)
    void planeAndSpace_agreeWhereTheyMeet(BallModelKind kind) {
        Random random = new Random(3);
        for (int i = 0; i < 30; i++) {
            Launch launch = any(random);
            double planeM = in(kind, 0, 0).fly(launch, 1).carryM();
            assertEquals(planeM, in(kind, 0, 1e-12).fly(launch, 1).carryM(), 1e-3, launch::toString);
        }
    }

    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(BallModelKind.class)
    void headWindShortens_tailWindLengthensADrive(BallModelKind kind) {
        Launch drive = new Launch(65, 12, 2700);
        double before = Double.POSITIVE_INFINITY;
        for (double headMps = -8; headMps <= 12; headMps += 2) {
            double carryM = in(kind, headMps, 0).fly(drive, 1).carryM();
            assertTrue(carryM < before - 1, kind + " " + headMps + " m/s: " + carryM);
            before = carryM;
        }
    }

    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(BallModelKind.class)
    void crossWindTiltAndStart_areSeenInAMirror(BallModelKind kind) {
        Random random = new Random(8);
        for (int i = 0; i < 30; i++) {
            Launch launch = any(random);
            double crossMps = 20 * random.nextDouble() - 10;
            double startDeg = 10 * random.nextDouble() - 5;
            double tiltDeg = 40 * random.nextDouble() - 20;
            Flight one = in(kind, 3, crossMps).fly(start(launch, startDeg, tiltDeg), 1);
            Flight other = in(kind, 3, -crossMps).fly(start(launch, -startDeg, -tiltDeg), 1);
            assertEquals(one.carryM(), other.carryM(), 1e-9);
            assertEquals(one.sidewaysClosedM(), -other.sidewaysClosedM(), 1e-9);
            assertEquals(one.apexM(), other.apexM(), 1e-9);
        }
    }

    @Tag("analytic")
    @Test
    void windFromTheLeftAndTilt_pushTheBallTheirWay() {
        Launch drive = new Launch(65, 12, 2700);
        BallFlight still = in(BallModelKind.BEARMAN_HARVEY, 0, 0);
        assertTrue(in(BallModelKind.BEARMAN_HARVEY, 0, 5).fly(drive, 1).sidewaysClosedM() < -5);
        assertTrue(still.fly(start(drive, 0, 10), 1).sidewaysClosedM() > 5);
        assertEquals(3, start(drive, 3, 10).startClosedDeg(), 1e-9);
    }

    /** Without tilt, a start off line is only turned: the flight is as far, in that direction. */
    @Tag("analytic")
    @Test
    void startOffLine_turnsTheWholeFlight() {
        Launch drive = new Launch(65, 12, 2700);
        BallFlight still = in(BallModelKind.BEARMAN_HARVEY, 0, 0);
        double straightM = still.fly(drive, 1).carryM();
        Flight turned = still.fly(start(drive, 5, 0), 1);
        assertEquals(straightM * Math.cos(Math.toRadians(5)), turned.carryM(), 1e-4);
        assertEquals(straightM * Math.sin(Math.toRadians(5)), turned.sidewaysClosedM(), 1e-4);
    }

    /**
     * A steady wind is a moving frame: the flight is that through still air of a ball that starts with the speed it has in
     * the wind, carried along by the wind for its time in the air.
     */
    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(BallModelKind.class)
    void flightInWind_isTheFlightInStillAirCarriedAlong(BallModelKind kind) {
        Random random = new Random(21);
        for (int i = 0; i < 30; i++) {
            double headMps = 16 * random.nextDouble() - 8;
            double crossMps = 16 * random.nextDouble() - 8;
            BallStart start = start(any(random), 2 * random.nextDouble(), 20 * random.nextDouble() - 10);
            Vector3D windMps = new Vector3D(-headMps, 0, crossMps);
            Flight windy = in(kind, headMps, crossMps).fly(start, 1);
            Flight still = in(kind, 0, 0).fly(new BallStart(start.ballMps().subtract(windMps), start.ballRadPerS()), 1);
            assertEquals(still.timeS(), windy.timeS(), 1e-4);
            assertEquals(still.carryM() - headMps * still.timeS(), windy.carryM(), 1e-3);
            assertEquals(still.sidewaysClosedM() - crossMps * still.timeS(), windy.sidewaysClosedM(), 3e-4);
        }
    }
}
