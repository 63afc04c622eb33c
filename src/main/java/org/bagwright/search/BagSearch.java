package org.bagwright.search;

import java.util.List;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagPlan;
import org.bagwright.domain.BagScore;
import org.bagwright.domain.GapTerm;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
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
    private final SolutionManager<Bench, HardSoftLongScore> scorer;
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
     * The best plan for each bag.
     *
     * @param bags any number of bags; the plan of one does not depend on the others, except by the cap of time
     * @return the plans in the same order
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public List<BagPlan> plan(List<BagOptions> bags) {
        LocalSearch search = new LocalSearch(limits, effort);
        running = search;
        if (stopped) {
            search.stop();
        }
        List<BagPlan> plans = bags.stream().map(bag -> plan(bag, search)).toList();
        cappedByTime = search.capped();
        return plans;
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
     * How good any choice is, whether a plan may take it or not.
     *
     * @param bag the bag
     * @param chosen for each club of the bag the index of its option
     */
    public static BagScore score(BagOptions bag, List<Integer> chosen) {
        return PlainScore.score(bag, chosen);
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

    private BagPlan plan(BagOptions options, LocalSearch search) {
        SearchBag bag = new SearchBag(options);
        Start start = Start.of(bag, effort.pairs());
        List<Integer> chosen = start.exact() ? start.chosen() : search.improved(bag, start);
        Cost cost = costByConstraints(bag, chosen);
        checkAgreement(cost, PlainScore.cost(options, chosen));
        BagScore score = PlainScore.score(options, chosen);
        boolean proven = cost.equals(start.bound());
        double boundPoints = proven
                ? score.penaltyPoints()
                : PenaltyRules.points(start.bound().micropoints());
        return new BagPlan(chosen, score, boundPoints, proven);
    }

    private Cost costByConstraints(SearchBag bag, List<Integer> chosen) {
        Bench bench = Bench.of(List.of(bag), List.of(chosen));
        scorer.update(bench);
        return bench.cost();
    }

    /** A plan on whose score the constraints and the plain sum differ is never given out: one of them is wrong. */
    private static void checkAgreement(Cost byConstraints, Cost bySum) {
        if (!byConstraints.equals(bySum)) {
            throw new IllegalStateException(
                    "the constraints score the plan " + byConstraints + " and the plain sum gives " + bySum);
        }
    }
}
