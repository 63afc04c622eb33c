package org.bagwright.domain.club;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

    /** The same bend to four decimals and without a negative zero, so that a bend typed by hand equals a computed one. */
    public Bend tidied() {
        return new Bend(tidy(loftDeg), tidy(lieDeg));
    }

    static double tidy(double valueDeg) {
        return BigDecimal.valueOf(valueDeg).setScale(4, RoundingMode.HALF_UP).doubleValue() + 0.0;
    }
}
