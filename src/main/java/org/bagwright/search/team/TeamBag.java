package org.bagwright.search.team;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.BagTree;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.Incumbent;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.exact.OptionElimination;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.score.LexCost;

/** One bag of a team: the options left in it, the choices known for it, and its lower bound at the prices of the team. */
final class TeamBag {
    /** What a bag may use up in one round, so that one hard bag does not hold up the others. */
    private static final long STEPS_PER_ROUND = 400_000_000;

    private final ExactBag whole;
    private final BagLimits limits;

    /** The known choices without prices; of those that take the same pieces the best. */
    private final Map<List<Integer>, BagColumn> known = new LinkedHashMap<>();

    private ExactBag left;
    private BagColumn best;
    private LexCost bound;

    /** @param start a choice that keeps the limits */
    TeamBag(ExactBag whole, BagLimits limits, List<ExactOption> start) {
        this.whole = whole;
        this.limits = limits;
        left = whole;
        bound = whole.floor();
        best = learn(start);
    }

    /** Keeps a choice of options that perhaps have prices in their cost; gives it without prices. */
    BagColumn learn(List<ExactOption> chosen) {
        List<ExactOption> unpriced = IntStream.range(0, chosen.size())
                .mapToObj(slot -> whole.option(slot, chosen.get(slot).index()))
                .toList();
        BagColumn column = BagColumn.of(whole, unpriced, limits.stock().size());
        known.merge(column.takes(), column, BagColumn::better);
        return column;
    }

    List<BagColumn> known() {
        return List.copyOf(known.values());
    }

    /** Its part of the best plan of the team. */
    BagColumn best() {
        return best;
    }

    void best(BagColumn column) {
        best = column;
    }

    /** What no choice of the bag costs less than at the prices of the team. */
    LexCost bound() {
        return bound;
    }

    /** Sets what no choice of the bag costs less than at the prices of the team. */
    void bound(LexCost reached) {
        bound = reached;
    }

    /** The search of the bag where the team has no other. */
    BagTree alone(Meter meter) {
        return new BagTree(new Incumbent(whole, limits, best.chosen()), meter, false);
    }

    /** Searches the bag at these prices within a stock, and keeps the choice found. */
    BagTree search(Prices prices, List<Integer> stock, Meter meter) {
        BagColumn start = known.values().stream()
                .filter(column -> column.fits(stock))
                .min(Comparator.comparing(column -> column.value().plus(prices.of(column.takes()))))
                .orElseThrow();
        Incumbent incumbent =
                new Incumbent(prices.priced(left), limits.withStock(stock), prices.priced(start.chosen()));
        BagTree tree = new BagTree(incumbent, meter.within(Math.max(STEPS_PER_ROUND, meter.left() / 2)), false).run();
        learn(incumbent.chosen());
        return tree;
    }

    /** Keeps all choices that cost less than the bound and a distance at these prices, if the search comes to its end. */
    BagTree collect(Prices prices, LexCost distance, Meter meter) {
        CollectedChoices collected =
                new CollectedChoices(prices.priced(left), limits, prices.priced(best.chosen()), bound.plus(distance));
        BagTree tree = new BagTree(collected, meter, true).run();
        collected.choices().forEach(this::learn);
        return tree;
    }

    /** Drops for good the options of choices that all cost more than the bound and a distance at these prices. */
    TeamBag eliminate(Prices prices, LexCost distance, Meter meter) {
        left = new OptionElimination(left, limits, prices).below(bound.plus(distance), best.chosen(), meter);
        return this;
    }
}
