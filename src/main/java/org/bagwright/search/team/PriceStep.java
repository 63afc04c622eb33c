package org.bagwright.search.team;

import java.util.List;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.exact.StepLength;
import org.bagwright.search.score.LexCost;

/**
 * Moves the stock prices of a team toward those at which the known choices of all bags give the highest bound (cutting
 * planes), half way only so that they do not swing.
 */
final class PriceStep {
    private static final int ROUNDS = 400;
    private static final double SHARE = 0.5;
    private static final int PATIENCE = 12;

    private final List<Integer> stock;
    private final List<List<BagColumn>> columns;
    private final LexCost value;
    private final boolean byBreaks;

    PriceStep(List<Integer> stock, List<List<BagColumn>> columns, LexCost value, LexCost bound) {
        this.stock = stock;
        this.columns = columns;
        this.value = value;
        byBreaks = value.breaks() > bound.breaks();
    }

    Prices from(Prices prices) {
        double[] start = prices.level(byBreaks);
        double[] best = highest(start);
        double[] next = new double[start.length];
        for (int item = 0; item < next.length; item++) {
            next[item] = start[item] + SHARE * (best[item] - start[item]);
        }
        return prices.with(byBreaks, next);
    }

    /** Subgradient steps on the bound that the known choices give. */
    private double[] highest(double[] start) {
        double[] at = start;
        double[] best = start;
        double highest = Double.NEGATIVE_INFINITY;
        double[] beyond = new double[at.length];
        StepLength step = new StepLength(PATIENCE);
        for (int round = 0; round < ROUNDS; round++) {
            double reached = reached(at, beyond);
            step.after(reached > highest);
            if (reached > highest) {
                highest = reached;
                best = at;
            }
            double square = square(beyond);
            if (square == 0) {
                break;
            }
            at = moved(at, beyond, step.length() * Math.max(0, level(value) - reached) / square);
        }
        return best;
    }

    private static double square(double[] beyond) {
        double square = 0;
        for (double each : beyond) {
            square += each * each;
        }
        return square;
    }

    private static double[] moved(double[] prices, double[] beyond, double length) {
        double[] moved = prices.clone();
        for (int item = 0; item < moved.length; item++) {
            moved[item] = Math.max(0, moved[item] + length * beyond[item]);
        }
        return moved;
    }

    /**
     * The bound at these prices.
     *
     * @param beyond takes how much of each item the cheapest choices use beyond what there is
     */
    private double reached(double[] prices, double[] beyond) {
        double sum = 0;
        for (int item = 0; item < prices.length; item++) {
            beyond[item] = -stock.get(item);
            sum -= prices[item] * stock.get(item);
        }
        for (List<BagColumn> bag : columns) {
            BagColumn least = least(bag, prices);
            sum += cost(least, prices);
            for (int item = 0; item < prices.length; item++) {
                beyond[item] += least.takes().get(item);
            }
        }
        return sum;
    }

    private BagColumn least(List<BagColumn> bag, double[] prices) {
        BagColumn least = null;
        double cost = Double.POSITIVE_INFINITY;
        for (BagColumn column : bag) {
            double own = cost(column, prices);
            if (least == null || own < cost) {
                least = column;
                cost = own;
            }
        }
        return least;
    }

    private double cost(BagColumn column, double[] prices) {
        double cost = level(column.value());
        for (int item = 0; item < prices.length; item++) {
            cost += prices[item] * column.takes().get(item);
        }
        return cost;
    }

    private double level(LexCost each) {
        return byBreaks ? each.breaks() : each.micropoints();
    }
}
