package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.BagTree;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.Incumbent;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.exact.OptionElimination;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;

/**
 * The best plan of several bags that share a stock. Searches every bag exactly by itself with a price on each piece
 * (column generation); the sum of the bags' bounds less what the whole stock would cost bounds the team, and the known
 * choices of all bags are combined within the stock. In the end, if there is still a difference, it collects all choices
 * of each bag that can be part of a better plan.
 */
final class TeamSearch {
    private static final int MOST_ROUNDS = 14;

    /** What a bag may use up in one round, so that one hard bag does not hold up the others. */
    private static final long STEPS_PER_ROUND = 60_000_000;

    private final MinimalViolations.RaisedLimits limits;
    private final Meter meter;
    private final BiConsumer<LexCost, LexCost> progress;
    private final BagBatch batch;
    private final List<Integer> stock;
    private final List<ExactBag> bags;
    private final ColumnPool pool;
    private List<BagColumn> best;
    private LexCost bound = LexCost.NONE;
    private Prices prices;
    private List<LexCost> bagBounds = List.of();
    private ExactEnding ending = ExactEnding.STEPS;

    /**
     * @param threads how many bags it works on at once
     * @param progress takes now and then the value of the best plan and the bound
     */
    TeamSearch(
            ExactProblem problem,
            MinimalViolations.RaisedLimits limits,
            Meter meter,
            int threads,
            BiConsumer<LexCost, LexCost> progress) {
        this.limits = limits;
        this.meter = meter;
        this.progress = progress;
        batch = new BagBatch(meter, threads, this::report);
        stock = limits.stock();
        bags = new ArrayList<>(problem.bags());
        prices = Prices.none(stock.size());
        pool = new ColumnPool(problem);
        best = new ArrayList<>();
        for (int bag = 0; bag < bags.size(); bag++) {
            best.add(pool.add(bag, limits.witness().get(bag)));
        }
    }

    private void report() {
        progress.accept(value(), bound);
    }

    void run() {
        try {
            if (bags.size() == 1) {
                single();
            } else {
                meter.reportBy(this::report);
                team();
            }
        } catch (Meter.Ended ended) {
            ending = ended.why();
        }
        if (bound.equals(value())) {
            ending = ExactEnding.PROVEN;
        }
    }

    private void single() {
        Incumbent incumbent = new Incumbent(
                bags.get(0), limits.byBag().get(0), limits.witness().get(0));
        BagTree tree = new BagTree(incumbent, meter, false);
        meter.reportBy(() -> progress.accept(incumbent.value(), tree.bound()));
        tree.run();
        best = List.of(pool.add(0, incumbent.chosen()));
        bound = tree.bound();
        ending = tree.ending();
    }

    private void team() {
        round(prices);
        for (int round = 1; round <= MOST_ROUNDS && !bound.reaches(value()); round++) {
            if (round % 3 == 1) {
                leftOver();
            }
            eliminate();
            PriceStep step = new PriceStep(stock, pool.all(), value(), bound);
            round(step.from(prices));
        }
        if (!bound.reaches(value())) {
            close();
        }
    }

    /** Collects all choices of every bag that a better plan could hold; the best combination of them is then proven. */
    private void close() {
        eliminate();
        LexCost spare = value().minus(bound);
        List<CollectedChoices> collected = IntStream.range(0, bags.size())
                .mapToObj(bag -> new CollectedChoices(
                        prices.priced(bags.get(bag)),
                        limits.byBag().get(bag),
                        prices.priced(best.get(bag).chosen()),
                        bagBounds.get(bag).plus(spare)))
                .toList();
        List<BagTree> trees =
                batch.run(bags.size(), (bag, share) -> new BagTree(collected.get(bag), share, true).run());
        for (int bag = 0; bag < bags.size(); bag++) {
            int place = bag;
            collected.get(bag).choices().forEach(chosen -> pool.add(place, chosen));
        }
        boolean exact = combine();
        if (exact && trees.stream().allMatch(tree -> tree.ending() == ExactEnding.PROVEN)) {
            bound = value();
        }
        endIfDue(trees);
    }

    /** Searches every bag with these prices; the results bound the team and add choices to combine. */
    private void round(Prices trial) {
        meter.look();
        List<BagTree> trees = batch.run(bags.size(), (bag, share) -> search(bag, share, trial, stock));
        List<LexCost> bounds = trees.stream().map(BagTree::bound).toList();
        LexCost reached = bounds.stream().reduce(LexCost.NONE, LexCost::plus).minus(trial.of(stock));
        if (reached.compareTo(bound) > 0 || bagBounds.isEmpty()) {
            bound = LexCost.max(bound, reached);
            prices = trial;
            bagBounds = bounds;
        }
        learn(trees);
    }

    /** Searches every bag with the stock that the others leave it in the best plan. */
    private void leftOver() {
        Prices none = Prices.none(stock.size());
        learn(batch.run(bags.size(), (bag, share) -> search(bag, share, none, left(bag))));
    }

    private List<Integer> left(int bag) {
        return IntStream.range(0, stock.size())
                .mapToObj(item -> stock.get(item)
                        - best.stream()
                                .mapToInt(column -> column.takes().get(item))
                                .sum()
                        + best.get(bag).takes().get(item))
                .toList();
    }

    private void learn(List<BagTree> trees) {
        for (int bag = 0; bag < trees.size(); bag++) {
            pool.add(bag, trees.get(bag).incumbent().chosen());
        }
        combine();
        endIfDue(trees);
    }

    /** Combines the known choices; whether no combination of them was left out. */
    private boolean combine() {
        TeamCombination combination = new TeamCombination(stock);
        List<BagColumn> combined = combination.best(pool.all(), prices);
        if (!combined.isEmpty() && sum(combined).compareTo(value()) < 0) {
            best = combined;
        }
        bound = LexCost.min(bound, value());
        return combination.exact();
    }

    private static void endIfDue(List<BagTree> trees) {
        for (BagTree tree : trees) {
            if (tree.ending().byClock()) {
                throw new Meter.Ended(tree.ending());
            }
        }
    }

    private BagTree search(int bag, Meter share, Prices trial, List<Integer> left) {
        BagLimits own = limits.byBag().get(bag).withStock(left);
        BagColumn start = pool.cheapest(bag, left, trial);
        Incumbent incumbent = new Incumbent(trial.priced(bags.get(bag)), own, trial.priced(start.chosen()));
        return new BagTree(incumbent, share.within(STEPS_PER_ROUND), false).run();
    }

    /** Drops for good the options that no plan of the team takes that is better than the best. */
    private void eliminate() {
        LexCost spare = value().minus(bound);
        List<ExactBag> left = batch.run(bags.size(), (bag, share) -> new OptionElimination(
                        bags.get(bag), limits.byBag().get(bag), prices)
                .below(bagBounds.get(bag).plus(spare), best.get(bag).chosen(), share));
        for (int bag = 0; bag < left.size(); bag++) {
            bags.set(bag, left.get(bag));
        }
    }

    private static LexCost sum(List<BagColumn> plan) {
        return plan.stream().map(BagColumn::value).reduce(LexCost.NONE, LexCost::plus);
    }

    private LexCost value() {
        return sum(best);
    }

    /** What the best plan costs besides an excess. */
    Cost cost(long excess) {
        return Cost.of(excess, value());
    }

    LexCost bound() {
        return bound;
    }

    ExactEnding ending() {
        return ending;
    }

    /** For each bag the indexes of the options chosen. */
    List<List<Integer>> chosen() {
        return best.stream()
                .map(column -> column.chosen().stream().map(ExactOption::index).toList())
                .toList();
    }
}
