package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.BagTree;
import org.bagwright.search.exact.BestChoice;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactLimits;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;

/**
 * The best plan of several bags that share a stock. Every bag is searched exactly by itself with a price on each piece
 * (column generation); the sum of the bags' bounds less what the whole stock would cost bounds the team, and the known
 * choices of all bags are combined within the stock. In the end, if there is still a difference, all choices of each
 * bag are collected that can lie in it.
 */
final class TeamSearch {
    private static final int MOST_ROUNDS = 14;

    /** What a bag may use up in one round, so that one hard bag does not hold up the others. */
    private static final long STEPS_PER_ROUND = 60_000_000;

    private final ExactProblem problem;
    private final MinimalViolations.Raise raise;
    private final Meter meter;
    private final BagBatch batch;
    private final List<Integer> stock;
    private final List<ExactBag> bags;
    private final List<Map<List<Integer>, BagColumn>> columns = new ArrayList<>();
    private List<BagColumn> best;
    private LexCost bound = LexCost.NONE;
    private StockPrices prices;
    private List<LexCost> bagBounds = List.of();
    private ExactEnding ending = ExactEnding.STEPS;

    /** What the search of one bag found. */
    private record Found(List<ExactOption> chosen, LexCost bound, ExactEnding ending) {}

    private record Collection(List<BagColumn> columns, ExactEnding ending) {}

    TeamSearch(ExactProblem problem, MinimalViolations.Raise raise, Meter meter, ExactLimits limits, long pieces) {
        this.problem = problem;
        this.raise = raise;
        this.meter = meter;
        stock = raise.byBag().get(0).stock();
        bags = new ArrayList<>(problem.bags());
        prices = StockPrices.none(stock.size());
        best = new ArrayList<>();
        for (int bag = 0; bag < bags.size(); bag++) {
            columns.add(new LinkedHashMap<>());
            best.add(column(bag, raise.witness().get(bag)));
            learn(bag, raise.witness().get(bag));
        }
        Runnable told = Meter.seldom(meter, (own, elapsedS) -> limits.progress()
                .told(Cost.of(pieces, value()), Cost.of(pieces, bound), elapsedS));
        meter.reportBy(told);
        batch = new BagBatch(meter, limits.threads(), told);
    }

