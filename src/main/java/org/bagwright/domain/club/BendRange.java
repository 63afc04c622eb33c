package org.bagwright.domain.club;

import java.util.Set;
import java.util.TreeSet;
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

    /** The bends that may be planned in loft or in lie, degrees in rising order, and today's. */
    public Set<Double> bendsDeg(double todayDeg) {
        Set<Double> bends = new TreeSet<>();
        bends.add(Bend.tidy(todayDeg));
        int steps = (int) Math.floor(limitDeg / stepDeg + 1e-9);
        for (int step = -steps; step <= steps && limitDeg > 0; step++) {
            bends.add(Bend.tidy(step * stepDeg));
        }
        return bends;
    }
}
