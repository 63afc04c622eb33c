package org.bagwright.search.exact;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * The limits that a plan of one bag keeps whatever it costs.
 *
 * @param mostChanges the most items that may change
 * @param mostClubs the most clubs carried
 * @param stock the most pieces of each stock item
 */
public record BagLimits(int mostChanges, int mostClubs, List<Integer> stock) {
    public BagLimits {
        stock = List.copyOf(stock);
    }

    public BagLimits withStock(List<Integer> other) {
        return new BagLimits(mostChanges, mostClubs, other);
    }

    /** How many limits there are apart from the changes: one for each stock item and the one on clubs. */
    int resources() {
        return stock.size() + 1;
    }

    int limit(int resource) {
        return resource < stock.size() ? stock.get(resource) : mostClubs;
    }

    /** Whether a choice of one option for each slot keeps all limits. */
    public boolean keeps(List<ExactOption> chosen) {
        if (chosen.stream().mapToInt(ExactOption::changes).sum() > mostChanges) {
            return false;
        }
        for (int resource = 0; resource < resources(); resource++) {
            int item = resource;
            if (chosen.stream().mapToInt(option -> option.needs().of(item)).sum() > limit(resource)) {
                return false;
            }
        }
        return true;
    }

    /** The slots without the options that break a limit whatever the other slots hold. */
    List<List<ExactOption>> possible(List<List<ExactOption>> slots) {
        List<List<ExactOption>> left = slots;
        for (int resource = 0; resource < resources(); resource++) {
            int item = resource;
            left = within(left, option -> option.needs().of(item), limit(resource));
        }
        return within(left, ExactOption::changes, mostChanges);
    }

    private static List<List<ExactOption>> within(
            List<List<ExactOption>> slots, ToIntFunction<ExactOption> use, int limit) {
        int[] least = slots.stream()
                .mapToInt(slot -> slot.stream().mapToInt(use).min().orElse(0))
                .toArray();
        int spare = limit - IntStream.of(least).sum();
        return IntStream.range(0, least.length)
                .mapToObj(slot -> slots.get(slot).stream()
                        .filter(option -> use.applyAsInt(option) <= least[slot] + spare)
                        .toList())
                .toList();
    }
}
