package org.bagwright.cli.text;

import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.LongSupplier;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.domain.text.Numbers;
import org.bagwright.planning.Planning;

/**
 * One line on a terminal that is written over while the program works for more than a second: what it is at, and how far.
 * Nothing where no person watches.
 */
public final class ProgressLine implements WorkProgress, AutoCloseable {
    private static final double QUIET_S = 1;
    private static final long TICK_MS = 250;
    private static final int WIDTH_CHARS = 78;

    private final PrintWriter err;
    private final LongSupplier clockNs;
    private final String hint;
    private final Timer ticks = new Timer("progress", true);
    private String text = "";
    private String detail = "";
    private long startNs;
    private boolean shown;

    /**
     * A line that shows itself whenever {@link #tick} is called.
     *
     * @param hint what to add while it searches
     */
    public ProgressLine(PrintWriter err, LongSupplier clockNs, String hint) {
        this.err = err;
        this.clockNs = clockNs;
        this.hint = hint;
    }

    /** A line for whoever watches this process's errors, where Ctrl-C ends the search and its best plan is kept. */
    public static ProgressLine start(PrintWriter err) {
        return start(err, " (Ctrl-C keeps the best so far)");
    }

    public static ProgressLine start(PrintWriter err, String hint) {
        ProgressLine line = new ProgressLine(err, System::nanoTime, hint);
        if (StandardOutput.ERRORS.isTerminal()) {
            line.tickByItself();
        }
        return line;
    }

    private void tickByItself() {
        ticks.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        tick();
                    }
                },
                TICK_MS,
                TICK_MS);
    }

    /** Shows all that a planning does. */
    public ProgressLine follow(Planning planning) {
        planning.onWork(this);
        planning.onProgress(this::report);
        return this;
    }

    @Override
    public synchronized void at(Stage stage, int done, int all) {
        if (text.isEmpty()) {
            startNs = clockNs.getAsLong();
        }
        text = words(stage) + (all > 1 ? ", golfer " + (done + 1) + " of " + all : "");
        detail = stage == Stage.SEARCH ? hint : "";
    }

    private static String words(Stage stage) {
        return switch (stage) {
            case READING -> "Reading the book";
            case OPTIONS -> "Computing every option";
            case SEARCH -> "Searching";
            case REASONS -> "Working out steps and other plans";
            case WRITING -> "Writing the result";
        };
    }

    /**
     * How far the search is.
     *
     * @param bestBreaks hard breaks of the best plan so far, thousandths
     * @param bestPoints its penalty, points
     * @param boundPoints no plan with as few hard breaks costs less, points
     * @param elapsedS since the start of the search, seconds
     */
    synchronized void report(long bestBreaks, double bestPoints, double boundPoints, double elapsedS) {
        if (text.equals(words(Stage.SEARCH))) {
            detail = ": best " + Numbers.fixed(bestPoints, 2) + " points"
                    + (bestBreaks > 0 ? " and " + Numbers.fixed(bestBreaks / 1000.0, 2) + " of musts broken" : "")
                    + ", none below " + Numbers.fixed(boundPoints, 2) + hint;
        }
    }

    /** Shows what the program is at, if it has been at work for a while. */
    synchronized void tick() {
        double elapsedS = (clockNs.getAsLong() - startNs) / 1e9;
        if (text.isEmpty() || elapsedS < QUIET_S) {
            return;
        }
        err.print("\r" + padded(Numbers.fixed(elapsedS, 0) + " s  " + text + detail));
        err.flush();
        shown = true;
    }

    private static String padded(String line) {
        String cut = line.length() > WIDTH_CHARS ? line.substring(0, WIDTH_CHARS) : line;
        return cut + " ".repeat(WIDTH_CHARS - cut.length());
    }

    /** Takes the line away until the next work begins. */
    public synchronized void clear() {
        text = "";
        if (shown) {
            err.print("\r" + " ".repeat(WIDTH_CHARS) + "\r");
            err.flush();
            shown = false;
        }
    }

    @Override
    public void close() {
        ticks.cancel();
        clear();
    }
}
