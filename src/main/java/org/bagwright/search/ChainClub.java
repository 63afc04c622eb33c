package org.bagwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The options of one club that can matter in a chain: of options with the same carry and as many changes only the
 * cheapest, and of equally cheap ones the first.
 */
final class ChainClub {
    private final double[] carriesM;
    private final List<Link> links;

    /**
     * One option, or the best of several that the rest of the bag cannot tell apart.
     *
     * @param option the index of the option
     * @param carry the position of its carry in {@link #carriesM()}
     * @param changes items that differ from today
     * @param own what it costs by itself
     */
    record Link(int option, int carry, int changes, Cost own) {}

    private record Likeness(double carryM, int changes) {}

    ChainClub(List<Candidate> candidates) {
        Map<Likeness, Candidate> best = new HashMap<>();
        for (Candidate candidate : candidates) {
            best.merge(new Likeness(candidate.carryM(), candidate.changes()), candidate, ChainClub::cheaper);
        }
        carriesM = best.keySet().stream()
                .mapToDouble(Likeness::carryM)
                .distinct()
                .sorted()
                .toArray();
        links = linked(best.values());
    }

    private static Candidate cheaper(Candidate first, Candidate second) {
        return second.ownCost().compareTo(first.ownCost()) < 0 ? second : first;
    }

    private List<Link> linked(Iterable<Candidate> candidates) {
        List<Link> found = new ArrayList<>();
        for (Candidate candidate : candidates) {
            int carry = java.util.Arrays.binarySearch(carriesM, candidate.carryM());
            found.add(new Link(candidate.index(), carry, candidate.changes(), withoutExcess(candidate.ownCost())));
        }
        found.sort(Comparator.comparingInt(Link::option));
        return List.copyOf(found);
    }

    /** Options that are closed are choices only where all of a club are, and then make no difference. */
    private static Cost withoutExcess(Cost own) {
        return new Cost(0, own.breaks(), own.micropoints());
    }

    /** The carries that occur, metres, ascending. */
    double[] carriesM() {
        return carriesM;
    }

    /** What may be chosen, by option. */
    List<Link> links() {
        return links;
    }

    int mostChanges() {
        return links.stream().mapToInt(Link::changes).max().orElseThrow();
    }
}
