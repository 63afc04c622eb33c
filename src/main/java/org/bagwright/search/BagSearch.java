package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagPlan;
import org.bagwright.domain.BagState;
import org.bagwright.domain.BookOptions;
import org.bagwright.domain.BookPlan;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;

/**
 * Finds the best choice of options for every bag: fewest hard breaks, then least penalty, then fewest changes, then the
 * earliest options.
 *
 * <p>Each bag is solved exactly as a chain ({@link Chain}), or where it is too big for that by the planner's search.
 * The planner's constraints then score every plan: it counts as proven only where they give the bound.
 *
 * <p>A plan takes open options only, and never more changes than the golfer allows unless his open options need more;
 * neither is traded against another limit. The same bags and the same seed give the same plans on any machine, unless
 * the cap of time strikes. Not for use by two threads at once, except {@link #stop}.
 *
 * <p>Choices are compared in whole micropoints a term; penalties are told as the unrounded sum, so that a bound holds to
 * half a micropoint a term.
 */
public final class BagSearch {
    private final SearchLimits limits;
    private final Effort effort;
    private final SolutionManager<Bench, HardMediumSoftLongScore> scorer;
    private boolean cappedByTime;
    private volatile boolean stopped;
    private volatile LocalSearch running;

    /** The first one in a program takes about half a second: it may be made on a thread of its own meanwhile. */
    public BagSearch(SearchLimits limits) {
        this(limits, Effort.USUAL);
    }

    BagSearch(SearchLimits limits, Effort effort) {
        this.limits = limits;
        this.effort = effort;
        scorer = SolutionManager.create(SolverFactory.create(SolverSettings.scoring(effort.mode())));
    }

    /**
     * The best plan for every bag of a book.
     *
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public BookPlan plan(BookOptions book) {
        LocalSearch search = new LocalSearch(limits, effort);
        running = search;
        if (stopped) {
            search.stop();
        }
        List<SearchBag> bags = book.bags().stream().map(SearchBag::new).toList();
        List<StockPile> stock = IntStream.range(0, book.stock().size())
                .mapToObj(item -> new StockPile(item, book.stock().get(item).available()))
                .toList();
        List<List<Integer>> chosen = new ArrayList<>();
        Cost bound = Cost.NONE;
        for (SearchBag bag : bags) {
            Start start = Start.of(bag, effort.pairs());
            chosen.add(start.exact() ? start.chosen() : search.improved(bag, start));
            bound = bound.plus(start.bound());
        }
        cappedByTime = search.capped();
        return told(book, Bench.of(bags, stock, chosen), chosen, bound);
    }

    private BookPlan told(BookOptions book, Bench bench, List<List<Integer>> chosen, Cost bound) {
        scorer.update(bench);
        Cost cost = bench.cost();
        checkAgreement(cost, PlainScore.cost(book, chosen));
        List<BagPlan> plans = new ArrayList<>();
        for (int bag = 0; bag < chosen.size(); bag++) {
            plans.add(new BagPlan(chosen.get(bag), PlainScore.score(book.bags().get(bag), chosen.get(bag))));
        }
        boolean proven = cost.equals(bound);
        double points =
                plans.stream().mapToDouble(plan -> plan.score().penaltyPoints()).sum();
        return new BookPlan(plans, proven ? points : PenaltyRules.points(bound.micropoints()), proven);
    }

    /** Whether the last plan ended by its cap of time, so that another run may give another plan. */
    public boolean cappedByTime() {
        return cappedByTime;
    }

    /** Ends the running search early, from any thread; its best plan so far is its answer. */
    public void stop() {
        stopped = true;
        LocalSearch search = running;
        if (search != null) {
            search.stop();
        }
    }

    /**
     * Any choice with its score, whether a plan may take it or not.
     *
     * @param bag the bag
     * @param chosen for each slot of the bag the index of its option
     */
    public static BagState state(BagOptions bag, List<Integer> chosen) {
        return new BagState(
                chosen, PlainScore.score(bag, chosen), PlainScore.gaps(bag, chosen), PlainScore.spreads(bag, chosen));
    }

    /** A plan on whose score the constraints and the plain sum differ is never given out: one of them is wrong. */
    private static void checkAgreement(Cost byConstraints, Cost bySum) {
        if (!byConstraints.equals(bySum)) {
            throw new IllegalStateException(
                    "the constraints score the plan " + byConstraints + " and the plain sum gives " + bySum);
        }
    }
}
