package org.bagwright.flight.learning;

import org.bagwright.domain.book.BallModelKind;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.Launch;

/**
 * The carry of one published ball near one launch: the logarithm of carry as the quadratic in ln ball speed, launch, ln spin,
 * ln drag and ln lift through 21 flights. Used for derivatives and for finding the golfer; carries that a person reads are flown.
 */
final class CarrySurface {
    static final int DIMENSIONS = 5;
    private static final double[] STEPS = {0.06, 1.5, 0.2, 0.08, 0.08};
    private static final double LEAST_LAUNCH_DEG = 0.5;
    private static final double LEAST_M = 1;

    private final GolferBall air;
    private final BallModelKind kind;
    private final double[] centre;
    private final double value;
    private final double[] slopes = new double[DIMENSIONS];
    private final double[][] curves = new double[DIMENSIONS][DIMENSIONS];

    /**
     * @param air flights in the air of the book
     * @param kind which ball
     * @param centre ln m/s, degrees, ln rpm, ln drag ratio, ln lift ratio
     */
    CarrySurface(GolferBall air, BallModelKind kind, double[] centre) {
        this.air = air;
        this.kind = kind;
        this.centre = centre.clone();
        this.centre[1] = Math.max(LEAST_LAUNCH_DEG + STEPS[1], centre[1]);
        this.value = lnCarry(this.centre);
        double[] above = new double[DIMENSIONS];
        for (int i = 0; i < DIMENSIONS; i++) {
            above[i] = stepped(i, 1, i, 0);
            double below = stepped(i, -1, i, 0);
            slopes[i] = (above[i] - below) / (2 * STEPS[i]);
            curves[i][i] = (above[i] - 2 * value + below) / (STEPS[i] * STEPS[i]);
        }
        for (int i = 0; i < DIMENSIONS; i++) {
            for (int j = 0; j < i; j++) {
                double both = stepped(i, 1, j, 1);
                curves[i][j] = (both - above[i] - above[j] + value) / (STEPS[i] * STEPS[j]);
                curves[j][i] = curves[i][j];
            }
        }
    }

    private double stepped(int one, int steps, int other, int otherSteps) {
        double[] at = centre.clone();
        at[one] += steps * STEPS[one];
        at[other] += otherSteps * STEPS[other];
        return lnCarry(at);
    }

    private double lnCarry(double[] at) {
        Launch launch = new Launch(Math.exp(at[0]), at[1], Math.exp(at[2]));
        double carryM = air.with(0, Math.exp(at[3]), Math.exp(at[4]))
                .flyAs(kind, BallStart.of(launch))
                .carryM();
        return Math.log(Math.max(LEAST_M, carryM));
    }

    /** Carry, m. */
    double carryM(double[] at) {
        double sum = value;
        for (int i = 0; i < DIMENSIONS; i++) {
            double off = at[i] - centre[i];
            double slope = slopes[i];
            for (int j = 0; j < DIMENSIONS; j++) {
                slope += 0.5 * curves[i][j] * (at[j] - centre[j]);
            }
            sum += off * slope;
        }
        return Math.exp(sum);
    }
}
