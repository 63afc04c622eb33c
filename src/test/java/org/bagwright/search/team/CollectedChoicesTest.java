package org.bagwright.search.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.BagTree;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactInstances;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.HardInstances;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.score.LexCost;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What a team collects of one bag, against looking at every choice of it. A choice that takes more of the stock is worse
 * at high prices and may still be the one that the team needs: it must not be lost to one that takes less.
 */
@Tag("analytic")
class CollectedChoicesTest {
    private static final long AMPLE_STEPS = 5_000_000_000L;
    private static final long MOST_PRICE_MICROPOINTS = 3_000_000;
    private static final LexCost DISTANCE = new LexCost(2_000, 5_000_000L * LexCost.WEIGHT_PER_MICROPOINT);

    private static final class Every {
        private final ExactBag bag;
        private final BagLimits limits;
        private final Map<List<Integer>, LexCost> byTakes = new HashMap<>();
        private List<ExactOption> cheapest = List.of();

        private Every(ExactBag bag, BagLimits limits) {
            this.bag = bag;
            this.limits = limits;
            visit(new ArrayList<>());
        }

        private void visit(List<ExactOption> chosen) {
            if (chosen.size() < bag.slots().size()) {
                for (ExactOption option : bag.slots().get(chosen.size())) {
                    chosen.add(option);
                    visit(chosen);
                    chosen.remove(chosen.size() - 1);
                }
            } else if (limits.keeps(chosen)) {
                BagColumn column = BagColumn.of(bag, chosen, limits.stock().size());
                byTakes.merge(column.takes(), column.value(), LexCost::min);
                if (cheapest.isEmpty() || column.value().compareTo(bag.cost(cheapest)) < 0) {
                    cheapest = List.copyOf(chosen);
                }
            }
        }

        private Map<List<Integer>, LexCost> below(LexCost limit) {
            Map<List<Integer>, LexCost> below = new HashMap<>(byTakes);
            below.values().removeIf(value -> value.compareTo(limit) >= 0);
            return below;
        }
    }

    @Test
    void collected_choicesAreTheBestOfEveryWayToTakeFromTheStock() {
        int ways = 0;
        for (long seed = 0; seed < 1000; seed++) {
            ExactProblem problem = seed % 4 == 0 ? HardInstances.small(seed) : ExactInstances.small(seed);
            for (ExactBag bag : problem.bags()) {
                ways += assertCollected("seed " + seed, bag, problem.available(), new Random(seed));
            }
        }
        assertTrue(ways > 2000, "only " + ways + " ways to take from the stock");
    }

    private static int assertCollected(String name, ExactBag bag, List<Integer> available, Random random) {
        BagLimits limits = new BagLimits(bag.changesLimit(), bag.slots().size(), available);
        double[] pieces =
                random.doubles(available.size(), 0, MOST_PRICE_MICROPOINTS).toArray();
        Prices prices = Prices.none(available.size()).with(false, pieces);
        Every every = new Every(prices.priced(bag), limits);
        if (every.cheapest.isEmpty()) {
            return 0;
        }
        LexCost below = every.bag.cost(every.cheapest).plus(DISTANCE);
        CollectedChoices collected = new CollectedChoices(every.bag, limits, every.cheapest, below);
        BagTree tree = new BagTree(collected, new Meter(AMPLE_STEPS, new SearchClock(1e9)), true).run();
        assertEquals(ExactEnding.PROVEN, tree.ending(), name);
        Map<List<Integer>, LexCost> found = new HashMap<>();
        for (List<ExactOption> choice : collected.choices()) {
            BagColumn column = BagColumn.of(every.bag, choice, available.size());
            found.put(column.takes(), column.value());
        }
        assertEquals(every.below(below), found, name);
        return found.size();
    }
}
