package org.bagwright.search.team;

import java.util.List;
import java.util.Optional;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;

/**
 * The best choice for whole bags and teams with its proof. Compares costs in this order: pieces beyond the limits
 * (stock, most changes, fourteen clubs), breaks, penalty; of equal ones it takes the one with fewer changes, and of
 * those the one that the same counted steps find on every run, earlier options first where they are met together.
 */
public final class ExactSearch {
    private final SearchClock clock;
    private final int threads;

    /**
     * @param clock ends every search and receives its progress
     * @param threads how many bags it works on at once; never changes the answer
     */
    public ExactSearch(SearchClock clock, int threads) {
        this.clock = clock;
        this.threads = threads;
    }

    /** The best choice for all bags of a problem, without a plan to start from. */
    public ExactResult best(ExactProblem problem, long mostSteps) {
        return best(problem, Optional.empty(), mostSteps);
    }

    /**
     * The best choice for all bags of a problem, with the stock shared between them.
     *
     * @param start for each bag the index of an option for each slot: where the search starts, if that keeps the limits
     * @param mostSteps the most steps of work; decides the answer if nothing is proven
     */
    public ExactResult best(ExactProblem problem, Optional<List<List<Integer>>> start, long mostSteps) {
        Meter meter = new Meter(mostSteps, clock);
        MinimalViolations.Result least = MinimalViolations.of(problem);
        long excess = problem.closed() + least.violations();
        TeamSearch best = null;
        LexCost bound = LexCost.OUT_OF_REACH;
        long leastMicropoints = Long.MAX_VALUE;
        ExactEnding ending = ExactEnding.PROVEN;
        for (MinimalViolations.RaisedLimits limits : least.limits()) {
            TeamSearch team = new TeamSearch(
                    problem,
                    start.map(chosen -> limits.startingFrom(problem, problem.options(chosen)))
                            .orElse(limits),
                    meter,
                    threads,
                    (value, reached) -> clock.report(Cost.of(excess, value), Cost.of(excess, reached)));
            team.run();
            ending = team.ending() == ExactEnding.PROVEN ? ending : team.ending();
            bound = LexCost.min(bound, team.bound());
            leastMicropoints = Math.min(leastMicropoints, team.leastMicropoints());
            best = best == null || team.cost(excess).compareTo(best.cost(excess)) < 0 ? team : best;
        }
        Cost cost = best.cost(excess);
        Cost proven = least.certain() ? Cost.of(excess, bound) : new Cost(problem.closed() + least.fewest(), 0, 0);
        return new ExactResult(
                best.chosen(),
                cost,
                proven,
                least.certain() ? leastMicropoints : 0,
                proven.equals(cost) ? ExactEnding.PROVEN : ending,
                meter.steps());
    }
}
