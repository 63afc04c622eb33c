package org.bagwright.search.team;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.Prices;

/** The known choices of every bag of a team, at their own cost without prices; of those that take the same the best. */
final class ColumnPool {
    private final ExactProblem problem;
    private final List<Map<List<Integer>, BagColumn>> byBag;

    ColumnPool(ExactProblem problem) {
        this.problem = problem;
        byBag = Stream.generate(() -> (Map<List<Integer>, BagColumn>) new LinkedHashMap<List<Integer>, BagColumn>())
                .limit(problem.bags().size())
                .toList();
    }

    /**
     * Adds a choice for a bag.
     *
     * @param chosen options of the bag, perhaps with prices in their cost
     * @return the choice without prices
     */
    BagColumn add(int bag, List<ExactOption> chosen) {
        ExactBag unpriced = problem.bags().get(bag);
        List<ExactOption> same = IntStream.range(0, chosen.size())
                .mapToObj(slot -> unpriced.option(slot, chosen.get(slot).index()))
                .toList();
        BagColumn column = BagColumn.of(unpriced, same, problem.available().size());
        byBag.get(bag).merge(column.takes(), column, BagColumn::better);
        return column;
    }

    /** For each bag all its known choices. */
    List<List<BagColumn>> all() {
        return byBag.stream().map(columns -> List.copyOf(columns.values())).toList();
    }

    /** The known choice of a bag that fits a stock and is cheapest at these prices. */
    BagColumn cheapest(int bag, List<Integer> stock, Prices prices) {
        return byBag.get(bag).values().stream()
                .filter(column -> column.fits(stock))
                .min(Comparator.comparing(column -> column.value().plus(prices.of(column.takes()))))
                .orElseThrow();
    }
}
