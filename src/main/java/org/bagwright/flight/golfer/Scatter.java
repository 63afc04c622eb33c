package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;

/**
 * How far a golfer's single shots scatter about their mean, pooled over his clubs, as a device reads them: for each {@link
 * Quantity} {@code s2 = (10 s0^2 + sum w (y - m)^2) / (10 + sum w - groups)}.
 *
 * @param variances a variance for each quantity
 */
record Scatter(double[] variances) {
    private static final double PRIOR_COUNT = 10;

    /** What is assumed of a golfer's own scatter: 1.4 % of ball speed, 1.1 degrees of launch, 6 % of spin, 3 % of carry. */
    private static final double[] USUAL = {0.01, 0.014, 1.1, 0.06, 1.0, 0.03};

    private static final double LEAST_SHARE = 0.05;

    /** The pooled scatter of these groups. */
    static Scatter of(List<ShotGroup> groups) {
        double[] variances = new double[Quantity.COUNT];
        for (Quantity quantity : Quantity.values()) {
            double noise = quantity.noise();
            double usual = USUAL[quantity.ordinal()];
            double sum = PRIOR_COUNT * (usual * usual + noise * noise);
            double count = PRIOR_COUNT;
            for (ShotGroup group : groups) {
                sum += squares(group, quantity);
                count += degreesOfFreedom(group, quantity);
            }
            variances[quantity.ordinal()] = sum / count;
        }
        return new Scatter(variances);
    }

    private static double squares(ShotGroup group, Quantity quantity) {
        int[] having = group.having(quantity);
        if (having.length == 0) {
            return 0;
        }
        double mean = group.mean(quantity);
        double sum = 0;
        for (int shot : having) {
            double off = group.value(shot, quantity).orElseThrow() - mean;
            sum += group.weights()[shot] * group.count(shot) * off * off;
            sum += withinRow(group, shot, quantity);
        }
        return sum;
    }

    /** The squares within a row that averages shots and says how far their carries spread. */
    private static double withinRow(ShotGroup group, int shot, Quantity quantity) {
        if (quantity != Quantity.CARRY || group.shots().get(shot).series().carrySpreadM().isEmpty()) {
            return 0;
        }
        double share = group.shots().get(shot).series().carrySpreadM().getAsDouble()
                / Math.exp(group.value(shot, quantity).orElseThrow());
        return (group.count(shot) - 1) * share * share;
    }

    private static double degreesOfFreedom(ShotGroup group, Quantity quantity) {
        int[] having = group.having(quantity);
        if (having.length == 0) {
            return 0;
        }
        double weights = Arrays.stream(having).mapToDouble(shot -> group.weights()[shot]).sum();
        double within = Arrays.stream(having)
                .filter(shot -> quantity == Quantity.CARRY
                        && group.shots().get(shot).series().carrySpreadM().isPresent())
                .mapToDouble(shot -> group.count(shot) - 1.0)
                .sum();
        return Math.max(0, weights - 1) + within;
    }

    /** The variance of one quantity of a single shot. */
    double variance(Quantity quantity) {
        return variances[quantity.ordinal()];
    }

    /** The same without the noise of the device. */
    private double execution(Quantity quantity) {
        double noise = quantity.noise() * quantity.noise();
        return Math.max(LEAST_SHARE * variance(quantity), variance(quantity) - noise);
    }

    /**
     * The covariance of the means of a group's measured quantities: {@code B diag(execution) B' / n + noise^2 / n +
     * discrepancy^2}. Head speed, strike, launch and spin of a shot go through to its carry, so that carry judges the ball
     * and launch the delivery.
     *
     * @param carrySlopes how ln carry changes with ln ball speed, launch and ln spin
     */
    double[][] covariance(ShotGroup group, double[] carrySlopes) {
        double[][] single = single(carrySlopes);
        List<Quantity> measured = group.measured();
        double[][] covariance = new double[measured.size()][measured.size()];
        for (int row = 0; row < covariance.length; row++) {
            for (int column = 0; column < covariance.length; column++) {
                Quantity one = measured.get(row);
                Quantity other = measured.get(column);
                covariance[row][column] = group.share(one, other) * single[one.ordinal()][other.ordinal()];
            }
            Quantity own = measured.get(row);
            covariance[row][row] += group.share(own, own) * own.noise() * own.noise()
                    + own.discrepancy() * own.discrepancy();
        }
        return covariance;
    }

    /** The covariance of the true quantities of a single shot. */
    private double[][] single(double[] carrySlopes) {
        double ball = execution(Quantity.BALL_SPEED);
        double head = Math.min(execution(Quantity.HEAD_SPEED), ball);
        double launch = execution(Quantity.LAUNCH);
        double spin = execution(Quantity.SPIN);
        double[] executions = {head, ball - head, launch, spin, execution(Quantity.ATTACK), 0};
        double[][] through = {
            {1, 0, 0, 0, 0, 0},
            {1, 1, 0, 0, 0, 0},
            {0, 0, 1, 0, 0, 0},
            {0, 0, 0, 1, 0, 0},
            {0, 0, 0, 0, 1, 0},
            {carrySlopes[0], carrySlopes[0], carrySlopes[1], carrySlopes[2], 0, 1}
        };
        double explained = carrySlopes[0] * carrySlopes[0] * ball
                + carrySlopes[1] * carrySlopes[1] * launch
                + carrySlopes[2] * carrySlopes[2] * spin;
        double carry = execution(Quantity.CARRY);
        executions[5] = Math.max(LEAST_SHARE * carry, carry - explained);
        double[][] covariance = new double[Quantity.COUNT][Quantity.COUNT];
        for (int row = 0; row < Quantity.COUNT; row++) {
            for (int column = 0; column < Quantity.COUNT; column++) {
                for (int cause = 0; cause < Quantity.COUNT; cause++) {
                    covariance[row][column] += through[row][cause] * executions[cause] * through[column][cause];
                }
            }
        }
        return covariance;
    }
}
