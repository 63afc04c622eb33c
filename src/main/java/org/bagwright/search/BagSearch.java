package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagPlan;
import org.bagwright.domain.BagScore;
import org.bagwright.domain.GapTerm;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * Finds the best choice of options for every bag: fewest hard breaks, then least penalty, then fewest changes, then the
 * earliest options.
 *
 * <p>Each bag is first solved exactly as a chain ({@link Chain}); the planner then scores that choice by its own
 * constraints, and searches on only where a bag is too big for the chain. A plan takes open options only, and never more
 * changes than the golfer allows unless his open options need more; neither is traded against another limit. The same
 * bags and the same seed give the same plans on any machine, unless the cap of time strikes.
 */
public final class BagSearch {
    /** Pairs of carries that the chain may look at in one bag: about two seconds. */
    private static final long MOST_WORK = 1_000_000_000;

    /** Time enough to score the start, when the search was stopped before it began. */
    private static final double STOPPED_S = 0.001;

    private final SearchLimits limits;
    private final EnvironmentMode mode;
    private final long mostWork;
    private boolean cappedByTime;
    private volatile boolean stopped;
    private volatile Solver<Bench> solver;

    public BagSearch(SearchLimits limits) {
        this(limits, EnvironmentMode.REPRODUCIBLE, MOST_WORK);
    }

    BagSearch(SearchLimits limits, EnvironmentMode mode, long mostWork) {
        this.limits = limits;
        this.mode = mode;
        this.mostWork = mostWork;
    }

    /**
     * The best plan for each bag.
     *
     * @param bags any number of bags; one call for many is faster than many calls
     * @return the plans in the same order
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public List<BagPlan> plan(List<BagOptions> bags) {
        cappedByTime = false;
        if (bags.isEmpty()) {
            return List.of();
        }
        List<SearchBag> searched = bags.stream().map(SearchBag::new).toList();
        List<Start> starts =
                searched.stream().map(bag -> Start.of(bag, mostWork)).toList();
        Cost bound = starts.stream().map(Start::bound).reduce(Cost.NONE, Cost::plus);
        return plans(bags, starts, searchOn(started(searched, starts), bound));
    }

    /** Whether the last plan ended by its cap of time, so that another run may give another plan. */
    public boolean cappedByTime() {
        return cappedByTime;
    }

    /** Ends the running search early, from any thread; its best plan so far is its answer. */
    public void stop() {
        stopped = true;
        Solver<Bench> running = solver;
        if (running != null) {
            running.terminateEarly();
        }
    }

    /**
     * How good any choice is, whether a plan may take it or not.
     *
     * @param bag the bag
     * @param chosen for each club of the bag the index of its option
     */
    public static BagScore score(BagOptions bag, List<Integer> chosen) {
        return PlainScore.cost(bag, chosen).toScore();
    }

    /**
     * Every gap of a choice, in slot order, without clubs that do not carry.
     *
     * @param bag the bag
     * @param chosen for each club of the bag the index of its option
     */
    public static List<GapTerm> gaps(BagOptions bag, List<Integer> chosen) {
        return PlainScore.gaps(bag, chosen);
    }

    private static Bench started(List<SearchBag> bags, List<Start> starts) {
        Bench bench = Bench.of(bags);
        int seat = 0;
        for (Start start : starts) {
            for (int option : start.chosen()) {
                bench.seats().get(seat).startAt(option, start.exact());
                seat++;
            }
        }
        return bench;
    }

    private Bench searchOn(Bench bench, Cost bound) {
        long startNs = System.nanoTime();
        SearchLimits now = stopped ? new SearchLimits(limits.seed(), STOPPED_S) : limits;
        solver = SolverFactory.<Bench>create(SolverSettings.config(now, mode, bound))
                .buildSolver();
        Bench found = solver.solve(bench);
        boolean capReached =
                System.nanoTime() - startNs >= SolverSettings.cap(limits).toNanos();
        cappedByTime = capReached && !found.cost().equals(bound);
        return found;
    }

    private static List<BagPlan> plans(List<BagOptions> bags, List<Start> starts, Bench found) {
        List<BagPlan> plans = new ArrayList<>();
        Cost sum = Cost.NONE;
        int seat = 0;
        for (int place = 0; place < bags.size(); place++) {
            BagOptions bag = bags.get(place);
            List<Integer> chosen = found
                    .seats()
                    .subList(seat, seat + bag.clubs().size())
                    .stream()
                    .map(club -> club.choice().index())
                    .toList();
            seat += chosen.size();
            Cost cost = PlainScore.cost(bag, chosen);
            sum = sum.plus(cost);
            plans.add(plan(chosen, cost, starts.get(place).bound()));
        }
        checkAgreement(found.cost(), sum);
        return List.copyOf(plans);
    }

    private static BagPlan plan(List<Integer> chosen, Cost cost, Cost bound) {
        return new BagPlan(chosen, cost.toScore(), PenaltyRules.points(bound.micropoints()), cost.equals(bound));
    }

    /** A plan whose two scores differ is never given out: one of them, or the bound, would be wrong. */
    private static void checkAgreement(Cost byConstraints, Cost bySum) {
        if (!byConstraints.equals(bySum)) {
            throw new IllegalStateException(
                    "the planner scores the plan " + byConstraints + " and the plain sum gives " + bySum);
        }
    }
}
