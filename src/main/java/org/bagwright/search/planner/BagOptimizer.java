package org.bagwright.search.planner;

import java.util.List;

/** Lays one golfer's whole bag anew while the others keep theirs. */
public interface BagOptimizer {
    /**
     * The best choice for one bag, as far as it can tell; only an improvement is taken.
     *
     * @param bag the place of the bag in its team
     * @param chosen what is chosen now, for each of its slots the index of an open option
     * @param free for each scarce item of its team how many the other bags leave, 0 or more
     * @return for each of its slots the index of an open option
     */
    List<Integer> best(int bag, List<Integer> chosen, List<Integer> free);
}
