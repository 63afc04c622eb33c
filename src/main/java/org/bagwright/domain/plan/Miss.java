package org.bagwright.domain.plan;

import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.units.Checks;

/**
 * How far one club, or one gap, is from what is wanted.
 *
 * @param measure by what it is judged
 * @param index position of its slot in the bag; for a gap that of the longer club
 * @param toleranceRatio the deviation over the tolerance of that measure, 0 or more
 */
public record Miss(Measure measure, int index, double toleranceRatio) {

    public Miss {
        Checks.notNegative(toleranceRatio, "miss");
    }

    static Miss of(Aim aim, int index, double deviationMeasureUnits) {
        return new Miss(aim.measure(), index, aim.tolerances(deviationMeasureUnits));
    }
}
