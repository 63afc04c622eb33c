package org.bagwright.search.exact;

import java.util.Optional;
import java.util.function.Consumer;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;

/** The cap of time, the request to stop and the reports of progress that all searches of one run share. */
public final class SearchClock {
    private static final double NS_PER_S = 1e9;
    /** About thirty years: a longer cap is none, and would not fit. */
    private static final double NO_CAP_S = 1e9;

    private static final double REPORT_EVERY_S = 0.25;
    private static final Cost WORST = new Cost(Long.MAX_VALUE, 0, 0);

    private final Optional<SearchClock> whole;
    private volatile double mostS;
    private volatile boolean stopped;
    private volatile Runnable onStop = () -> {};
    private SearchProgress progress = (breaks, points, bound, elapsedS) -> {};
    private Consumer<Cost> better = cost -> {};
    private Cost reported = WORST;
    private volatile long startNs;
    private double nextReportS;

    /** @param mostS the most time, seconds */
    public SearchClock(double mostS) {
        this(Optional.empty(), mostS);
    }

    private SearchClock(Optional<SearchClock> whole, double mostS) {
        this.whole = whole;
        start(mostS);
    }

    /** A clock for one search that may take a share of the time that is left; it ends with this one too. */
    public SearchClock part(double shareRatio) {
        return new SearchClock(Optional.of(this), leftS() * shareRatio);
    }

    public void onProgress(SearchProgress other) {
        progress = other;
    }

    /** Starts the time again, with a cap in seconds. */
    public final void start(double capS) {
        mostS = Math.min(capS, NO_CAP_S);
        startNs = System.nanoTime();
        nextReportS = 0;
        reported = WORST;
    }

    /** Leaves at most this time from now on, seconds; from any thread. */
    public void leave(double atMostS) {
        mostS = Math.min(mostS, elapsedS() + atMostS);
    }

    double elapsedS() {
        return (System.nanoTime() - startNs) / NS_PER_S;
    }

    public double leftS() {
        double ownS = stopped ? 0 : Math.max(0, mostS - elapsedS());
        return whole.isPresent() ? Math.min(ownS, whole.get().leftS()) : ownS;
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

    /** What else to do on a request to stop. */
    public void whenStopped(Runnable also) {
        onStop = also;
        if (stopped) {
            also.run();
        }
    }

    /** What to do with every plan that is better than all before it; for measurements. */
    public void onBetter(Consumer<Cost> other) {
        better = other;
    }

    /** Passes on what the best plan of a search costs and what no plan can be below, at most four times a second. */
    public void report(Cost best, Cost bound) {
        if (best.compareTo(reported) < 0) {
            reported = best;
            better.accept(best);
        }
        double nowS = elapsedS();
        if (nowS < nextReportS) {
            return;
        }
        nextReportS = nowS + REPORT_EVERY_S;
        boolean asFew = best.excess() == bound.excess() && best.breaks() == bound.breaks();
        progress.report(
                best.toldBreaks(),
                PenaltyRules.points(best.micropoints()),
                asFew ? PenaltyRules.points(Math.max(0, bound.micropoints())) : 0,
                nowS);
    }
}
