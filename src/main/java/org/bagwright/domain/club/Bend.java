package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * How far a hosel is bent from its stated loft and lie.
 *
 * @param loftDeg degrees, positive weaker
 * @param lieDeg degrees, positive more upright
 */
public record Bend(double loftDeg, double lieDeg) {
    public static final Bend NONE = new Bend(0, 0);

    public Bend {
        Checks.within(Limit.HOSEL_BEND_DEG, loftDeg, "loft bend");
        Checks.within(Limit.HOSEL_BEND_DEG, lieDeg, "lie bend");
    }
}
