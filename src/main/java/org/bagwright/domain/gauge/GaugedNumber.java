package org.bagwright.domain.gauge;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * A number that gauge readings give, or one held at its stated value because they do not determine it.
 *
 * @param valueMeasureUnits the number, degrees or hours
 * @param standardErrorMeasureUnits its standard error in the same unit, from the repeatability of the gauge; empty when
 *     it is held
 * @param statedMeasureUnits what the book states, in the same unit
 */
public record GaugedNumber(
        double valueMeasureUnits, OptionalDouble standardErrorMeasureUnits, double statedMeasureUnits) {
    public GaugedNumber {
        Checks.finite(valueMeasureUnits, "gauged number");
        standardErrorMeasureUnits.ifPresent(value -> Checks.notNegative(value, "standard error"));
    }

    /** A number that the readings determine. */
    public static GaugedNumber found(double value, double standardError, double stated) {
        return new GaugedNumber(value, OptionalDouble.of(standardError), stated);
    }

    /** A number that is held. */
    public static GaugedNumber held(double value, double stated) {
        return new GaugedNumber(value, OptionalDouble.empty(), stated);
    }

    /** Whether it is the stated number, kept because the readings do not determine it. */
    public boolean held() {
        return standardErrorMeasureUnits.isEmpty();
    }
}
