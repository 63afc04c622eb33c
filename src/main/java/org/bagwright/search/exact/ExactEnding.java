package org.bagwright.search.exact;

/** Why an exact search ended. */
public enum ExactEnding {
    /** Nothing can be better. */
    PROVEN,
    /** Its count of steps was used up: the same on every run. */
    STEPS,
    /** The time was used up: another run may differ. */
    CAP,
    /** A request to stop came. */
    STOPPED;

    /** Whether it ended at a moment that differs from run to run. */
    public boolean byClock() {
        return this == CAP || this == STOPPED;
    }
}
