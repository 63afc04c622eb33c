package org.bagwright.domain.club;

import java.util.Locale;

/** The kinds of club a book knows. */
public enum ClubKind {
    DRIVER,
    WOOD,
    HYBRID,
    IRON,
    WEDGE,
    PUTTER;

    /** The kind as it is written in a book. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the hosel of this kind may be bent on a bench, where its maker allows it. */
    public boolean bendable() {
        return this == IRON || this == WEDGE;
    }

    /** Whether the club takes part in carries and gaps. */
    public boolean carries() {
        return this != PUTTER;
    }
}
