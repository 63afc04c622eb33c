package org.bagwright.search.exact;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.bagwright.search.score.LexCost;

/**
 * What one unit of each limited resource is made to cost (its multiplier), so that bags searched without the limit keep
 * it nearly by themselves. What the whole limit would cost is taken off again, which leaves a lower bound. One bag has
 * prices for its own limits, a team for the stock that its bags share.
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

    LexCost of(int[] uses) {
        return of(resource -> uses[resource]);
    }

    public LexCost of(List<Integer> uses) {
        return of(uses::get);
    }

    private LexCost of(IntUnaryOperator uses) {
        long sumBreaks = 0;
        long sumWeights = 0;
        for (int resource = 0; resource < breaks.length; resource++) {
            int use = uses.applyAsInt(resource);
            sumBreaks += breaks[resource] * use;
            sumWeights += weights[resource] * use;
        }
        return new LexCost(sumBreaks, sumWeights);
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

    boolean areZero() {
        return Arrays.stream(breaks).allMatch(price -> price == 0)
                && Arrays.stream(weights).allMatch(price -> price == 0);
    }

    /** The prices of one level: thousandths of a break, or micropoints. */
    public double[] level(boolean byBreaks) {
        return byBreaks
                ? Arrays.stream(breaks).asDoubleStream().toArray()
                : Arrays.stream(weights)
                        .mapToDouble(weight -> (double) weight / LexCost.WEIGHT_PER_MICROPOINT)
                        .toArray();
    }

    /** With other prices of one level, rounded to whole thousandths of a break or micropoints. */
    public Prices with(boolean byBreaks, double[] prices) {
        long unit = byBreaks ? 1 : LexCost.WEIGHT_PER_MICROPOINT;
        long[] whole = Arrays.stream(prices)
                .mapToLong(price -> (long) Math.rint(price) * unit)
                .toArray();
        return byBreaks ? new Prices(whole, weights) : new Prices(breaks, whole);
    }

    /** The bag with the price of its pieces of the stock in the own cost of every option. */
    public ExactBag priced(ExactBag bag) {
        return bag.withSlots(bag.slots().stream().map(this::priced).toList());
    }

    /** Options with the price of their pieces of the stock in their own cost. */
    public List<ExactOption> priced(List<ExactOption> options) {
        return options.stream()
                .map(option -> option.plus(of(option.needs().takes())))
                .toList();
    }
}
