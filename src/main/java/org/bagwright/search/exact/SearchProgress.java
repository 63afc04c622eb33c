package org.bagwright.search.exact;

/** Receives the progress of a search, at most a few times a second. */
@FunctionalInterface
public interface SearchProgress {

    /**
     * How far the search of the present bags is.
     *
     * @param bestBreaks hard breaks of the best plan so far, thousandths
     * @param bestPoints its penalty, points
     * @param boundPoints no plan with as few hard breaks costs less, points
     * @param elapsedS since the start of the search, seconds
     */
    void report(long bestBreaks, double bestPoints, double boundPoints, double elapsedS);
}
