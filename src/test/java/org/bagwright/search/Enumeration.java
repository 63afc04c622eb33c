package org.bagwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;

/**
 * The best choice by looking at all of them. Bags meet only in what they take of the stock, so of the choices of one bag
 * that take the same only the best is kept before the bags are put together.
 */
public final class Enumeration {
    /** The best: least cost, then fewest changes, then the first found. */
    static final Comparator<Found> BEST = Comparator.comparing(Found::cost).thenComparingInt(Found::changes);

    /**
     * A choice for some bags.
     *
     * @param chosen for each bag for each slot the index of its option
     * @param cost what it costs but for the stock
     * @param changes items that differ from today
     * @param takes pieces of each item of the stock
     */
    public record Found(List<List<Integer>> chosen, Cost cost, int changes, List<Integer> takes) {}

    private final BookOptions whole;
    private final BookOptions alone;

    /** Clubs that carry first: that is the order in which ties are settled. */
    private final List<Integer> order;

    private final Function<Found, List<Object>> key;
    private final Map<List<Object>, Found> best = new HashMap<>();

    /** @param key what is different between choices of the bag; of those with the same only the best is kept */
    private Enumeration(BookOptions whole, BagOptions bag, Function<Found, List<Object>> key) {
        this.whole = whole;
        this.key = key;
        alone = new BookOptions(List.of(bag), List.of());
        order = IntStream.range(0, bag.slots().size())
                .boxed()
                .sorted(Comparator.comparing(
                        slot -> !bag.slots().get(slot).main().kind().carries()))
                .toList();
    }

    /** The best choice for a book; its cost holds the stock too. */
    public static Found best(BookOptions book) {
        return all(book, found -> List.of(found.takes())).min(BEST).orElseThrow();
    }

    /** The least penalty of all choices that have no more excess and hard breaks than a cost, micropoints. */
    static long leastMicropoints(BookOptions book, Cost most) {
        return all(
                        book,
                        found -> List.of(
                                found.takes(),
                                found.cost().excess(),
                                found.cost().breaks()))
                .map(Found::cost)
                .filter(cost ->
                        new Cost(cost.excess(), cost.breaks(), 0).compareTo(new Cost(most.excess(), most.breaks(), 0))
                                <= 0)
                .mapToLong(Cost::micropoints)
                .min()
                .orElseThrow();
    }

    private static Stream<Found> all(BookOptions book, Function<Found, List<Object>> key) {
        List<Found> found = List.of(new Found(List.of(), Cost.NONE, 0, List.of()));
        for (BagOptions bag : book.bags()) {
            Enumeration enumeration = new Enumeration(book, bag, key);
            enumeration.visit(0, new Integer[bag.slots().size()]);
            found = found.stream()
                    .flatMap(some -> enumeration.best.values().stream().map(more -> joined(some, more)))
                    .toList();
        }
        return found.stream()
                .map(some -> new Found(
                        some.chosen(), some.cost().plus(excess(book, some.takes())), some.changes(), some.takes()));
    }

    public static List<Integer> best(BagOptions bag) {
        return best(new BookOptions(List.of(bag), List.of())).chosen().get(0);
    }

    private static Cost excess(BookOptions book, List<Integer> takes) {
        return new Cost(
                IntStream.range(0, book.stock().size())
                        .map(item -> Math.max(
                                0, takes.get(item) - book.stock().get(item).available()))
                        .sum(),
                0,
                0);
    }

    private static Found joined(Found some, Found more) {
        List<List<Integer>> chosen = new ArrayList<>(some.chosen());
        chosen.addAll(more.chosen());
        List<Integer> takes = some.takes().isEmpty()
                ? more.takes()
                : IntStream.range(0, more.takes().size())
                        .mapToObj(item -> some.takes().get(item) + more.takes().get(item))
                        .toList();
        return new Found(chosen, some.cost().plus(more.cost()), some.changes() + more.changes(), takes);
    }

    private void visit(int depth, Integer[] chosen) {
        BagOptions bag = alone.bags().get(0);
        if (depth == chosen.length) {
            keep(bag, List.of(chosen));
            return;
        }
        int slot = order.get(depth);
        for (int index : bag.slots().get(slot).openIndexes()) {
            chosen[slot] = index;
            visit(depth + 1, chosen);
        }
    }

    /** Choices come in the order of their indexes, so an equal one later never wins. */
    private void keep(BagOptions bag, List<Integer> chosen) {
        List<Integer> takes = IntStream.range(0, whole.stock().size())
                .mapToObj(item -> IntStream.range(0, chosen.size())
                        .map(slot -> bag.slots()
                                .get(slot)
                                .options()
                                .get(chosen.get(slot))
                                .takes()
                                .get(item))
                        .sum())
                .toList();
        Cost cost = HandScore.cost(alone, List.of(chosen));
        Found found = new Found(List.of(chosen), cost, TestBags.changes(bag, chosen), takes);
        best.merge(key.apply(found), found, (known, other) -> BEST.compare(other, known) < 0 ? other : known);
    }
}
