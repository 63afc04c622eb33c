package org.bagwright.domain.book;

/** The published ball models a book may choose. */
public enum BallModelKind {
    BEARMAN_HARVEY("Bearman-Harvey"),
    SMITS_SMITH("Smits-Smith");

    private final String label;

    BallModelKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** The model to compare this one with. */
    public BallModelKind other() {
        return this == BEARMAN_HARVEY ? SMITS_SMITH : BEARMAN_HARVEY;
    }
}
