package org.bagwright.search.exact;

import java.util.List;

/**
 * All bags that are planned together.
 *
 * @param bags the bags
 * @param available the pieces in stock of each item, shared by all bags
 */
public record ExactProblem(List<ExactBag> bags, List<Integer> available) {
    public ExactProblem {
        bags = List.copyOf(bags);
        available = List.copyOf(available);
        int items = available.size();
        boolean fits = bags.stream()
                .flatMap(bag -> bag.slots().stream().flatMap(List::stream))
                .allMatch(option -> option.takes().size() == items);
        if (!fits) {
            throw new IllegalArgumentException("every option must say what it takes of each of " + items + " items");
        }
    }
}
