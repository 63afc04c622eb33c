package org.bagwright.search.model;

/** Told at most a few times a second how far a search is. */
@FunctionalInterface
public interface SearchProgress {

    /**
     * How far the search of the bags at hand is.
     *
     * @param bestBreaks hard breaks of the best plan so far, thousandths
     * @param bestPoints its penalty, points
     * @param boundPoints no plan with as few hard breaks costs less, points
     * @param elapsedS since the start of the search, seconds
     */
    void told(long bestBreaks, double bestPoints, double boundPoints, double elapsedS);
}
