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
import org.bagwright.domain.plan.BrokenRule;
import org.bagwright.domain.plan.PlanBounds;
import org.bagwright.domain.plan.PlanProof;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.exact.SearchProgress;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.planner.ConstraintScorer;
import org.bagwright.search.planner.TeamSolver;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.score.PenaltyScale;
import org.bagwright.search.team.ExactSearch;

/**
 * Finds the best choice of options for all bags of a book: least excess over what no plan trades against anything else (stock,
 * most changes, fourteen clubs), then fewest hard breaks, then least penalty, then fewest changes.
 *
 * <p>Bags between which the stock could run short are searched together, the others each by itself ({@link Team}), by one
 * solver from start to end ({@link TeamSolver}): it constructs a plan, improves it by local search, and proves it or bounds
 * it by the exact search. The planner's constraints score every plan: it counts as proven only where they give the bound.
 *
 * <p>A plan takes open options only. The same bags and the same seed give the same plans on any machine, unless the cap of time
 * ends the search. Not for use by two threads at once, except {@link #stop}.
 *
 * <p>Choices are compared in whole micropoints a term, or in millionths of a larger point where penalties are huge ({@link
 * PenaltyScale}); penalties are reported as the unrounded sum, so that a bound holds to half such a unit a term.
 *
 * <p>Questions about single bags ({@link #best}, {@link #steps}) have a time of their own, from the end of the plan on.
 */
public final class BagSearch {
    private static final int THREADS = 2;

    /** Plans that are not proven could call for one scale after another. */
    private static final int MOST_SCALES = 4;

    /** The least time for questions about single bags, and all there is for them after a request to stop. */
    private static final double LEAST_QUESTIONS_S = 2;

    private final double mostS;
    private final long mostSteps;
    private final SearchClock clock;
    private final SearchClock questionClock;
    private final TeamSolver solver;
    private final OneBagSearch oneBag;
    private final ConstraintScorer scorer;
    private boolean cappedByTime;

    /** The first one in a program takes about half a second: it may be made on a thread of its own meanwhile. */
    public BagSearch(SearchLimits limits) {
        mostS = limits.mostS();
        mostSteps = limits.mostSteps();
        clock = new SearchClock(mostS);
        questionClock = new SearchClock(mostS);
        solver = new TeamSolver(limits, clock, new ExactSearch(clock, THREADS));
        oneBag = new OneBagSearch(questionClock, mostSteps, THREADS);
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
        clock.start(mostS);
        cappedByTime = false;
        List<SearchBag> bags = book.bags().stream().map(SearchBag::new).toList();
        List<StockPile> stock =
                StockPile.all(book.stock().stream().map(StockLimit::available).toList());
        List<TeamPlan> teams =
                Team.of(bags, stock).stream().map(team -> plan(book, team)).toList();
        List<List<Integer>> chosen = new ArrayList<>(Collections.nCopies(bags.size(), List.of()));
        for (TeamPlan team : teams) {
            for (int bag = 0; bag < team.chosen().size(); bag++) {
                chosen.set(team.places().get(bag), team.chosen().get(bag));
            }
        }
        PlanningProblem problem = PlanningProblem.of(bags, stock, chosen);
        Cost cost = scorer.checked(problem, PlainScore.cost(book, chosen));
        questionClock.start(clock.isStopped() ? LEAST_QUESTIONS_S : Math.max(LEAST_QUESTIONS_S, mostS));
        return plan(book, chosen, teams, cost.toldBreaks() == 0 ? List.of() : scorer.broken(problem));
    }

    /**
     * What was found for one team.
     *
     * @param places the places of its bags in the book
     * @param scale the points in which it was searched
     * @param found the choice, and what no choice is below
     * @param penaltyPoints what the choice costs, in points of the book
     */
    private record TeamPlan(List<Integer> places, PenaltyScale scale, TeamSolver.Found found, double penaltyPoints) {

        List<List<Integer>> chosen() {
            return found.chosen();
        }

        boolean suits() {
            return scale.suits(penaltyPoints);
        }

        boolean proven() {
            return suits() && found.cost().equals(found.bound());
        }

        TeamPlan with(List<List<Integer>> chosen, double points) {
            TeamSolver.Found other =
                    new TeamSolver.Found(chosen, found.cost(), found.bound(), found.leastMicropoints(), found.capped());
            return new TeamPlan(places, scale, other, points);
        }

        double points(long micropoints) {
            return PenaltyRules.points(micropoints) * scale.bookPoints();
        }
    }

