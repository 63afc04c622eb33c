package org.bagwright.search.exact;

import java.util.function.BooleanSupplier;
import org.bagwright.search.score.Cost;

/**
 * When an exact search ends if nothing is proven.
 *
 * @param mostSteps the most steps of work; decides the answer
 * @param capS the most time, seconds; a cap only
 * @param threads how many bags may be worked on at once, 1 or 2; never changes the answer
 * @param stop asked now and then whether to stop
 * @param progress told now and then how far the search is
 */
public record ExactLimits(long mostSteps, double capS, int threads, BooleanSupplier stop, Progress progress) {
    /** Told at most a few times a second. */
    @FunctionalInterface
    public interface Progress {
        /**
         * How far the search is.
         *
         * @param best what the best plan found so far costs
         * @param bound what no plan can be below, as far as proven
         * @param elapsedS time since the start, seconds
         */
        void told(Cost best, Cost bound, double elapsedS);
    }

    public static ExactLimits steps(long mostSteps) {
        return new ExactLimits(mostSteps, Double.MAX_VALUE, 1, () -> false, (best, bound, elapsedS) -> {});
    }

    ExactLimits capped(double otherS) {
        return new ExactLimits(mostSteps, otherS, threads, stop, progress);
    }

    public ExactLimits withThreads(int count) {
        return new ExactLimits(mostSteps, capS, count, stop, progress);
    }
}
