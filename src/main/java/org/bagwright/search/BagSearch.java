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
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.exact.SearchProgress;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.planner.BagOptimizer;
import org.bagwright.search.planner.ConstraintScorer;
import org.bagwright.search.planner.LocalSearch;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.score.PenaltyScale;
import org.bagwright.search.team.ExactSearch;

/**
 * Finds the best choice of options for all bags of a book: least excess over what no plan trades against anything else (stock,
 * most changes, fourteen clubs), then fewest hard breaks, then least penalty, then fewest changes.
 *
 * <p>Bags between which the stock could run short are searched together, the others each by itself ({@link Team}), first by the
 * exact search ({@link ExactSearch}), which proves its plan or gives a bound. Where it ends unproven, the planner's local search
 * goes on from its plan ({@link LocalSearch}) and re-optimises single bags by the exact search. The planner's constraints score
 * every plan: it counts as proven only where they give the bound.
 *
 * <p>A plan takes open options only. The same bags and the same seed give the same plans on any machine, unless the cap of time
 * ends the search. Not for use by two threads at once, except {@link #stop}.
 *
 * <p>Choices are compared in whole micropoints a term, or in millionths of a larger point where penalties are huge ({@link
 * PenaltyScale}); penalties are reported as the unrounded sum, so that a bound holds to half such a unit a term.
 */
public final class BagSearch {
    private static final int THREADS = 2;

    /** Plans that are not proven could call for one scale after another. */
    private static final int MOST_SCALES = 4;

    private final SearchLimits limits;
    private final SearchClock clock;
    private final ExactSearch exact;
    private final ConstraintScorer scorer;
    private boolean cappedByTime;

    /** The first one in a program takes about half a second: it may be made on a thread of its own meanwhile. */
    public BagSearch(SearchLimits limits) {
        this.limits = limits;
        clock = new SearchClock(limits.mostS());
        exact = new ExactSearch(clock, THREADS);
        scorer = new ConstraintScorer(limits);
    }

    /** Reports how far the search is, at most a few times a second; from then on. */
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
                StockPile.all(book.stock().stream().map(StockLimit::available).toList());
        List<TeamPlan> teams =
                Team.of(bags, stock).stream().map(team -> plan(book, team)).toList();
        List<List<Integer>> chosen = new ArrayList<>(Collections.nCopies(bags.size(), List.of()));
        for (TeamPlan team : teams) {
            for (int bag = 0; bag < team.chosen().size(); bag++) {
                chosen.set(team.team().places().get(bag), team.chosen().get(bag));
            }
        }
        return plan(book, PlanningProblem.of(bags, stock, chosen), teams);
    }

    /**
     * What was found for one team.
     *
     * @param team the bags as they were searched
     * @param scale the points in which they were searched
     * @param chosen for each of them the options chosen
     * @param bound what no choice can be below
     * @param penaltyPoints its penalty, in points of the book
     */
    private record TeamPlan(
            Team team, PenaltyScale scale, List<List<Integer>> chosen, Cost bound, double penaltyPoints) {

        boolean suits() {
            return scale.suits(penaltyPoints);
        }
    }

    private TeamPlan plan(BookOptions book, Team team) {
        List<List<Integer>> today = team.places().stream()
                .map(place -> book.bags().get(place).today())
                .toList();
        TeamPlan plan = search(book, team, PenaltyScale.of(points(book, team, today)));
        for (int round = 0; round < MOST_SCALES && !plan.suits(); round++) {
            plan = search(book, team, PenaltyScale.of(plan.penaltyPoints()));
        }
        return plan;
    }

    private static double points(BookOptions book, Team team, List<List<Integer>> chosen) {
        return IntStream.range(0, chosen.size())
                .mapToDouble(bag -> new PlainScore(book.bags().get(team.places().get(bag)), chosen.get(bag))
                        .score()
                        .penaltyPoints())
                .sum();
    }

    private TeamPlan search(BookOptions book, Team inBookPoints, PenaltyScale scale) {
        Team team = inBookPoints.on(scale, book);
        ExactResult result = exact.best(team.exact(), limits.steps());
        List<List<Integer>> found = result.chosen();
        if (!result.proven()) {
            LocalSearch search = new LocalSearch(limits, clock, optimizer(team));
            found = search.improved(team, found, result.bound());
            cappedByTime |= result.ending().byClock() || search.capped();
        }
        return new TeamPlan(team, scale, found, result.bound(), points(book, team, found));
    }

    private BagOptimizer optimizer(Team team) {
        return (bag, free) -> {
            ExactProblem alone = new ExactProblem(List.of(team.bags().get(bag).exact(team.scarce())), free);
            return exact.best(alone, limits.bagSteps()).chosen().get(0);
        };
    }

    private BookPlan plan(BookOptions book, PlanningProblem problem, List<TeamPlan> teams) {
        List<List<Integer>> chosen = problem.chosen();
        Cost cost = scorer.checked(problem, PlainScore.cost(book, chosen));
        List<BagPlan> plans = IntStream.range(0, chosen.size())
                .mapToObj(bag -> new PlainScore(book.bags().get(bag), chosen.get(bag)).plan())
                .toList();
        double points =
                plans.stream().mapToDouble(plan -> plan.score().penaltyPoints()).sum();
        if (teams.stream().allMatch(team -> team.scale().equals(PenaltyScale.BOOK))) {
            Cost bound = teams.stream().map(TeamPlan::bound).reduce(Cost.NONE, Cost::plus);
            boolean proven = cost.equals(bound) && teams.stream().allMatch(TeamPlan::suits);
            return new BookPlan(plans, proven ? points : Math.min(points, boundPoints(problem, bound)), proven);
        }
        return plan(plans, teams);
    }

    /** Each team is scored in the points in which it was searched. */
    private BookPlan plan(List<BagPlan> plans, List<TeamPlan> teams) {
        boolean proven = teams.stream().allMatch(TeamPlan::suits);
        double points = 0;
        double boundPoints = 0;
        for (TeamPlan team : teams) {
            PlanningProblem problem =
                    PlanningProblem.of(team.team().bags(), team.team().scarce(), team.chosen());
            proven &= scorer.cost(problem).equals(team.bound());
            boundPoints += boundPoints(problem, team.bound()) * team.scale().bookPoints();
            points += team.penaltyPoints();
        }
        return new BookPlan(plans, proven ? points : Math.min(points, boundPoints), proven);
    }

    /** What holds for every choice with as few hard breaks as the plan, which may have more than the bound. */
    private static double boundPoints(PlanningProblem problem, Cost bound) {
        boolean asFew =
                problem.cost().excess() == bound.excess() && problem.cost().breaks() == bound.breaks();
        return PenaltyRules.points(asFew ? bound.micropoints() : problem.leastMicropoints());
    }

    /**
     * The best plan for one bag while the others stay as they are.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     * @return the plan; empty where it was not proven best
     */
    public Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft) {
        return new OneBagSearch(exact, limits).best(bag, stockLeft);
    }

    /**
     * The best plans for one bag with at most 0, 1, 2, ... changes, up to the first that is as good as with all that it
     * may change; where one is not proven best the list ends before it.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     */
    public List<BagPlan> steps(BagOptions bag, List<Integer> stockLeft) {
        return new OneBagSearch(exact, limits).steps(bag, stockLeft);
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
}
