package org.bagwright.geometry;

/** What gauge readings can determine, in the order of the fit's state, each with the greatest error that counts as
 * determined. */
enum Unknown {
    LOFT(0, "design loft", "degrees", 1),
    LIE(1, "design lie", "degrees", 1),
    FACE(2, "design face", "degrees", 1),
    BEND(3, "bend", "degrees", 0.75),
    CLOCK(4, "clock offset of the marks", "hours", 1);

    private final int index;
    private final String label;
    private final String unit;
    private final double mostError;

    Unknown(int index, String label, String unit, double mostError) {
        this.index = index;
        this.label = label;
        this.unit = unit;
        this.mostError = mostError;
    }

    /** Its place in the state of a fit. */
    int index() {
        return index;
    }

    String label() {
        return label;
    }

    String unit() {
        return unit;
    }

    /** Whether a standard error, in this unknown's unit, is small enough to say that the readings determine it. */
    boolean determinedBy(double standardError) {
        return standardError <= mostError;
    }
}
