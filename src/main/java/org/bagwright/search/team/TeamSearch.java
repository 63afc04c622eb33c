package org.bagwright.search.team;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.bagwright.search.exact.BagTree;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.Meter;
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

    private final Meter meter;
    private final BiConsumer<LexCost, LexCost> progress;
    private final BagBatch batch;
    private final List<Integer> stock;
    private final List<TeamBag> bags;
    private LexCost bound;
    private long leastWeight;
    private Prices prices;
    private boolean bounded;
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
        this.meter = meter;
        this.progress = progress;
        batch = new BagBatch(meter, threads, this::report);
        stock = limits.stock();
        prices = Prices.none(stock.size());
        bags = IntStream.range(0, problem.bags().size())
                .mapToObj(bag -> new TeamBag(
                        problem.bags().get(bag),
                        limits.byBag().get(bag),
                        limits.witness().get(bag)))
                .toList();
        bound = bags.stream().map(TeamBag::bound).reduce(LexCost.NONE, LexCost::plus);
        leastWeight = bound.weight();
    }

    private void report() {
        progress.accept(value(), bound);
    }

    void run() {
        try {
            if (bags.size() == 1) {
                single(bags.get(0));
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

    private void single(TeamBag bag) {
        BagTree tree = bag.alone(meter);
        meter.reportBy(() -> progress.accept(tree.incumbent().value(), tree.bound()));
        tree.run();
        bag.best(bag.learn(tree.incumbent().chosen()));
        bound = tree.bound();
        leastWeight = tree.floor().weight();
        ending = tree.ending();
    }

    private void team() {
        round(prices);
        for (int round = 1; round <= MOST_ROUNDS && !bound.reaches(value()); round++) {
            if (round % 3 == 1) {
                leftOver();
            }
            eliminate();
            round(new PriceStep(stock, known(), value(), bound).from(prices));
        }
        if (!bound.reaches(value())) {
            close();
        }
    }

    /** Searches every bag with these prices; the results bound the team and add choices to combine. */
    private void round(Prices trial) {
        meter.look();
        List<BagTree> trees = batch.run(bags, (bag, share) -> bag.search(trial, stock, share));
        LexCost reached = trees.stream()
                .map(BagTree::bound)
                .reduce(LexCost.NONE, LexCost::plus)
                .minus(trial.of(stock));
        if (!bounded) {
            leastWeight =
                    trees.stream().mapToLong(tree -> tree.floor().weight()).sum();
        }
        if (reached.compareTo(bound) > 0 || !bounded) {
            bounded = true;
            bound = LexCost.max(bound, reached);
            prices = trial;
            for (int bag = 0; bag < bags.size(); bag++) {
                bags.get(bag).bound(trees.get(bag).bound());
            }
        }
        combine();
        endIfDue(trees);
    }

    /** Searches every bag with the stock that the others leave it in the best plan. */
    private void leftOver() {
        Prices none = Prices.none(stock.size());
        List<BagTree> trees = batch.run(bags, (bag, share) -> bag.search(none, left(bag), share));
        combine();
        endIfDue(trees);
    }

    private List<Integer> left(TeamBag bag) {
        return IntStream.range(0, stock.size())
                .mapToObj(item -> stock.get(item)
                        - bags.stream()
                                .filter(other -> other != bag)
                                .mapToInt(other -> other.best().takes().get(item))
                                .sum())
                .toList();
    }

    /** Drops for good the options that no plan of the team takes that is better than the best. */
    private void eliminate() {
        LexCost distance = value().minus(bound);
        batch.run(bags, (bag, share) -> bag.eliminate(prices, distance, share));
    }

    /** Collects all choices of every bag that a better plan could hold; the best combination of them is then proven. */
    private void close() {
        eliminate();
        LexCost distance = value().minus(bound);
        List<BagTree> trees = batch.run(bags, (bag, share) -> bag.collect(prices, distance, share));
        boolean exact = combine();
        if (exact && trees.stream().allMatch(tree -> tree.ending() == ExactEnding.PROVEN)) {
            bound = value();
        }
        endIfDue(trees);
    }

    private List<List<BagColumn>> known() {
        return bags.stream().map(TeamBag::known).toList();
    }

    /** Combines the known choices; whether no combination of them was left out. */
    private boolean combine() {
        TeamCombination combination = new TeamCombination(stock);
        List<BagColumn> combined = combination.best(known(), prices);
        if (!combined.isEmpty() && sum(combined).compareTo(value()) < 0) {
            for (int bag = 0; bag < bags.size(); bag++) {
                bags.get(bag).best(combined.get(bag));
            }
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

    private List<BagColumn> best() {
        return bags.stream().map(TeamBag::best).toList();
    }

    private static LexCost sum(List<BagColumn> plan) {
        return plan.stream().map(BagColumn::value).reduce(LexCost.NONE, LexCost::plus);
    }

    private LexCost value() {
        return sum(best());
    }

    /** What the best plan costs, with an excess. */
    Cost cost(long excess) {
        return Cost.of(excess, value());
    }

    LexCost bound() {
        return bound;
    }

    /** What no plan within the limits costs less than, whatever it breaks. */
    long leastMicropoints() {
        return new LexCost(0, leastWeight).micropoints();
    }

    ExactEnding ending() {
        return ending;
    }

    /** For each bag the indexes of the options chosen. */
    List<List<Integer>> chosen() {
        return best().stream()
                .map(column -> column.chosen().stream().map(ExactOption::index).toList())
                .toList();
    }
}