    void run() {
        try {
            if (bags.size() == 1) {
                single();
            } else {
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
        BestChoice choice = new BestChoice(
                bags.get(0), raise.byBag().get(0), raise.witness().get(0));
        BagTree tree = new BagTree(bags.get(0), raise.byBag().get(0), choice, meter, false, this::raiseTo);
        tree.run();
        best = List.of(column(0, choice.chosen()));
        bound = tree.bound();
        ending = tree.ending();
    }

    private void raiseTo(LexCost to, List<ExactOption> chosen) {
        bound = LexCost.max(bound, to);
        best = List.of(column(0, chosen));
    }

    private void team() {
        round(prices);
        for (int round = 1; round <= MOST_ROUNDS && !bound.reaches(value()); round++) {
            if (round % 3 == 1) {
                leftOver();
            }
            shrink();
            PriceStep step = new PriceStep(stock, columns, value(), bound);
            round(step.from(prices));
        }
        if (!bound.reaches(value())) {
            close();
        }
    }

    /** Collects all choices of every bag that a better plan could hold; the best combination of them is then proven. */
    private void close() {
        shrink();
        LexCost spare = value().minus(bound);
        List<Collection> collections = batch.run(
                bags.size(),
                (bag, share) -> collect(bag, share, bagBounds.get(bag).plus(spare)));
        for (int bag = 0; bag < bags.size(); bag++) {
            int place = bag;
            collections.get(bag).columns().forEach(column -> learn(place, column.chosen()));
        }
        boolean exact = combined();
        if (exact && collections.stream().allMatch(each -> each.ending() == ExactEnding.PROVEN)) {
            bound = value();
        }
        collections.forEach(each -> endIfAsked(each.ending()));
    }

    private Collection collect(int bag, Meter share, LexCost below) {
        ExactBag priced = prices.priced(bags.get(bag));
        BagLimits limits = raise.byBag().get(bag);
        List<ExactOption> start =
                best.get(bag).chosen().stream().map(prices::priced).toList();
        CollectedChoices choices = new CollectedChoices(priced, limits, start, below);
        BagTree tree = new BagTree(priced, limits, choices, share, true, (reached, chosen) -> {});
        tree.run();
        return new Collection(choices.columns(), tree.ending());
    }

    /** Searches every bag with these prices; what comes out bounds the team and adds choices to combine. */
    private void round(StockPrices trial) {
        meter.look();
        List<Found> found =
                batch.run(bags.size(), (bag, share) -> search(bag, share.within(STEPS_PER_ROUND), trial, stock));
        LexCost sum = LexCost.NONE;
        List<LexCost> bounds = new ArrayList<>();
        for (Found each : found) {
            sum = sum.plus(each.bound());
            bounds.add(each.bound());
        }
        LexCost reached = sum.minus(trial.of(stock));
        if (reached.compareTo(bound) > 0 || bagBounds.isEmpty()) {
            bound = LexCost.max(bound, reached);
            prices = trial;
            bagBounds = bounds;
        }
        combine(found);
    }

    /** Searches every bag with the stock that the others leave it in the best plan. */
    private void leftOver() {
        List<Found> found = batch.run(
                bags.size(),
                (bag, share) -> search(bag, share.within(STEPS_PER_ROUND), StockPrices.none(stock.size()), left(bag)));
        combine(found);
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

    private void combine(List<Found> found) {
        for (int bag = 0; bag < found.size(); bag++) {
            learn(bag, found.get(bag).chosen());
        }
        combined();
        found.forEach(each -> endIfAsked(each.ending()));
    }

    /** Combines the known choices; whether no combination of them was left out. */
    private boolean combined() {
        List<List<BagColumn>> known =
                columns.stream().map(each -> List.copyOf(each.values())).toList();
        TeamCombination master = new TeamCombination(stock);
        List<BagColumn> combined = master.best(known, prices);
        if (!combined.isEmpty() && sum(combined).compareTo(value()) < 0) {
            best = combined;
        }
        bound = LexCost.min(bound, value());
        return master.exact();
    }

    private static void endIfAsked(ExactEnding why) {
        if (why == ExactEnding.CAP || why == ExactEnding.STOPPED) {
            throw new Meter.Ended(why);
        }
    }

    private Found search(int bag, Meter share, StockPrices trial, List<Integer> left) {
        ExactBag priced = trial.priced(bags.get(bag));
        BagLimits limits = raise.byBag().get(bag).withStock(left);
        BagColumn start = columns.get(bag).values().stream()
                .filter(column -> column.fits(left))
                .min(java.util.Comparator.comparing(column -> column.value().plus(trial.of(column.takes()))))
                .orElseThrow();
        BestChoice choice = new BestChoice(
                priced, limits, start.chosen().stream().map(trial::priced).toList());
        BagTree tree = new BagTree(priced, limits, choice, share, false, (reached, chosen) -> {});
        tree.run();
        return new Found(choice.chosen(), tree.bound(), tree.ending());
    }

    /** Drops for good the options that no plan of the team takes that is better than the best. */
    private void shrink() {
        LexCost spare = value().minus(bound);
        List<ExactBag> shrunk = batch.run(bags.size(), (bag, share) -> {
            LexCost limit = bagBounds.get(bag).plus(spare);
            return new OptionElimination(bags.get(bag), raise.byBag().get(bag), prices, share)
                    .below(limit, best.get(bag).chosen());
        });
        for (int bag = 0; bag < shrunk.size(); bag++) {
            bags.set(bag, shrunk.get(bag));
        }
    }

    private void learn(int bag, List<ExactOption> chosen) {
        BagColumn column = column(bag, chosen);
        columns.get(bag).merge(column.takes(), column, BagColumn::better);
    }

    private BagColumn column(int bag, List<ExactOption> chosen) {
        ExactBag unpriced = problem.bags().get(bag);
        return BagColumn.of(unpriced, same(unpriced, chosen), stock.size());
    }

    /** The options of the bag with the same indexes. */
    private static List<ExactOption> same(ExactBag bag, List<ExactOption> chosen) {
        return IntStream.range(0, chosen.size())
                .mapToObj(slot -> bag.slots().get(slot).stream()
                        .filter(option -> option.index() == chosen.get(slot).index())
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    private static LexCost sum(List<BagColumn> plan) {
        return plan.stream().map(BagColumn::value).reduce(LexCost.NONE, LexCost::plus);
    }

    LexCost value() {
        return sum(best);
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
