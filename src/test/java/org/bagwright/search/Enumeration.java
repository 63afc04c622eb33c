package org.bagwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagScore;
import org.bagwright.domain.ClubOptions;

/** The best choice by looking at all of them. */
final class Enumeration {
    static final Comparator<BagScore> BY_SCORE =
            Comparator.comparingLong(BagScore::hardBreaks).thenComparingDouble(BagScore::penaltyPoints);

    private final BagOptions bag;
    private final int affordedChanges;

    /** Clubs that carry first: that is the order in which ties are settled. */
    private final List<Integer> order;

    private List<Integer> best;

    private Enumeration(BagOptions bag) {
        this.bag = bag;
        int least = bag.clubs().stream()
                .mapToInt(club -> club.openIndexes().stream()
                        .mapToInt(index -> club.options().get(index).changes())
                        .min()
                        .orElseThrow())
                .sum();
        affordedChanges = Math.max(least, bag.mostChanges().orElse(Integer.MAX_VALUE));
        order = new ArrayList<>(bag.carryingIndexes());
        IntStream.range(0, bag.clubs().size())
                .filter(club -> !order.contains(club))
                .forEach(order::add);
    }

    static List<Integer> best(BagOptions bag) {
        Enumeration enumeration = new Enumeration(bag);
        enumeration.visit(0, new Integer[bag.clubs().size()]);
        return enumeration.best;
    }

    private void visit(int depth, Integer[] chosen) {
        if (depth == chosen.length) {
            compare(List.of(chosen));
            return;
        }
        int club = order.get(depth);
        ClubOptions options = bag.clubs().get(club);
        for (int index : options.openIndexes()) {
            chosen[club] = index;
            visit(depth + 1, chosen);
        }
    }

    /** Choices come in the order of their indexes, so an equal one later never wins. */
    private void compare(List<Integer> chosen) {
        if (TestBags.changes(bag, chosen) > affordedChanges) {
            return;
        }
        int byScore = best == null ? -1 : BY_SCORE.compare(BagSearch.score(bag, chosen), BagSearch.score(bag, best));
        if (byScore < 0 || (byScore == 0 && TestBags.changes(bag, chosen) < TestBags.changes(bag, best))) {
            best = chosen;
        }
    }
}
