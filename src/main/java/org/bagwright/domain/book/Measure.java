package org.bagwright.domain.book;

import java.util.Locale;

/** What a plan is judged by. */
public enum Measure {
    LOFT,
    LIE,
    SITS,
    CARRY,
    GAP,
    SWINGWEIGHT,
    SPREAD,
    CHANGE;

    /** The measure as it is written in a book. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the measure's tolerance is a distance down the range. */
    public boolean isDistance() {
        return this == CARRY || this == GAP;
    }
}
