package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;

/**
 * Flights of a standard ball in one air and wind under one ball model. A flight that nothing takes out of the vertical plane
 * is computed in the plane. Safe to share between threads. The integration is good to a few millimetres of carry.
 */
public final class BallFlight {
    /** Standard gravity, m/s2; from equator to pole the true value changes by half a percent. */
    public static final double GRAVITY_MPS2 = 9.80665;

    private static final double LONGEST_S = 60;

    private final Air air;
    private final Vector3D windMps;
    private final BallModel model;
    private final double gravityMps2;

    /**
     * Flights in the air of a book.
     *
     * @param air temperature, altitude, humidity and wind, as a right-hander meets it
     * @param model which published ball model
     */
    public BallFlight(AirConditions air, BallModelKind model) {
        this(Air.of(air), new Vector3D(-air.headWindMps(), 0, air.crossWindMps()), model(model), GRAVITY_MPS2);
    }

    BallFlight(Air air, BallModel model, double gravityMps2) {
        this(air, Vector3D.ZERO, model, gravityMps2);
    }

    private BallFlight(Air air, Vector3D windMps, BallModel model, double gravityMps2) {
        this.air = air;
        this.windMps = windMps;
        this.model = model;
        this.gravityMps2 = gravityMps2;
    }

    /** The published model of this name. */
    static BallModel model(BallModelKind kind) {
        return switch (kind) {
            case BEARMAN_HARVEY -> BearmanHarvey.MODEL;
            case SMITS_SMITH -> SmitsSmith.MODEL;
        };
    }

    /**
     * Flies one ball until it comes down to the height at which it started.
     *
     * @param launch how it starts; a launch at or below the horizontal does not fly
     * @param dragRatio factor on the drag of the ball model, 1 for the model as published
     * @return the flight; its carry is never negative
     */
    public Flight fly(Launch launch, double dragRatio) {
        return fly(BallStart.of(launch), dragRatio);
    }

    /** The same for a ball that starts off line or spins about a tilted axis. */
    public Flight fly(BallStart start, double dragRatio) {
        return fly(start, dragRatio, 1);
    }

    /**
     * The same with a factor on the lift too.
     *
     * @param liftRatio factor on the lift of the ball model, 1 for the model as published
     */
    public Flight fly(BallStart start, double dragRatio, double liftRatio) {
        double speedMps = start.ballMps().getNorm();
        if (!(start.ballMps().getY() > 0 && speedMps > 0)) {
            return Flight.NONE;
        }
        FlightEquations equations = equations(start, dragRatio, liftRatio);
        double[] state = state(start, equations.getDimension());
        Apex apex = new Apex();
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-10, 2, 1e-5, 1e-7);
        integrator.addEventHandler(new Ground(), 0.5, 1e-9, 200);
        integrator.addEventHandler(apex, 0.5, 1e-9, 200);
        double timeS = integrator.integrate(equations, 0, state, LONGEST_S, state);
        return landed(state, apex.heightM, timeS);
    }

    private static Flight landed(double[] state, double apexM, double timeS) {
        boolean inSpace = state.length == FlightEquations.SPACE;
        double sideMps = inSpace ? state[FlightEquations.SPEED_SIDE] : 0;
        double alongMps = Math.hypot(state[FlightEquations.SPEED_X], sideMps);
        double landingRad = Math.atan2(-state[FlightEquations.SPEED_Y], alongMps);
        return new Flight(
                Math.max(0, state[FlightEquations.X]),
                apexM,
                Math.toDegrees(landingRad),
                timeS,
                inSpace ? -state[FlightEquations.SIDE] : 0);
    }

    /** Whether the ball model's publication does not cover the launch, so that the flight rests on our extension of it. */
    public boolean leansOnExtension(Launch launch) {
        double radiusM = Ball.STANDARD.radiusM();
        double speedMps = Math.max(launch.ballSpeedMps(), 1e-9);
        double reynolds = 2 * radiusM * air.densityKgPerM3() * speedMps / air.viscosityPaS();
        return model.extendedFor(launch.spinRpm() / BallStart.RPM_PER_RAD_PER_S * radiusM / speedMps, reynolds);
    }

    FlightEquations equations(BallStart start, double dragRatio) {
        return equations(start, dragRatio, 1.0);
    }

    private FlightEquations equations(BallStart start, double dragRatio, double liftRatio) {
        boolean inPlane = windMps.getZ() == 0 && start.ballMps().getZ() == 0 && leansNowhere(start.ballRadPerS());
        int dimension = inPlane ? FlightEquations.PLANE : FlightEquations.SPACE;
        return equations(start, dragRatio, liftRatio, dimension);
    }

    FlightEquations equations(BallStart start, double dragRatio, int dimension) {
        return equations(start, dragRatio, 1.0, dimension);
    }

    private FlightEquations equations(BallStart start, double dragRatio, double liftRatio, int dimension) {
        double spin = start.ballRadPerS().getNorm();
        Vector3D axis = spin == 0 ? Vector3D.PLUS_K : start.ballRadPerS().scalarMultiply(1 / spin);
        return new FlightEquations(
                model,
                Ball.STANDARD,
                air,
                gravityMps2,
                new FlightEquations.Path(dragRatio, liftRatio, windMps, axis, dimension));
    }

    private static boolean leansNowhere(Vector3D spin) {
        return spin.getX() == 0 && spin.getY() == 0 && spin.getZ() >= 0;
    }

    static double[] state(BallStart start, int dimension) {
        double[] state = new double[dimension];
        state[FlightEquations.SPEED_X] = start.ballMps().getX();
        state[FlightEquations.SPEED_Y] = start.ballMps().getY();
        state[FlightEquations.SPIN] = start.ballRadPerS().getNorm();
        if (dimension == FlightEquations.SPACE) {
            state[FlightEquations.SPEED_SIDE] = start.ballMps().getZ();
        }
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
