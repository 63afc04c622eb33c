package org.bagwright.flight;

import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;

/**
 * Carries by an integrator of its own (fourth order, fixed step), so that a hidden golfer's truth does not rest on the flights
 * that it judges. No wind.
 */
public final class TrueFlight {
    private static final double STEP_S = 0.04;
    private static final double LONGEST_S = 30;
    private static final int X = 0;
    private static final int Y = 1;
    private static final int SPEED_X = 2;
    private static final int SPEED_Y = 3;
    private static final int SPIN = 4;

    private final BallModel model;
    private final double spinDecay;
    private final double dragRatio;
    private final double liftRatio;
    private final double reynoldsPerMps;
    private final double pressurePerSpeed;

    private TrueFlight(BallModel model, double spinDecay, double dragRatio, double liftRatio) {
        this.model = model;
        this.spinDecay = spinDecay;
        this.dragRatio = dragRatio;
        this.liftRatio = liftRatio;
        Air air = Air.of(AirConditions.DEFAULT);
        double radiusM = Ball.STANDARD.radiusM();
        reynoldsPerMps = 2 * radiusM * air.densityKgPerM3() / air.viscosityPaS();
        pressurePerSpeed = air.densityKgPerM3() * Math.PI * radiusM * radiusM / (2 * Ball.STANDARD.massKg());
    }

    /** A published ball with factors on its drag and lift. */
    public static TrueFlight published(BallModelKind kind, double dragRatio, double liftRatio) {
        return new TrueFlight(BallFlight.model(kind), 2.0e-5, dragRatio, liftRatio);
    }

    /** A ball that is neither published one: invented, within what golf balls have. */
    public static TrueFlight third() {
        return new TrueFlight(new ThirdBall(), 2.4e-5, 1, 1);
    }

    private static final class ThirdBall implements BallModel {
        @Override
        public double drag(double spinRatio, double reynolds) {
            double crisis = 0.06 / (1 + Math.exp((reynolds - 70000) / 15000));
            return 0.225 + 0.34 * Math.pow(spinRatio, 1.2) + crisis;
        }

        @Override
        public double lift(double spinRatio, double reynolds) {
            return 0.42 * (1 - Math.exp(-spinRatio / 0.16)) * (1 + 0.04 * Math.tanh((reynolds - 120000) / 40000));
        }

        @Override
        public boolean extendedFor(double spinRatio, double reynolds) {
            return false;
        }
    }

    /** How far the ball flies until it is down at the height of its start, m. */
    public double carryM(Launch launch) {
        double upRad = Math.toRadians(launch.launchDeg());
        if (!(upRad > 0)) {
            return 0;
        }
        double[] state = {
            0,
            0,
            launch.ballSpeedMps() * Math.cos(upRad),
            launch.ballSpeedMps() * Math.sin(upRad),
            launch.spinRpm() / BallStart.RPM_PER_RAD_PER_S
        };
        for (double timeS = 0; timeS < LONGEST_S; timeS += STEP_S) {
            double[] next = stepped(state, STEP_S);
            if (next[Y] < 0) {
                return landedM(state, next);
            }
            state = next;
        }
        throw new IllegalStateException("a ball that does not come down: " + launch);
    }

    /** Regula falsi on the length of the last step. */
    private double landedM(double[] before, double[] after) {
        double highS = 0;
        double highM = before[Y];
        double lowS = STEP_S;
        double lowM = after[Y];
        double[] landed = after;
        for (int pass = 0; pass < 6 && Math.abs(landed[Y]) > 1e-7; pass++) {
            double middleS = highS + (lowS - highS) * highM / (highM - lowM);
            landed = stepped(before, middleS);
            if (landed[Y] < 0) {
                lowS = middleS;
                lowM = landed[Y];
            } else {
                highS = middleS;
                highM = landed[Y];
            }
        }
        return landed[X];
    }

    private double[] stepped(double[] state, double stepS) {
        double[] first = rates(state);
        double[] second = rates(plus(state, first, stepS / 2));
        double[] third = rates(plus(state, second, stepS / 2));
        double[] fourth = rates(plus(state, third, stepS));
        double[] next = new double[state.length];
        for (int i = 0; i < state.length; i++) {
            next[i] = state[i] + stepS / 6 * (first[i] + 2 * second[i] + 2 * third[i] + fourth[i]);
        }
        return next;
    }

    private static double[] plus(double[] state, double[] rates, double stepS) {
        double[] moved = new double[state.length];
        for (int i = 0; i < state.length; i++) {
            moved[i] = state[i] + stepS * rates[i];
        }
        return moved;
    }

    private double[] rates(double[] state) {
        double speedMps = Math.hypot(state[SPEED_X], state[SPEED_Y]);
        double spinRatio = state[SPIN] * Ball.STANDARD.radiusM() / speedMps;
        double reynolds = reynoldsPerMps * speedMps;
        double dragPerS = dragRatio * pressurePerSpeed * speedMps * model.drag(spinRatio, reynolds);
        double liftPerS = liftRatio * pressurePerSpeed * speedMps * model.lift(spinRatio, reynolds);
        return new double[] {
            state[SPEED_X],
            state[SPEED_Y],
            -dragPerS * state[SPEED_X] - liftPerS * state[SPEED_Y],
            liftPerS * state[SPEED_X] - dragPerS * state[SPEED_Y] - BallFlight.GRAVITY_MPS2,
            -spinDecay * speedMps * state[SPIN] / Ball.STANDARD.radiusM()
        };
    }
}
