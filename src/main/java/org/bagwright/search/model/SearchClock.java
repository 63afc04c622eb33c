package org.bagwright.search.model;

import org.bagwright.search.exact.ExactLimits;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;

/** The cap of time, the wish to stop and the reports of progress that all searches of one run share. */
public final class SearchClock {
    private static final double NS_PER_S = 1e9;
    /** About thirty years: a longer cap is none, and would not fit. */
    private static final double NO_CAP_S = 1e9;

    private static final int THREADS = 2;

    private final double mostS;
    private volatile boolean stopped;
    private volatile Runnable onStop = () -> {};
    private SearchProgress progress = (breaks, points, bound, elapsedS) -> {};
    private long startNs;

    /** @param mostS the most time, seconds */
    public SearchClock(double mostS) {
        this.mostS = Math.min(mostS, NO_CAP_S);
        startNs = System.nanoTime();
    }

    public void onProgress(SearchProgress other) {
        progress = other;
    }

    /** Starts the time anew. */
    public void start() {
        startNs = System.nanoTime();
    }

    double elapsedS() {
        return (System.nanoTime() - startNs) / NS_PER_S;
    }

    public double leftS() {
        return stopped ? 0 : Math.max(0, mostS - elapsedS());
    }

    public boolean isOver() {
        return leftS() <= 0;
    }

    public boolean isStopped() {
        return stopped;
    }

    /** Ends what runs and what is still to come, from any thread. */
    public void stop() {
        stopped = true;
        onStop.run();
    }

    /** What else to do when asked to stop. */
    public void whenStopped(Runnable also) {
        onStop = also;
        if (stopped) {
            also.run();
        }
    }

    /**
     * The limits of an exact search that starts now.
     *
     * @param steps the most steps of work
     * @param besides what its plans cost beside what it sees
     */
    public ExactLimits limits(long steps, Cost besides) {
        return new ExactLimits(steps, leftS(), THREADS, () -> stopped, (best, bound, elapsedS) -> {
            boolean asFew = best.excess() == bound.excess() && best.breaks() == bound.breaks();
            progress.told(
                    besides.plus(best).toldBreaks(),
                    PenaltyRules.points(best.micropoints()),
                    asFew ? PenaltyRules.points(Math.max(0, bound.micropoints())) : 0,
                    elapsedS());
        });
    }
}
