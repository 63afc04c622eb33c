package org.bagwright.domain.book;

import org.bagwright.domain.units.Checks;

/**
 * How much one measure counts: a deviation of one tolerance costs {@code importancePoints}, twice that four times as
 * much.
 *
 * @param measure what is measured
 * @param toleranceMeasureUnits the deviation that costs one importance, above 0: degrees for loft, lie and sits, metres
 *     for carry and gap, swingweight points for swingweight and spread (kg cm2 for spread where clubs are matched by
 *     inertia), items for change
 * @param importancePoints the cost of one tolerance, 0 or more; for change the cost of one changed item
 * @param must whether a deviation beyond the tolerance breaks a hard limit
 */
public record Aim(Measure measure, double toleranceMeasureUnits, double importancePoints, boolean must) {
    public Aim {
        Checks.positive(toleranceMeasureUnits, measure + " tolerance");
        Checks.notNegative(importancePoints, measure + " importance");
    }

    /** The cost in points of a deviation in this measure's unit: {@code importance x (deviation / tolerance)^2}. */
    public double penaltyPoints(double deviationMeasureUnits) {
        double tolerances = deviationMeasureUnits / toleranceMeasureUnits;
        return importancePoints * tolerances * tolerances;
    }

    /** How far the deviation lies beyond the tolerance, in thousandths of it rounded up; 0 inside it or if no must. */
    public long hardBreakThousandths(double deviationMeasureUnits) {
        double beyond = Math.abs(deviationMeasureUnits) / toleranceMeasureUnits - 1;
        return must && beyond > 1e-9 ? (long) Math.ceil(beyond * 1000 - 1e-6) : 0;
    }
}
