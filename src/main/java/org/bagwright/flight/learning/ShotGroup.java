package org.bagwright.flight.learning;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Shot;

/**
 * The shots with one club in one set-up on one day, each with a weight from 0 to 1; a row that averages some counts as many.
 */
public final class ShotGroup {
    private final int club;
    private final Presented presented;
    private final int day;
    private final List<Shot> shots;
    private final double[] weights;
    private final Values values;
    private final double[] sums = new double[Quantity.COUNT];
    private final double[] means = new double[Quantity.COUNT];
    private final double[][] shares = new double[Quantity.COUNT][Quantity.COUNT];

    public ShotGroup(int club, Presented presented, int day, List<Shot> shots, double[] weights) {
        this(club, presented, day, shots, weights, Values.of(shots));
    }

    private ShotGroup(int club, Presented presented, int day, List<Shot> shots, double[] weights, Values values) {
        this.values = values;
        this.club = club;
        this.presented = presented;
        this.day = day;
        this.shots = shots;
        this.weights = weights;
        for (Quantity quantity : Quantity.values()) {
            count(quantity);
        }
    }

    /** The values of all quantities by shot, NaN where one was not measured, and the shots that have each. */
    private static final class Values {
        private final double[][] of;
        private final int[][] having;

        private Values(double[][] of, int[][] having) {
            this.of = of;
            this.having = having;
        }

        static Values of(List<Shot> shots) {
            double[][] values = new double[Quantity.COUNT][];
            int[][] having = new int[Quantity.COUNT][];
            for (Quantity quantity : Quantity.values()) {
                double[] own = shots.stream()
                        .mapToDouble(shot -> quantity.of(shot.measured()).orElse(Double.NaN))
                        .toArray();
                values[quantity.ordinal()] = own;
                having[quantity.ordinal()] = IntStream.range(0, own.length)
                        .filter(shot -> !Double.isNaN(own[shot]))
                        .toArray();
            }
            return new Values(values, having);
        }
    }

    private void count(Quantity quantity) {
        int row = quantity.ordinal();
        double sum = 0;
        for (int shot : having(quantity)) {
            double weight = weights[shot] * count(shot);
            sums[row] += weight;
            sum += weight * values.of[row][shot];
        }
        means[row] = sum / sums[row];
    }

    /** The number of the club. */
    public int club() {
        return club;
    }

    /** What the set-up presents. */
    public Presented presented() {
        return presented;
    }

    /** The place of the day among the unknowns. */
    public int day() {
        return day;
    }

    /** The shots. */
    public List<Shot> shots() {
        return shots;
    }

    /** A weight for each. */
    public double[] weights() {
        return weights;
    }

    /** The same with every shot counted in full. */
    public static ShotGroup of(int club, Presented presented, int day, List<Shot> shots) {
        double[] weights = new double[shots.size()];
        Arrays.fill(weights, 1);
        return new ShotGroup(club, presented, day, List.copyOf(shots), weights);
    }

    ShotGroup withWeights(double[] other) {
        return new ShotGroup(club, presented, day, shots, other, values);
    }

    OptionalDouble value(int shot, Quantity quantity) {
        double value = values.of[quantity.ordinal()][shot];
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    int count(int shot) {
        return shots.get(shot).series().shots();
    }

    /** The shots that a quantity was measured of. */
    int[] having(Quantity quantity) {
        return values.having[quantity.ordinal()];
    }

    /** The quantities that were measured, in their order. */
    List<Quantity> measured() {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> having(quantity).length > 0)
                .toList();
    }

    /** The sum of weights of the shots that a quantity was measured of. */
    double weight(Quantity quantity) {
        return sums[quantity.ordinal()];
    }

    /** The weighted mean of a quantity. */
    double mean(Quantity quantity) {
        return means[quantity.ordinal()];
    }

    /**
     * By how much the covariance of two quantities of single shots is that of their means. A shot of weight w scatters as if
     * its variance were 1 / w times the usual one, so {@code share = sum w / (W1 W2)} over the shots that have both; with all
     * shots measured and counted in full one over their number. A true covariance whatever is blank.
     */
    double share(Quantity one, Quantity other) {
        double known = shares[one.ordinal()][other.ordinal()];
        if (known == 0) {
            known = computedShare(one, other);
            shares[one.ordinal()][other.ordinal()] = known;
        }
        return known;
    }

    private double computedShare(Quantity one, Quantity other) {
        double[] others = values.of[other.ordinal()];
        double sum = Arrays.stream(having(one))
                .filter(shot -> !Double.isNaN(others[shot]))
                .mapToDouble(shot -> weights[shot] * count(shot))
                .sum();
        return sum / (weight(one) * weight(other));
    }
}
