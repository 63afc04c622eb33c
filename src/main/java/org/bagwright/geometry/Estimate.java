package org.bagwright.geometry;

import java.util.OptionalDouble;

/**
 * One number that a fit found, or held because the readings cannot tell it.
 *
 * @param valueMeasureUnits the number, degrees or hours
 * @param standardErrorMeasureUnits its standard error in the same unit, from the gauge's stated repeatability; empty
 *     when the number is held at its stated value
 */
public record Estimate(double valueMeasureUnits, OptionalDouble standardErrorMeasureUnits) {
    private static final double NORMAL_95 = 1.959963984540054;

    static Estimate found(double value, double standardError) {
        return new Estimate(value, OptionalDouble.of(standardError));
    }

    static Estimate held(double value) {
        return new Estimate(value, OptionalDouble.empty());
    }

    /** Whether the number is the stated one, kept because the readings cannot tell it. */
    public boolean held() {
        return standardErrorMeasureUnits.isEmpty();
    }

    /** Half the width of the interval that holds the truth in 95 of 100 fits; empty when held. */
    public OptionalDouble half95MeasureUnits() {
        return held() ? OptionalDouble.empty() : OptionalDouble.of(NORMAL_95 * standardErrorMeasureUnits.getAsDouble());
    }
}
