package org.bagwright.search.team;

import java.util.List;
import org.bagwright.search.exact.ChoiceValue;
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
        List<Integer> takes = new java.util.ArrayList<>();
        for (int item = 0; item < items; item++) {
            int at = item;
            takes.add(chosen.stream().mapToInt(option -> option.takes().get(at)).sum());
        }
        return new BagColumn(chosen, ChoiceValue.of(bag, chosen), List.copyOf(takes));
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
