package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * One ring of a sleeve at one setting: the shaft leaves the bore axis by {@code bendDeg} in the direction {@code clockH}.
 *
 * @param clockH hour on a clock drawn across the bore, 0 to 12: 12 leans the shaft more upright, 3 toward the target, 6
 *     flatter, 9 away from the target, for either hand
 * @param bendDeg the angle between shaft and bore, degrees
 */
public record Ring(double clockH, double bendDeg) {
    public static final Ring STRAIGHT = new Ring(12, 0);

    public Ring {
        Checks.within(Limit.CLOCK_H, clockH, "clock");
        Checks.within(Limit.BEND_DEG, bendDeg, "bend");
    }
}
