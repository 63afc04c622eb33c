package org.bagwright.search.exact;

/** Why an exact search ended. */
public enum ExactEnding {
    /** Nothing can be better. */
    PROVEN,
    /** Its count of steps was used up: the same on every run. */
    STEPS,
    /** The time cap struck: another run may differ. */
    CAP,
    /** It was asked to stop. */
    STOPPED
}
