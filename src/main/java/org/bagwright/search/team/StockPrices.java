package org.bagwright.search.team;

import java.util.Arrays;
import java.util.List;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.score.LexCost;

/**
 * What one piece of each stock item is made to cost for every bag of a team, so that the bags, each planned by itself,
 * share the stock nearly by themselves.
 *
 * @param breaks thousandths for each piece
 * @param micropoints millionths of a point for each piece
 */
record StockPrices(List<Long> breaks, List<Long> micropoints) {
    StockPrices {
        breaks = List.copyOf(breaks);
        micropoints = List.copyOf(micropoints);
    }

    static StockPrices none(int items) {
        List<Long> free = java.util.Collections.nCopies(items, 0L);
        return new StockPrices(free, free);
    }

    StockPrices with(boolean byBreaks, double[] prices) {
        List<Long> whole = Arrays.stream(prices)
                .map(Math::rint)
                .mapToLong(price -> (long) price)
                .boxed()
                .toList();
        return byBreaks ? new StockPrices(whole, micropoints) : new StockPrices(breaks, whole);
    }

    double[] level(boolean byBreaks) {
        return (byBreaks ? breaks : micropoints)
                .stream().mapToDouble(Long::doubleValue).toArray();
    }

    LexCost of(List<Integer> takes) {
        return new LexCost(product(breaks, takes), LexCost.weight(product(micropoints, takes), 0));
    }

    private static long product(List<Long> prices, List<Integer> takes) {
        long sum = 0;
        for (int item = 0; item < prices.size(); item++) {
            sum += prices.get(item) * takes.get(item);
        }
        return sum;
    }

    /** The bag with the price of its pieces in the own cost of every option. */
    ExactBag priced(ExactBag bag) {
        return bag.withSlots(bag.slots().stream()
                .map(slot -> slot.stream().map(this::priced).toList())
                .toList());
    }

    ExactOption priced(ExactOption option) {
        return option.withOwn(
                option.breaks() + product(breaks, option.takes()),
                option.micropoints() + product(micropoints, option.takes()));
    }
}
