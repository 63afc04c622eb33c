package org.bagwright.search;

import java.time.Duration;
import java.util.List;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** The planner's own search for the bags of one run, each by itself, so that no bag's plan depends on the others. */
final class LocalSearch {
    private static final double NS_PER_S = 1e9;

    private final long seed;
    private final Effort effort;
    private final long endNs;
    private boolean capped;

    /** Starts the time that all searches of this run share. */
    LocalSearch(SearchLimits limits, Effort effort) {
        seed = limits.seed();
        this.effort = effort;
        endNs = System.nanoTime() + Math.round(Math.min(limits.mostS() * NS_PER_S, Long.MAX_VALUE / 2.0));
    }

    /** Whether any search ended by the cap of time. */
    boolean capped() {
        return capped;
    }

    /** The best choice found from a start on, for each club the index of its option. */
    List<Integer> improved(SearchBag bag, Start start) {
        Duration left = Duration.ofMillis(
                Math.max(1, Duration.ofNanos(endNs - System.nanoTime()).toMillis()));
        Solver<Bench> solver = SolverFactory.<Bench>create(SolverSettings.searching(seed, effort, left, start.bound()))
                .buildSolver();
        Bench found = solver.solve(Bench.of(List.of(bag), List.of(start.chosen())));
        capped |= System.nanoTime() >= endNs && !found.cost().equals(start.bound());
        return found.seats().stream().map(seat -> seat.choice().index()).toList();
    }
}
