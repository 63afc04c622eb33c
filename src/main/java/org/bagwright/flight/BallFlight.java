package org.bagwright.flight;

import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.bagwright.domain.AirConditions;
import org.bagwright.domain.BallModelKind;

/**
 * Flights of a standard ball in one air under one ball model, in the vertical plane, without wind. Safe to share between
 * threads. The integration is good to a few millimetres of carry.
 */
public final class BallFlight {
    /** Standard gravity, m/s2; from equator to pole the true value changes by half a percent. */
    static final double GRAVITY_MPS2 = 9.80665;

    private static final double LONGEST_S = 60;
    private static final double RADIANS_PER_S_PER_RPM = Math.PI / 30;

    private final Air air;
    private final BallModel model;
    private final double gravityMps2;

    /**
     * Flights in the air of a book.
     *
     * @param air temperature, altitude and humidity
     * @param model which published ball model
     */
    public BallFlight(AirConditions air, BallModelKind model) {
        this(Air.of(air), BallModel.of(model), GRAVITY_MPS2);
    }

    BallFlight(Air air, BallModel model, double gravityMps2) {
        this.air = air;
        this.model = model;
        this.gravityMps2 = gravityMps2;
    }

    /**
     * Flies one ball until it comes down to the height at which it started.
     *
     * @param launch how it starts; a launch at or below the horizontal does not fly
     * @param dragRatio factor on the drag of the ball model, 1 for the model as published
     * @return the flight; its carry is never negative
     */
    public Flight fly(Launch launch, double dragRatio) {
        if (!(launch.launchDeg() > 0 && launch.ballSpeedMps() > 0)) {
            return Flight.NONE;
        }
        FlightEquations equations = equations(dragRatio);
        double[] state = start(launch);
        Apex apex = new Apex();
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-10, 2, 1e-5, 1e-7);
        integrator.addEventHandler(new Ground(), 0.5, 1e-9, 200);
        integrator.addEventHandler(apex, 0.5, 1e-9, 200);
        double timeS = integrator.integrate(equations, 0, state, LONGEST_S, state);
        double landingRad = Math.atan2(-state[FlightEquations.SPEED_Y], Math.abs(state[FlightEquations.SPEED_X]));
        return new Flight(Math.max(0, state[FlightEquations.X]), apex.heightM, Math.toDegrees(landingRad), timeS);
    }

    /** Whether the ball model's publication does not cover the launch, so that the flight rests on our extension of it. */
    public boolean leansOnExtension(Launch launch) {
        double radiusM = Ball.STANDARD.radiusM();
        double speedMps = Math.max(launch.ballSpeedMps(), 1e-9);
        double reynolds = 2 * radiusM * air.densityKgPerM3() * speedMps / air.viscosityPaS();
        return model.extendedFor(launch.spinRpm() * RADIANS_PER_S_PER_RPM * radiusM / speedMps, reynolds);
    }

    FlightEquations equations(double dragRatio) {
        return new FlightEquations(model, Ball.STANDARD, air, gravityMps2, dragRatio);
    }

    static double[] start(Launch launch) {
        double angleRad = Math.toRadians(launch.launchDeg());
        double[] state = new double[5];
        state[FlightEquations.SPEED_X] = launch.ballSpeedMps() * Math.cos(angleRad);
        state[FlightEquations.SPEED_Y] = launch.ballSpeedMps() * Math.sin(angleRad);
        state[FlightEquations.SPIN] = launch.spinRpm() * RADIANS_PER_S_PER_RPM;
        return state;
    }

    /** Stops the flight at launch height on the way down; the term in rising speed keeps the start from counting. */
    private static final class Ground implements EventHandler {
        @Override
        public void init(double startS, double[] state, double endS) {}

        @Override
        public double g(double timeS, double[] state) {
            double risingMps = Math.max(0, state[FlightEquations.SPEED_Y]);
            return state[FlightEquations.Y] + risingMps * risingMps;
        }

        @Override
        public Action eventOccurred(double timeS, double[] state, boolean increasing) {
            return increasing ? Action.CONTINUE : Action.STOP;
        }

        @Override
        public void resetState(double timeS, double[] state) {}
    }

    /** Notes the greatest height where the ball stops rising. */
    private static final class Apex implements EventHandler {
        private double heightM;

        @Override
        public void init(double startS, double[] state, double endS) {}

        @Override
        public double g(double timeS, double[] state) {
            return state[FlightEquations.SPEED_Y];
        }

        @Override
        public Action eventOccurred(double timeS, double[] state, boolean increasing) {
            heightM = Math.max(heightM, state[FlightEquations.Y]);
            return Action.CONTINUE;
        }

        @Override
        public void resetState(double timeS, double[] state) {}
    }
}
