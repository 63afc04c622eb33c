package org.bagwright.search.planner;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.Cost;
import org.bagwright.search.team.ExactSearch;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/**
 * Plans one team from start to end by one solver of the planner: construction, local search and exact search, until the
 * choice is proven, its rounds are over, or its time is.
 */
public final class TeamSolver {
    private final SearchLimits limits;
    private final SearchClock clock;
    private final ExactSearch exact;
    private volatile Solver<PlanningProblem> running;

    /**
     * @param limits the seed, and how much work to do
     * @param clock when to end at the latest
     * @param exact the exact search, with the same clock
     */
    public TeamSolver(SearchLimits limits, SearchClock clock, ExactSearch exact) {
        this.limits = limits;
        this.clock = clock;
        this.exact = exact;
    }

    /**
     * What was found for one team.
     *
     * @param chosen for each bag for each slot the index of its option
     * @param cost what that costs by the planner's constraints
     * @param bound what no choice costs less than
     * @param leastMicropoints the least penalty of any choice with as little beyond the limits, whatever it breaks
     * @param capped whether it ended by the cap of time or by a request to stop
     */
    public record Found(List<List<Integer>> chosen, Cost cost, Cost bound, long leastMicropoints, boolean capped) {}

    /** The best choice that the solver finds, and what it shows about all others. */
    public Found best(Team team) {
        ExactPhase phase = new ExactPhase(
                (start, round) -> exact.best(team.exact(), Optional.of(start), limits.steps(round)),
                clock::isOver,
                () -> running.terminateEarly());
        long options = team.bags().stream().mapToLong(SearchBag::optionCount).sum();
        Solver<PlanningProblem> solver = SolverFactory.<PlanningProblem>create(
                        new SolverSettings(limits).searching(options, capFromNow(), phase))
                .buildSolver();
        running = solver;
        solver.addEventListener(better -> report(better.getNewBestSolution(), phase));
        clock.whenStopped(solver::terminateEarly);
        PlanningProblem found = solver.solve(team.problem());
        clock.whenStopped(() -> {});
        return found(team, found, phase);
    }

    private void report(PlanningProblem better, ExactPhase phase) {
        if (better.isComplete()) {
            clock.report(better.cost(), phase.bound().cost());
        }
    }

    /**
     * Where the time was over before the exact search could look at the team, it gives the bound that needs no search; and
     * where it was over before every slot had an option, a choice that keeps the limits.
     */
    private Found found(Team team, PlanningProblem found, ExactPhase phase) {
        if (!found.isComplete()) {
            ExactResult any = exact.best(team.exact(), 0);
            return new Found(any.chosen(), any.cost(), any.bound(), any.leastMicropoints(), true);
        }
        if (phase.last().isEmpty() && limits.steps(0) > 0) {
            ExactResult any = exact.best(team.exact(), Optional.of(found.chosen()), 0);
            return new Found(found.chosen(), found.cost(), any.bound(), any.leastMicropoints(), clock.isOver());
        }
        List<List<Integer>> chosen = phase.last()
                .filter(last -> last.cost().equals(found.cost()))
                .map(ExactResult::chosen)
                .orElse(found.chosen());
        Cost bound = phase.bound().cost();
        boolean capped = clock.isOver() && !found.cost().equals(bound);
        return new Found(team.first(chosen), found.cost(), bound, phase.bound().leastMicropoints(), capped);
    }

    /** What is left, in whole milliseconds rounded up, so that a search that uses it all ends after the end. */
    private Duration capFromNow() {
        return Duration.ofMillis((long) (clock.leftS() * 1000) + 1);
    }
}
