package org.bagwright.search.team;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.score.LexCost;

/**
 * One good choice for one bag, as the search over a team weighs it against others.
 *
 * @param chosen the options
 * @param value what they cost
 * @param takes the pieces they take of each stock item
 */
record BagColumn(List<ExactOption> chosen, LexCost value, List<Integer> takes) {
    static BagColumn of(ExactBag bag, List<ExactOption> chosen, int items) {
        List<Integer> takes = IntStream.range(0, items)
                .map(item -> chosen.stream()
                        .mapToInt(option -> option.needs().takes().get(item))
                        .sum())
                .boxed()
                .toList();
        return new BagColumn(chosen, bag.cost(chosen), takes);
    }

    /** The cheaper of two, the first of equals. */
    static BagColumn better(BagColumn known, BagColumn more) {
        return more.value().compareTo(known.value()) < 0 ? more : known;
    }

    boolean fits(List<Integer> stock) {
        for (int item = 0; item < takes.size(); item++) {
            if (takes.get(item) > stock.get(item)) {
                return false;
            }
        }
        return true;
    }
}
