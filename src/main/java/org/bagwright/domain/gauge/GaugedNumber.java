package org.bagwright.domain.gauge;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * A number that gauge readings told, or one held at its stated value because they cannot tell it.
 *
 * @param valueMeasureUnits the number, degrees or hours
 * @param standardErrorMeasureUnits its standard error in the same unit; empty when it is held
 * @param statedMeasureUnits what the book states, in the same unit
 */
public record GaugedNumber(
        double valueMeasureUnits, OptionalDouble standardErrorMeasureUnits, double statedMeasureUnits) {
    public GaugedNumber {
        Checks.finite(valueMeasureUnits, "gauged number");
        standardErrorMeasureUnits.ifPresent(value -> Checks.notNegative(value, "standard error"));
    }

    /** Whether the readings cannot tell it. */
    public boolean held() {
        return standardErrorMeasureUnits.isEmpty();
    }
}
