package org.bagwright.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
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
 * <p>Each bag is solved exactly as a chain ({@link Chain}) where it is one and the stock suffices. Other bags go to the
 * planner's search: together where the stock could run short between them, else each by itself ({@link Team}).
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
    private final Function<BookOptions, BagRelay> relays;
    private final SolutionManager<Bench, HardMediumSoftLongScore> scorer;
    private boolean cappedByTime;
    private volatile boolean stopped;
    private volatile LocalSearch running;

    /** The first one in a program takes about half a second: it may be made on a thread of its own meanwhile. */
    public BagSearch(SearchLimits limits) {
        this(limits, Effort.USUAL);
    }

    BagSearch(SearchLimits limits, Effort effort) {
        this(limits, effort, book -> BagRelay.NONE);
    }

    /** @param relays what lays a whole bag of a book anew */
    BagSearch(SearchLimits limits, Effort effort, Function<BookOptions, BagRelay> relays) {
        this.limits = limits;
        this.effort = effort;
        this.relays = relays;
        scorer = SolutionManager.create(SolverFactory.create(SolverSettings.scoring(effort.mode())));
    }

    /**
     * The best plan for every bag of a book.
     *
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public BookPlan plan(BookOptions book) {
        List<SearchBag> bags = book.bags().stream().map(SearchBag::new).toList();
        List<StockPile> stock = IntStream.range(0, book.stock().size())
                .mapToObj(item -> new StockPile(item, book.stock().get(item).available()))
                .toList();
        LocalSearch search = new LocalSearch(limits, effort, stock, relays.apply(book));
        running = search;
        if (stopped) {
            search.stop();
        }
        List<List<Integer>> chosen = new ArrayList<>(Collections.nCopies(bags.size(), List.of()));
        Cost bound = Cost.NONE;
        for (Team team : Team.of(bags, stock)) {
            bound = bound.plus(planned(team, search, chosen));
        }
        cappedByTime = search.capped();
        return told(book, Bench.of(bags, stock, chosen), bound);
    }

    /** Plans one team and gives its bound. */
    private Cost planned(Team team, LocalSearch search, List<List<Integer>> chosen) {
        List<Start> alone =
                team.bags().stream().map(bag -> Start.of(bag, effort.pairs())).toList();
        Cost bound = alone.stream().map(Start::bound).reduce(Cost.NONE, Cost::plus);
        List<List<Integer>> start = team.start(alone);
        List<List<Integer>> found = team.isExact(alone, start) ? start : search.improved(team, start, bound);
        for (int bag = 0; bag < found.size(); bag++) {
            chosen.set(team.places().get(bag), found.get(bag));
        }
        return bound;
    }

    private BookPlan told(BookOptions book, Bench bench, Cost bound) {
        List<List<Integer>> chosen = bench.chosen();
        scorer.update(bench);
        checkAgreement(bench.cost(), PlainScore.cost(book, chosen));
        List<BagPlan> plans = new ArrayList<>();
        for (int bag = 0; bag < chosen.size(); bag++) {
            plans.add(new BagPlan(chosen.get(bag), PlainScore.score(book.bags().get(bag), chosen.get(bag))));
        }
        boolean proven = bench.cost().equals(bound);
        double points =
                plans.stream().mapToDouble(plan -> plan.score().penaltyPoints()).sum();
        return new BookPlan(plans, proven ? points : Math.min(points, boundPoints(bench, bound)), proven);
    }

    /** What holds for every choice with as few hard breaks as the bench, which may be more than the bound has. */
    private static double boundPoints(Bench bench, Cost bound) {
        boolean asFew = bench.cost().excess() == bound.excess() && bench.cost().breaks() == bound.breaks();
        return PenaltyRules.points(asFew ? bound.micropoints() : bench.leastMicropoints());
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
