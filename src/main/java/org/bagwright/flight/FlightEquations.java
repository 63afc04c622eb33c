package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * A spinning ball in a steady wind. Frame: x to the target, y up, side to the right; the spin axis keeps its direction,
 * {@code (0, 0, 1)} is backspin. State in SI units: x, y, their speeds, the spin, and only for a flight that leaves the
 * vertical plane also side and its speed. Lift acts along {@code axis x speed}. The spin falls as Smits and Smith 1994 give
 * it, {@code d(omega)/dt = -2.0e-5 V omega / r}, for either ball model: Bearman and Harvey measured none.
 */
final class FlightEquations implements FirstOrderDifferentialEquations {
    static final int X = 0;
    static final int Y = 1;
    static final int SPEED_X = 2;
    static final int SPEED_Y = 3;
    static final int SPIN = 4;
    static final int SIDE = 5;
    static final int SPEED_SIDE = 6;
    static final int PLANE = 5;
    static final int SPACE = 7;
    private static final double SPIN_DECAY = 2.0e-5;
    private static final double LEAST_SPEED_MPS = 1e-9;

    private final BallModel model;
    private final double radiusM;
    private final double reynoldsPerMps;
    private final double gravityMps2;
    private final double pressurePerSpeed;
    private final Path path;

    /**
     * What one flight adds to the equations.
     *
     * @param dragRatio factor on the drag of the ball model
     * @param liftRatio factor on its lift
     * @param windMps speed of the air over the ground
     * @param spinAxis direction of the spin, of length 1
     * @param dimension {@link #PLANE} or {@link #SPACE}
     */
    record Path(double dragRatio, double liftRatio, Vector3D windMps, Vector3D spinAxis, int dimension) {}

    FlightEquations(BallModel model, Ball ball, Air air, double gravityMps2, Path path) {
        this.model = model;
        this.radiusM = ball.radiusM();
        this.gravityMps2 = gravityMps2;
        this.path = path;
        this.reynoldsPerMps = 2 * ball.radiusM() * air.densityKgPerM3() / air.viscosityPaS();
        double sectionM2 = Math.PI * ball.radiusM() * ball.radiusM();
        this.pressurePerSpeed = 0.5 * air.densityKgPerM3() * sectionM2 / ball.massKg();
    }

    @Override
    public int getDimension() {
        return path.dimension();
    }

    @Override
    public void computeDerivatives(double t, double[] state, double[] rates) {
        double airX = state[SPEED_X] - path.windMps().getX();
        double airY = state[SPEED_Y] - path.windMps().getY();
        double airSide = sideMps(state) - path.windMps().getZ();
        double speedMps = Math.hypot(Math.hypot(airX, airY), airSide);
        double spin = state[SPIN];
        rates[X] = state[SPEED_X];
        rates[Y] = state[SPEED_Y];
        rates[SPIN] = -SPIN_DECAY * speedMps * spin / radiusM;
        double drag = dragPerS(speedMps, spin);
        double lift = liftPerS(speedMps, spin);
        Vector3D axis = path.spinAxis();
        rates[SPEED_X] = lift * (axis.getY() * airSide - axis.getZ() * airY) - drag * airX;
        rates[SPEED_Y] = lift * (axis.getZ() * airX - axis.getX() * airSide) - drag * airY - gravityMps2;
        if (path.dimension() == SPACE) {
            rates[SIDE] = state[SPEED_SIDE];
            rates[SPEED_SIDE] = lift * (axis.getX() * airY - axis.getY() * airX) - drag * airSide;
        }
    }

    private double dragPerS(double speedMps, double spin) {
        return speedMps > LEAST_SPEED_MPS
                ? pressurePerSpeed
                        * speedMps
                        * model.drag(spinRatio(speedMps, spin), reynoldsPerMps * speedMps)
                        * path.dragRatio()
                : 0;
    }

    private double liftPerS(double speedMps, double spin) {
        return speedMps > LEAST_SPEED_MPS
                ? pressurePerSpeed
                        * speedMps
                        * model.lift(spinRatio(speedMps, spin), reynoldsPerMps * speedMps)
                        * path.liftRatio()
                : 0;
    }

    private double spinRatio(double speedMps, double spin) {
        return Math.max(0, spin) * radiusM / speedMps;
    }

    private double sideMps(double[] state) {
        return path.dimension() == SPACE ? state[SPEED_SIDE] : 0;
    }
}
