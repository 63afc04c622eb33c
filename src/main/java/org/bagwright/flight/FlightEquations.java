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
    private final double windX;
    private final double windY;
    private final double windSide;
    private final double axisX;
    private final double axisY;
    private final double axisSide;

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
        this.windX = path.windMps().getX();
        this.windY = path.windMps().getY();
        this.windSide = path.windMps().getZ();
        this.axisX = path.spinAxis().getX();
        this.axisY = path.spinAxis().getY();
        this.axisSide = path.spinAxis().getZ();
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
        double airX = state[SPEED_X] - windX;
        double airY = state[SPEED_Y] - windY;
        double airSide = sideMps(state) - windSide;
        double inPlaneMps = Math.hypot(airX, airY);
        double speedMps = airSide == 0 ? inPlaneMps : Math.hypot(inPlaneMps, airSide);
        double spin = state[SPIN];
        rates[X] = state[SPEED_X];
        rates[Y] = state[SPEED_Y];
        rates[SPIN] = -SPIN_DECAY * speedMps * spin / radiusM;
        boolean moves = speedMps > LEAST_SPEED_MPS;
        double spinRatio = moves ? Math.max(0, spin) * radiusM / speedMps : 0;
        double reynolds = reynoldsPerMps * speedMps;
        double pressurePerS = pressurePerSpeed * speedMps;
        double drag = moves ? pressurePerS * model.drag(spinRatio, reynolds) * path.dragRatio() : 0;
        double lift = moves ? pressurePerS * model.lift(spinRatio, reynolds) * path.liftRatio() : 0;
        rates[SPEED_X] = lift * (axisY * airSide - axisSide * airY) - drag * airX;
        rates[SPEED_Y] = lift * (axisSide * airX - axisX * airSide) - drag * airY - gravityMps2;
        if (path.dimension() == SPACE) {
            rates[SIDE] = state[SPEED_SIDE];
            rates[SPEED_SIDE] = lift * (axisX * airY - axisY * airX) - drag * airSide;
        }
    }

    private double sideMps(double[] state) {
        return path.dimension() == SPACE ? state[SPEED_SIDE] : 0;
    }
}
