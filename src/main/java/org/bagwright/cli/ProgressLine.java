package org.bagwright.cli;

import java.io.PrintWriter;
import org.bagwright.domain.Numbers;

/** One line on a terminal that is written over while a search runs; nothing where no person watches. */
final class ProgressLine {
    private static final double QUIET_S = 1;
    private static final int WIDTH_CHARS = 78;

    private final PrintWriter err;
    private final boolean watched;
    private boolean shown;

    /** @param watched whether a person watches the terminal */
    ProgressLine(PrintWriter err, boolean watched) {
        this.err = err;
        this.watched = watched;
    }

    /** Whether a person may watch: on Java 17 there is a console only where input and output both are a terminal. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isWatched() {
        return System.console() != null;
    }

    /**
     * How far the search is.
     *
     * @param bestBreaks hard breaks of the best plan so far, thousandths
     * @param bestPoints its penalty, points
     * @param boundPoints no plan with as few hard breaks costs less, points
     * @param elapsedS since the start, seconds
     */
    void told(long bestBreaks, double bestPoints, double boundPoints, double elapsedS) {
        if (!watched || elapsedS < QUIET_S) {
            return;
        }
        String text = "Searching: best " + Numbers.fixed(bestPoints, 2) + " points"
                + (bestBreaks > 0 ? " and " + Numbers.fixed(bestBreaks / 1000.0, 2) + " of musts broken" : "")
                + ", no plan below " + Numbers.fixed(boundPoints, 2) + ", " + Numbers.fixed(elapsedS, 0)
                + " s (Ctrl-C keeps the best so far)";
        err.print("\r" + padded(text));
        err.flush();
        shown = true;
    }

    private static String padded(String text) {
        String cut = text.length() > WIDTH_CHARS ? text.substring(0, WIDTH_CHARS) : text;
        return cut + " ".repeat(WIDTH_CHARS - cut.length());
    }

    /** Takes the line away. */
    void clear() {
        if (shown) {
            err.print("\r" + " ".repeat(WIDTH_CHARS) + "\r");
            err.flush();
            shown = false;
        }
    }
}
