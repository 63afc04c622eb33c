package org.bagwright.flight;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * A spinning ball in still air, in the vertical plane. State: x, y, their speeds, and the spin, in SI units. The spin falls
 * as Smits and Smith 1994 give it, {@code d(omega)/dt = -2.0e-5 V omega / r}, for either ball model: Bearman and Harvey
 * measured none.
 */
final class FlightEquations implements FirstOrderDifferentialEquations {
    static final int X = 0;
    static final int Y = 1;
    static final int SPEED_X = 2;
    static final int SPEED_Y = 3;
    static final int SPIN = 4;
    private static final double SPIN_DECAY = 2.0e-5;

    private final BallModel model;
    private final double radiusM;
    private final double reynoldsPerMps;
    private final double gravityMps2;
    private final double pressurePerSpeed;
    private final double dragRatio;

    FlightEquations(BallModel model, Ball ball, Air air, double gravityMps2, double dragRatio) {
        this.model = model;
        this.radiusM = ball.radiusM();
        this.gravityMps2 = gravityMps2;
        this.dragRatio = dragRatio;
        this.reynoldsPerMps = 2 * ball.radiusM() * air.densityKgPerM3() / air.viscosityPaS();
        double sectionM2 = Math.PI * ball.radiusM() * ball.radiusM();
        this.pressurePerSpeed = 0.5 * air.densityKgPerM3() * sectionM2 / ball.massKg();
    }

    @Override
    public int getDimension() {
        return 5;
    }

    @Override
    public void computeDerivatives(double t, double[] state, double[] rates) {
        double speedMps = Math.hypot(state[SPEED_X], state[SPEED_Y]);
        double spin = state[SPIN];
        rates[X] = state[SPEED_X];
        rates[Y] = state[SPEED_Y];
        rates[SPEED_X] = 0;
        rates[SPEED_Y] = -gravityMps2;
        rates[SPIN] = -SPIN_DECAY * speedMps * spin / radiusM;
        if (speedMps > 1e-9) {
            double spinRatio = Math.max(0, spin) * radiusM / speedMps;
            double reynolds = reynoldsPerMps * speedMps;
            double drag = pressurePerSpeed * speedMps * model.drag(spinRatio, reynolds) * dragRatio;
            double lift = pressurePerSpeed * speedMps * model.lift(spinRatio, reynolds);
            rates[SPEED_X] -= drag * state[SPEED_X] + lift * state[SPEED_Y];
            rates[SPEED_Y] += lift * state[SPEED_X] - drag * state[SPEED_Y];
        }
    }
}
