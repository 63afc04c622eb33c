package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How much each shot counts: {@code w = min(1, 5 / (4 + D))}, D the larger squared score of ln ball speed and ln carry
 * against the middle of the shots with the same club in the same set-up.
 */
final class ShotWeights {
    private static final int PASSES = 4;
    private static final List<Quantity> JUDGED = List.of(Quantity.BALL_SPEED, Quantity.CARRY);
    private static final double FULL = 5;
    private static final double ALLOWED = 4;

    private ShotWeights() {}

    /** The groups with their weights, scored from the median of each. */
    static List<ShotGroup> fromMedians(List<ShotGroup> groups) {
        List<ShotGroup> weighted = groups;
        for (int pass = 0; pass < PASSES; pass++) {
            Scatter scatter = Scatter.of(weighted);
            List<ShotGroup> next = new ArrayList<>();
            for (ShotGroup group : weighted) {
                double[] worst = new double[group.shots().size()];
                for (Quantity quantity : JUDGED) {
                    scoreFromMedian(group, quantity, scatter.variance(quantity), worst);
                }
                next.add(group.withWeights(weights(worst)));
            }
            weighted = next;
        }
        return weighted;
    }

    private static void scoreFromMedian(ShotGroup group, Quantity quantity, double variance, double[] worst) {
        int[] having = group.having(quantity);
        if (having.length == 0) {
            return;
        }
        double median = ShotMedians.median(Arrays.stream(having)
                        .mapToDouble(shot -> group.value(shot, quantity).orElseThrow())
                        .toArray())
                .orElseThrow();
        score(group, quantity, variance, median, 0, worst);
    }

    private static void score(
            ShotGroup group, Quantity quantity, double variance, double middle, double doubt, double[] worst) {
        for (int shot : group.having(quantity)) {
            double off = group.value(shot, quantity).orElseThrow() - middle;
            double expected = variance / group.count(shot) + doubt;
            worst[shot] = Math.max(worst[shot], off * off / expected);
        }
    }

    private static double[] weights(double[] scores) {
        return Arrays.stream(scores)
                .map(score -> Math.min(1, FULL / (ALLOWED + score)))
                .toArray();
    }

    /**
     * A group of few shots, scored against what the golfer's other clubs say of it: its median may be a stray itself. Of each
     * quantity the middle starts at what is expected and moves to the shots as they agree.
     *
     * @param scatter of single shots
     * @param expected what the other clubs say of each {@link Quantity}
     * @param doubts the variance of that
     */
    static ShotGroup against(ShotGroup group, Scatter scatter, double[] expected, double[] doubts) {
        double[] weights = new double[group.shots().size()];
        Arrays.fill(weights, 1);
        double[] middles = expected.clone();
        double[] left = doubts.clone();
        for (int pass = 0; pass < PASSES; pass++) {
            double[] worst = new double[weights.length];
            for (Quantity quantity : JUDGED) {
                int row = quantity.ordinal();
                score(group, quantity, scatter.variance(quantity), middles[row], left[row], worst);
            }
            weights = weights(worst);
            ShotGroup weighted = group.withWeights(weights);
            for (Quantity quantity : JUDGED) {
                int row = quantity.ordinal();
                if (group.having(quantity).length > 0) {
                    double byShots = weighted.weight(quantity) / scatter.variance(quantity);
                    double byOthers = 1 / doubts[row];
                    left[row] = 1 / (byShots + byOthers);
                    middles[row] =
                            left[row] * (byShots * weighted.mean(quantity) + byOthers * expected[row]);
                }
            }
        }
        return group.withWeights(weights);
    }
}
