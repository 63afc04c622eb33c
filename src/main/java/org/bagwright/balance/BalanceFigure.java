package org.bagwright.balance;

/** The figures from which a club's balance is worked out, each of which a book may leave blank. */
public enum BalanceFigure {
    LENGTH("length"),
    HEAD_MASS("head mass"),
    HEAD_INERTIA("head inertia"),
    SHAFT_MASS("shaft mass"),
    SHAFT_BALANCE("shaft balance"),
    GRIP_MASS("grip mass");

    private final String label;

    BalanceFigure(String label) {
        this.label = label;
    }

    /** The figure as people say it. */
    public String label() {
        return label;
    }
}
