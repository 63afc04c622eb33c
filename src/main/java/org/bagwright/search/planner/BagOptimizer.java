package org.bagwright.search.planner;

import java.util.List;

/** Re-optimises one golfer's whole bag while the others keep theirs. */
public interface BagOptimizer {
    /**
     * The best choice for one bag, as far as it can find; only an improvement is taken.
     *
     * @param bag the place of the bag in its team
     * @param free for each scarce item of its team how many the other bags leave, 0 or more
     * @return for each of its slots the index of an open option
     */
    List<Integer> best(int bag, List<Integer> free);
}
