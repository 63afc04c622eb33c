package org.bagwright.domain.option;

import org.bagwright.domain.units.Checks;

/**
 * By what a club is matched to others of its bag.
 *
 * @param group the name of the group whose clubs should be alike
 * @param valueMeasureUnits its swingweight in points of the scale, or its inertia about the butt end in kg cm2; kept to whole
 *     parts of 2^-32 so that sums are the same to the last digit in any order
 */
public record MatchValue(String group, double valueMeasureUnits) {

    private static final double PARTS = 1L << 32;

    public MatchValue {
        Checks.named(group, "group");
        Checks.finite(valueMeasureUnits, "match value");
        valueMeasureUnits = Math.rint(valueMeasureUnits * PARTS) / PARTS;
    }
}
