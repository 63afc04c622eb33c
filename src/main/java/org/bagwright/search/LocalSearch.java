package org.bagwright.search;

import java.time.Duration;
import java.util.List;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** The planner's own search for the teams of one run, each by itself, so that no team's plan depends on the others. */
final class LocalSearch {
    private static final double NS_PER_S = 1e9;

    /** About thirty years: a longer cap is none, and would not fit. */
    private static final double NO_CAP_S = 1e9;

    private final long seed;
    private final Effort effort;
    private final List<StockPile> stock;
    private final BagRelay relay;
    private final long endNs;
    private boolean capped;
    private volatile boolean stopped;
    private volatile Solver<Bench> running;

    /**
     * Starts the time that all searches of this run share.
     *
     * @param limits when to end
     * @param effort how hard to try
     * @param stock every item of the book's stock
     * @param relay what lays a whole bag anew
     */
    LocalSearch(SearchLimits limits, Effort effort, List<StockPile> stock, BagRelay relay) {
        seed = limits.seed();
        this.effort = effort;
        this.stock = stock;
        this.relay = relay;
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

    /**
     * The best choice found from a start on, for each bag for each slot the index of its option.
     *
     * @param team the bags
     * @param start where to start
     * @param bound no choice costs less
     */
    List<List<Integer>> improved(Team team, List<List<Integer>> start, Cost bound) {
        RelayPhase relays = new RelayPhase(team, stock, relay, this::ended);
        Effort whole = effort.times(team.bags().size());
        Solver<Bench> solver = SolverFactory.<Bench>create(
                        SolverSettings.searching(seed, whole, capFromNow(), bound, relays))
                .buildSolver();
        running = solver;
        Bench found = solver.solve(Bench.of(team.bags(), team.scarce(), start));
        capped |= (stopped || System.nanoTime() >= endNs) && !found.cost().equals(bound);
        return found.chosen();
    }

    /** Also ends the planner where it was stopped in the moment before it started, when it does not listen yet. */
    private boolean ended() {
        if (stopped) {
            running.terminateEarly();
        }
        return stopped || System.nanoTime() >= endNs;
    }

    /** What is left, in whole milliseconds rounded up, so that a search that uses it all ends after the end. */
    private Duration capFromNow() {
        long leftNs = stopped ? 0 : Math.max(0, endNs - System.nanoTime());
        return Duration.ofMillis(Duration.ofNanos(leftNs).toMillis() + 1);
    }
}
