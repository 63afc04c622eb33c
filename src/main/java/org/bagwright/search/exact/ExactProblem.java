package org.bagwright.search.exact;

import java.util.List;

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
}
