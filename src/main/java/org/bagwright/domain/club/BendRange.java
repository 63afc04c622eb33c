package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * The bends that may be planned: every multiple of the step from minus to plus the limit, in loft and in lie.
 *
 * @param limitDeg the most, degrees either way; 0 means no bending
 * @param stepDeg the smallest bend that is worth naming, degrees
 */
public record BendRange(double limitDeg, double stepDeg) {
    public static final BendRange NONE = new BendRange(0, 0.5);

    public BendRange {
        Checks.that(limitDeg >= 0 && limitDeg <= Limit.HOSEL_BEND_DEG.mostMeasureUnits(), "bend limit");
        Checks.positive(stepDeg, "bend step");
    }
}
