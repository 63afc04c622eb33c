package org.bagwright.search.exact;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.search.score.LexCost;

/**
 * All bags that are planned together.
 *
 * @param bags the bags
 * @param available the pieces in stock of each item, shared by all bags
 * @param closed the slots in which every plan has an option that is not open; each one is an excess of 1
 */
public record ExactProblem(List<ExactBag> bags, List<Integer> available, long closed) {
    public ExactProblem {
        bags = List.copyOf(bags);
        available = List.copyOf(available);
        int items = available.size();
        boolean fits = bags.stream()
                .flatMap(bag -> bag.slots().stream().flatMap(List::stream))
                .allMatch(option -> option.needs().takes().size() == items);
        if (!fits) {
            throw new IllegalArgumentException("every option must list what it takes of each of " + items + " items");
        }
    }

    /** Bags whose slots all have open options. */
    public ExactProblem(List<ExactBag> bags, List<Integer> available) {
        this(bags, available, 0);
    }

    /**
     * The options of a choice.
     *
     * @param chosen for each bag the index of an option for each slot
     */
    public List<List<ExactOption>> options(List<List<Integer>> chosen) {
        return IntStream.range(0, bags.size())
                .mapToObj(bag -> bags.get(bag).options(chosen.get(bag)))
                .toList();
    }

    /** What a choice costs, without what it takes beyond the limits. */
    public LexCost cost(List<List<ExactOption>> chosen) {
        return IntStream.range(0, bags.size())
                .mapToObj(bag -> bags.get(bag).cost(chosen.get(bag)))
                .reduce(LexCost.NONE, LexCost::plus);
    }
}
