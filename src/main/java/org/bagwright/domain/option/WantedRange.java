package org.bagwright.domain.option;

import org.bagwright.domain.units.Checks;

/**
 * The values of a measure that cost nothing, or that keep its limits.
 *
 * @param leastMeasureUnits the least of them, in the unit of the measure
 * @param mostMeasureUnits the greatest of them
 */
public record WantedRange(double leastMeasureUnits, double mostMeasureUnits) {

    public WantedRange {
        Checks.that(leastMeasureUnits <= mostMeasureUnits, "a range needs its least value first");
    }

    /** All values. */
    public static final WantedRange ANY = new WantedRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** One value and no other. */
    public static WantedRange exactly(double valueMeasureUnits) {
        return new WantedRange(valueMeasureUnits, valueMeasureUnits);
    }

    /** How far a value is outside: positive above the range, negative below it, 0 inside. */
    public double deviationMeasureUnits(double valueMeasureUnits) {
        return valueMeasureUnits - Math.max(leastMeasureUnits, Math.min(mostMeasureUnits, valueMeasureUnits));
    }
}
