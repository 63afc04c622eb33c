package org.bagwright.search.exact;

import java.util.Arrays;
import org.bagwright.search.score.LexCost;

/**
 * What a piece of each limited resource is made to cost (its multiplier), so that a bag searched without the limit
 * keeps it nearly by itself. What the whole limit would cost is taken off again, which leaves a lower bound.
 */
public final class Prices {
    private final long[] breaks;
    private final long[] weights;

    private Prices(long[] breaks, long[] weights) {
        this.breaks = breaks;
        this.weights = weights;
    }

    public static Prices none(int resources) {
        return new Prices(new long[resources], new long[resources]);
    }

    long breaks(int[] uses) {
        return product(breaks, uses);
    }

    long weight(int[] uses) {
        return product(weights, uses);
    }

    LexCost of(int[] uses) {
        return new LexCost(breaks(uses), weight(uses));
    }

    private static long product(long[] prices, int[] uses) {
        long sum = 0;
        for (int resource = 0; resource < prices.length; resource++) {
            sum += prices[resource] * uses[resource];
        }
        return sum;
    }

    /** Moved by a step along the uses beyond what there is (subgradient); never below 0. */
    Prices moved(double step, boolean byBreaks, int[] beyond) {
        long[] moved = (byBreaks ? breaks : weights).clone();
        for (int resource = 0; resource < moved.length; resource++) {
            moved[resource] = Math.max(0, moved[resource] + Math.round(step * beyond[resource]));
        }
        return byBreaks ? new Prices(moved, weights) : new Prices(breaks, moved);
    }

    /** Those of the resources that another model still limits. */
    Prices forResources(int[] from, int[] to) {
        Prices left = none(to.length);
        for (int place = 0; place < to.length; place++) {
            int before = Arrays.binarySearch(from, to[place]);
            if (before >= 0) {
                left.breaks[place] = breaks[before];
                left.weights[place] = weights[before];
            }
        }
        return left;
    }

    boolean zero() {
        return Arrays.stream(breaks).allMatch(price -> price == 0)
                && Arrays.stream(weights).allMatch(price -> price == 0);
    }
}
