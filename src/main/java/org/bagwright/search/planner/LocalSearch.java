package org.bagwright.search.planner;

import java.time.Duration;
import java.util.List;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.SolverConfig;

/** The planner's own search for one team, which goes on where the exact search could not prove its plan. */
public final class LocalSearch {
    private final SearchLimits limits;
    private final SearchClock clock;
    private final BagOptimizer optimizer;
    private boolean capped;
    private volatile Solver<PlanningProblem> running;

    /**
     * @param limits the seed, and how hard to try
     * @param clock when to end at the latest
     * @param optimizer re-optimises a whole bag of the team
     */
    public LocalSearch(SearchLimits limits, SearchClock clock, BagOptimizer optimizer) {
        this.limits = limits;
        this.clock = clock;
        this.optimizer = optimizer;
    }

    /** Whether the search ended by the cap of time or by a request to stop. */
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
        ReoptimizeBagPhase phase = new ReoptimizeBagPhase(team, optimizer, this::ended);
        SolverConfig config = new SolverSettings(limits).searching(team.bags().size(), capFromNow(), bound, phase);
        Solver<PlanningProblem> solver =
                SolverFactory.<PlanningProblem>create(config).buildSolver();
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
