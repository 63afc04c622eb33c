package org.bagwright.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.model.Effort;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchClock;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.SearchProgress;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.planner.BagOptimizer;
import org.bagwright.search.planner.LocalSearch;
import org.bagwright.search.planner.SolverSettings;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.team.ExactSearch;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;

/**
 * Finds the best choice of options for all bags of a book: least excess over what no plan trades against anything else (stock,
 * most changes, fourteen clubs), then fewest hard breaks, then least penalty, then fewest changes.
 *
 * <p>Bags between which the stock could run short are searched together, the others each by itself ({@link Team}), first by the
 * exact search ({@link ExactSearch}), which proves its plan or gives a bound. Where it ends unproven, the planner's local search
 * goes on from its plan ({@link LocalSearch}), laying single bags anew by the exact search. The planner's constraints score
 * every plan: it counts as proven only where they give the bound.
 *
 * <p>A plan takes open options only. The same bags and the same seed give the same plans on any machine, unless the cap of time
 * strikes. Not for use by two threads at once, except {@link #stop}.
 *
 * <p>Choices are compared in whole micropoints a term; penalties are told as the unrounded sum, so that a bound holds to
 * half a micropoint a term.
 */
public final class BagSearch {
    private final SearchLimits limits;
    private final Effort effort;
    private final SolutionManager<PlanningProblem, HardMediumSoftLongScore> scorer;
    private final SearchClock clock;
    private boolean cappedByTime;

    /** The first one in a program takes about half a second: it may be made on a thread of its own meanwhile. */
    public BagSearch(SearchLimits limits) {
        this(limits, Effort.USUAL);
    }

    public BagSearch(SearchLimits limits, Effort effort) {
        this.limits = limits;
        this.effort = effort;
        clock = new SearchClock(limits.mostS());
        scorer = SolutionManager.create(SolverFactory.create(SolverSettings.scoring(effort.mode())));
    }

    /** Tells how far the search is, at most a few times a second; from then on. */
    public void onProgress(SearchProgress progress) {
        clock.onProgress(progress);
    }

    /**
     * The best plan for every bag of a book.
     *
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public BookPlan plan(BookOptions book) {
        clock.start();
        cappedByTime = false;
        List<SearchBag> bags = book.bags().stream().map(SearchBag::new).toList();
        List<StockPile> stock =
                piles(book.stock().stream().map(StockLimit::available).toList());
        List<List<Integer>> chosen = new ArrayList<>(Collections.nCopies(bags.size(), List.of()));
        Cost bound = Cost.NONE;
        for (Team team : Team.of(bags, stock)) {
            bound = bound.plus(planned(team, chosen));
        }
        return told(book, PlanningProblem.of(bags, stock, chosen), bound);
    }

    /**
     * The best plan for one bag beside others that stay as they are.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     * @return the plan; empty where it was not proven best
     */
    public Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft) {
        Team team = alone(bag, stockLeft);
        ExactResult found = ExactSearch.book(team.exact(), clock.limits(effort.steps(), Cost.NONE));
        return found.proven() ? Optional.of(plan(bag, found.chosen().get(0))) : Optional.empty();
    }

    /**
     * The best plans for one bag with at most 0, 1, 2, ... changes, up to the first that is as good as with all that it may
     * change; where one is not proven best the row ends before it.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     */
    public List<BagPlan> steps(BagOptions bag, List<Integer> stockLeft) {
        Team team = alone(bag, stockLeft);
        return ExactSearch.steps(
                        team.bags().get(0).exact(team.scarce()),
                        team.scarce().stream().map(StockPile::available).toList(),
                        clock.limits(effort.steps(), Cost.NONE))
                .stream()
                .takeWhile(ExactResult::proven)
                .map(step -> plan(bag, step.chosen().get(0)))
                .toList();
    }

    private static Team alone(BagOptions bag, List<Integer> stockLeft) {
        return Team.of(List.of(new SearchBag(bag)), piles(stockLeft)).get(0);
    }

    private static List<StockPile> piles(List<Integer> available) {
        return IntStream.range(0, available.size())
                .mapToObj(item -> new StockPile(item, available.get(item)))
                .toList();
    }

    private static BagPlan plan(BagOptions bag, List<Integer> chosen) {
        return new BagPlan(chosen, new PlainScore(bag, chosen).score());
    }

    /** Plans one team and gives its bound. */
    private Cost planned(Team team, List<List<Integer>> chosen) {
        Cost closed = new Cost(team.leastClosed(), 0, 0);
        ExactResult exact = ExactSearch.book(team.exact(), clock.limits(effort.steps(), closed));
        Cost bound = closed.plus(exact.bound());
        List<List<Integer>> found = exact.chosen();
        if (!exact.proven()) {
            LocalSearch search = new LocalSearch(limits.seed(), effort, clock, relay(team));
            found = search.improved(team, found, bound);
            cappedByTime |=
                    exact.ending() == ExactEnding.CAP || exact.ending() == ExactEnding.STOPPED || search.capped();
        }
        for (int bag = 0; bag < found.size(); bag++) {
            chosen.set(team.places().get(bag), found.get(bag));
        }
        return bound;
    }

    private BagOptimizer relay(Team team) {
        return (bag, chosen, free) -> ExactSearch.bag(
                        team.bags().get(bag).exact(team.scarce()), free, clock.limits(effort.relaySteps(), Cost.NONE))
                .chosen()
                .get(0);
    }

    private BookPlan told(BookOptions book, PlanningProblem bench, Cost bound) {
        List<List<Integer>> chosen = bench.chosen();
        scorer.update(bench);
        checkAgreement(bench.cost(), PlainScore.cost(book, chosen));
        List<BagPlan> plans = new ArrayList<>();
        for (int bag = 0; bag < chosen.size(); bag++) {
            plans.add(plan(book.bags().get(bag), chosen.get(bag)));
        }
        boolean proven = bench.cost().equals(bound);
        double points =
                plans.stream().mapToDouble(plan -> plan.score().penaltyPoints()).sum();
        return new BookPlan(plans, proven ? points : Math.min(points, boundPoints(bench, bound)), proven);
    }

    /** What holds for every choice with as few hard breaks as the bench, which may be more than the bound has. */
    private static double boundPoints(PlanningProblem bench, Cost bound) {
        boolean asFew = bench.cost().excess() == bound.excess() && bench.cost().breaks() == bound.breaks();
        return PenaltyRules.points(asFew ? bound.micropoints() : bench.leastMicropoints());
    }

    /** Whether the last plan ended by its cap of time, so that another run may give another plan. */
    public boolean cappedByTime() {
        return cappedByTime;
    }

    /** Ends the running search early, from any thread; its best plan so far is its answer. */
    public void stop() {
        clock.stop();
    }

    /**
     * Any choice with its score, whether a plan may take it or not.
     *
     * @param bag the bag
     * @param chosen for each slot of the bag the index of its option
     */
    public static BagState state(BagOptions bag, List<Integer> chosen) {
        return new PlainScore(bag, chosen).state();
    }

    /** A plan on whose score the constraints and the plain sum differ is never given out: one of them is wrong. */
    private static void checkAgreement(Cost byConstraints, Cost bySum) {
        if (!byConstraints.equals(bySum)) {
            throw new IllegalStateException(
                    "the constraints score the plan " + byConstraints + " and the plain sum gives " + bySum);
        }
    }
}
