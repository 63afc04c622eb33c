package org.bagwright.domain.club;

/** The kinds of limits that a golfer or a club can have, each by the heading of its column. */
public enum LimitKind {
    /** The most open look, degrees closed: a look must be that or more. */
    MOST_OPEN("Most open", Quantity.SITS, true),
    MOST_CLOSED("Most closed", Quantity.SITS, false),
    GAP_LEAST("Gap least", Quantity.GAP, true),
    GAP_MOST("Gap most", Quantity.GAP, false),
    CARRY_LEAST("Carry least", Quantity.CARRY, true),
    CARRY_MOST("Carry most", Quantity.CARRY, false),
    LANDING_LEAST("Landing least", Quantity.LANDING, true);

    /** What a limit bounds. */
    public enum Quantity {
        /** The look at address as the club sits, degrees closed. */
        SITS("sits"),
        /** The carry of a club less that of the next one that flies, metres. */
        GAP("gap"),
        /** The carry, metres. */
        CARRY("carry"),
        /** The angle of descent, degrees. */
        LANDING("landing");

        private final String label;

        Quantity(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    private final String label;
    private final Quantity quantity;
    private final boolean least;

    LimitKind(String label, Quantity quantity, boolean least) {
        this.label = label;
        this.quantity = quantity;
        this.least = least;
    }

    /** The heading of its column. */
    public String label() {
        return label;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** Whether a value must be as much or more; the others must be as much or less. */
    public boolean isLeast() {
        return least;
    }
}
