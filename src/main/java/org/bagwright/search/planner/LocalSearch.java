package org.bagwright.search.planner;

import java.time.Duration;
import java.util.List;
import org.bagwright.search.model.Effort;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchClock;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** The planner's own search for one team, which goes on where the exact search could not prove its plan. */
public final class LocalSearch {
    private final long seed;
    private final Effort effort;
    private final SearchClock clock;
    private final BagOptimizer relay;
    private boolean capped;
    private volatile Solver<PlanningProblem> running;

    /**
     * @param seed the seed of every random choice
     * @param effort how hard to try
     * @param clock when to end at the latest
     * @param relay what lays a whole bag of the team anew
     */
    public LocalSearch(long seed, Effort effort, SearchClock clock, BagOptimizer relay) {
        this.seed = seed;
        this.effort = effort;
        this.clock = clock;
        this.relay = relay;
    }

    /** Whether the search ended by the cap of time or because it was asked to. */
    public boolean capped() {
        return capped;
    }

    /**
     * The best choice found from a start on, for each bag for each slot the index of its option.
     *
     * @param team the bags
     * @param start where to start
     * @param bound no choice costs less
     */
    public List<List<Integer>> improved(Team team, List<List<Integer>> start, Cost bound) {
        ReoptimizeBagPhase relays = new ReoptimizeBagPhase(team, relay, this::ended);
        Effort whole = effort.times(team.bags().size());
        Solver<PlanningProblem> solver = SolverFactory.<PlanningProblem>create(
                        SolverSettings.searching(seed, whole, capFromNow(), bound, relays))
                .buildSolver();
        running = solver;
        clock.whenStopped(solver::terminateEarly);
        PlanningProblem found = solver.solve(PlanningProblem.of(team.bags(), team.scarce(), start));
        clock.whenStopped(() -> {});
        capped = clock.isOver() && !found.cost().equals(bound);
        return found.chosen();
    }

    /** Also ends the planner where it was stopped in the moment before it started, when it does not listen yet. */
    private boolean ended() {
        if (clock.isStopped()) {
            running.terminateEarly();
        }
        return clock.isOver();
    }

    /** What is left, in whole milliseconds rounded up, so that a search that uses it all ends after the end. */
    private Duration capFromNow() {
        return Duration.ofMillis((long) (clock.leftS() * 1000) + 1);
    }
}
