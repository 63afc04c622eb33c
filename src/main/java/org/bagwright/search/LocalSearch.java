package org.bagwright.search;

import java.time.Duration;
import java.util.List;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** The planner's own search for the bags of one run, each by itself, so that no bag's plan depends on the others. */
final class LocalSearch {
    private static final double NS_PER_S = 1e9;

    /** About thirty years: a longer cap is none, and would not fit. */
    private static final double NO_CAP_S = 1e9;

    private final long seed;
    private final Effort effort;
    private final long endNs;
    private boolean capped;
    private volatile boolean stopped;
    private volatile Solver<Bench> running;

    /** Starts the time that all searches of this run share. */
    LocalSearch(SearchLimits limits, Effort effort) {
        seed = limits.seed();
        this.effort = effort;
        endNs = System.nanoTime() + Math.round(Math.min(limits.mostS(), NO_CAP_S) * NS_PER_S);
    }

    /** Whether any search ended by the cap of time. */
    boolean capped() {
        return capped;
    }

    /** Ends the search that runs and those still to come, from any thread. */
    void stop() {
        stopped = true;
        Solver<Bench> solver = running;
        if (solver != null) {
            solver.terminateEarly();
        }
    }

    /** The best choice found from a start on, for each club the index of its option. */
    List<Integer> improved(SearchBag bag, Start start) {
        Duration left = capFromNow();
        Solver<Bench> solver = SolverFactory.<Bench>create(SolverSettings.searching(seed, effort, left, start.bound()))
                .buildSolver();
        running = solver;
        Bench found = solver.solve(Bench.of(List.of(bag), List.of(), List.of(start.chosen())));
        capped |= (stopped || System.nanoTime() >= endNs) && !found.cost().equals(start.bound());
        return found.seats().stream().map(seat -> seat.choice().index()).toList();
    }

    /** What is left, in whole milliseconds rounded up, so that a search that uses it all ends after the end. */
    private Duration capFromNow() {
        long leftNs = stopped ? 0 : Math.max(0, endNs - System.nanoTime());
        return Duration.ofMillis(Duration.ofNanos(leftNs).toMillis() + 1);
    }
}
