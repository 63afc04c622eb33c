package org.bagwright.search;

import java.util.Comparator;
import java.util.List;

/**
 * Where the search for one bag starts.
 *
 * @param chosen for each club the index of its option
 * @param bound no choice that a plan may take costs less
 * @param exact whether the start itself costs no more than the bound
 */
record Start(List<Integer> chosen, Cost bound, boolean exact) {
    /** The exact best where the chain is not too long for its work limit, else each club's own best. */
    static Start of(SearchBag bag, long mostPairs) {
        if (!bag.isPlainChain()) {
            return new Start(eachOwnBest(bag), ownBound(bag), false);
        }
        Chain chain = new Chain(bag);
        return chain.work() <= mostPairs ? chain.best() : new Start(eachOwnBest(bag), ownBound(bag), false);
    }

    /** The fewest changes first, so that the start is within the most changes. */
    static List<Integer> eachOwnBest(SearchBag bag) {
        Comparator<Candidate> order =
                Comparator.comparingInt(Candidate::changes).thenComparing(Candidate::ownCost);
        return bag.openBySlot().stream()
                .map(options -> options.stream().min(order).orElseThrow().index())
                .toList();
    }

    /** What no choice can be better than: every club at its own cheapest, and every neighbour content. */
    private static Cost ownBound(SearchBag bag) {
        Cost bound = new Cost(bag.leastClosed(), 0, 0);
        for (List<Candidate> options : bag.openBySlot()) {
            long breaks = options.stream()
                    .mapToLong(option -> option.ownCost().breaks())
                    .min()
                    .orElseThrow();
            long micropoints = options.stream()
                    .mapToLong(option -> option.own().total())
                    .min()
                    .orElseThrow();
            bound = bound.plus(new Cost(0, breaks, micropoints));
        }
        return bound;
    }
}