    private TeamPlan plan(BookOptions book, Team team) {
        List<List<Integer>> today = team.places().stream()
                .map(place -> book.bags().get(place).today())
                .toList();
        TeamPlan plan = search(book, team, PenaltyScale.of(points(book, team.places(), today)));
        for (int round = 0; round < MOST_SCALES && !plan.suits(); round++) {
            plan = search(book, team, PenaltyScale.of(plan.penaltyPoints()));
        }
        return plan.scale().equals(PenaltyScale.BOOK) ? plan : eachByItself(book, plan);
    }

    /** On a large scale a bag that costs little hardly counts where another one costs much: each is planned once more. */
    private TeamPlan eachByItself(BookOptions book, TeamPlan plan) {
        OneBagSearch oneByOne = new OneBagSearch(clock, mostSteps, THREADS);
        List<List<Integer>> chosen = new ArrayList<>(plan.chosen());
        for (int bag = 0; bag < chosen.size() && chosen.size() > 1; bag++) {
            BagOptions options = book.bags().get(plan.places().get(bag));
            Optional<BagPlan> best = oneByOne.best(options, stockLeft(book, plan, chosen, bag), chosen.get(bag));
            if (best.isPresent()) {
                chosen.set(bag, best.get().chosen());
            }
        }
        return plan.with(chosen, points(book, plan.places(), chosen));
    }

    /** What the other bags of a team leave of each item of the stock. */
    private static List<Integer> stockLeft(BookOptions book, TeamPlan plan, List<List<Integer>> chosen, int but) {
        return IntStream.range(0, book.stock().size())
                .mapToObj(item -> book.stock().get(item).available()
                        - IntStream.range(0, chosen.size())
                                .filter(bag -> bag != but)
                                .map(bag ->
                                        book.bags().get(plan.places().get(bag)).taken(item, chosen.get(bag)))
                                .sum())
                .map(left -> Math.max(0, left))
                .toList();
    }

    private static double points(BookOptions book, List<Integer> places, List<List<Integer>> chosen) {
        return IntStream.range(0, chosen.size())
                .mapToDouble(bag -> new PlainScore(book.bags().get(places.get(bag)), chosen.get(bag))
                        .score()
                        .penaltyPoints())
                .sum();
    }

    private TeamPlan search(BookOptions book, Team team, PenaltyScale scale) {
        TeamSolver.Found found = solver.best(team.on(scale, book));
        cappedByTime |= found.capped();
        return new TeamPlan(team.places(), scale, found, points(book, team.places(), found.chosen()));
    }

    private static BookPlan plan(
            BookOptions book, List<List<Integer>> chosen, List<TeamPlan> teams, List<BrokenRule> broken) {
        List<BagPlan> plans = IntStream.range(0, chosen.size())
                .mapToObj(bag -> new PlainScore(book.bags().get(bag), chosen.get(bag)).plan())
                .toList();
        double points =
                plans.stream().mapToDouble(plan -> plan.score().penaltyPoints()).sum();
        boolean proven = teams.stream().allMatch(TeamPlan::proven);
        Cost bound = teams.stream().map(team -> team.found().bound()).reduce(Cost.NONE, Cost::plus);
        Cost cost = teams.stream().map(team -> team.found().cost()).reduce(Cost.NONE, Cost::plus);
        boolean asFew = cost.excess() == bound.excess() && cost.breaks() == bound.breaks();
        double boundPoints = teams.stream()
                .mapToDouble(team -> team.points(
                        asFew
                                ? team.found().bound().micropoints()
                                : team.found().leastMicropoints()))
                .sum();
        PlanBounds bounds = new PlanBounds(
                bound.excess(), bound.breaks(), proven ? points : Math.min(points, Math.max(0, boundPoints)));
        return new BookPlan(plans, new PlanProof(bounds, proven, broken));
    }

    /**
     * The best plan for one bag while the others stay as they are.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     * @param start a choice from which to start, for each slot the index of its option
     * @return the plan; empty where it was not proven best
     */
    public Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft, List<Integer> start) {
        return oneBag.best(bag, stockLeft, start);
    }

    /**
     * The best plans for one bag with at most 0, 1, 2, ... changes, up to the first that is as good as its plan; where one is
     * not proven best the list ends before it.
     *
     * @param stockLeft how many of each item of the book's stock it may take
     * @param planned the plan of the bag
     * @param proven whether that is proven best
     */
    public BagSteps steps(BagOptions bag, List<Integer> stockLeft, BagPlan planned, boolean proven) {
        return oneBag.steps(bag, stockLeft, planned, proven);
    }

    /** Whether the last plan ended by its cap of time, so that another run may give another plan. */
    public boolean cappedByTime() {
        return cappedByTime;
    }

    /** Ends the running search early, from any thread; its best plan so far is its answer, and questions get little time. */
    public void stop() {
        clock.stop();
        questionClock.leave(LEAST_QUESTIONS_S);
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
