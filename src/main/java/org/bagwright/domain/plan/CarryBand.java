package org.bagwright.domain.plan;

import org.bagwright.domain.units.Checks;

/**
 * Where single shots with one club land: eight in ten carry between these two.
 *
 * @param slot the club's place in the bag
 * @param club its name
 * @param lowM the carry that nine in ten exceed, metres
 * @param highM the carry that one in ten exceed, metres
 * @param spreadM the standard deviation of its shots that went into it, metres
 * @param spreadAssumed whether that is assumed because there are too few shots
 */
public record CarryBand(int slot, String club, double lowM, double highM, double spreadM, boolean spreadAssumed) {
    public CarryBand {
        Checks.named(club, "club");
        Checks.that(lowM <= highM, "a band needs its low end first");
        Checks.notNegative(spreadM, "spread");
    }
}
