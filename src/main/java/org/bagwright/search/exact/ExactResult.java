package org.bagwright.search.exact;

import java.util.List;
import org.bagwright.search.score.Cost;

/**
 * What an exact search found.
 *
 * @param chosen for each bag and slot the index of the option chosen
 * @param cost what that costs
 * @param bound what no choice can be below; equal to the cost if proven
 * @param leastMicropoints the least penalty of any choice as little beyond the limits, whatever it breaks, is no less;
 *     millionths of a point
 * @param ending why the search ended
 * @param steps how many steps of work it took
 */
public record ExactResult(
        List<List<Integer>> chosen, Cost cost, Cost bound, long leastMicropoints, ExactEnding ending, long steps) {
    public ExactResult {
        chosen = chosen.stream().map(List::copyOf).toList();
    }

    public boolean proven() {
        return bound.equals(cost);
    }
}
