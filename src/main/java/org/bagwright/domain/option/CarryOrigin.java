package org.bagwright.domain.option;

/** Where the carry of an option comes from. */
public enum CarryOrigin {
    /** The golfer's shots with this club in this set-up. */
    OWN_HERE("own shots"),
    /** His shots with this club in another set-up. */
    OWN_ELSEWHERE("own shots at another set-up"),
    /** His shots with other clubs. */
    LENT("shots with other clubs"),
    /** No shots at all: assumed from what his row says. */
    ASSUMED("assumed");

    private final String words;

    CarryOrigin(String words) {
        this.words = words;
    }

    /** What a person reads. */
    public String words() {
        return words;
    }
}
