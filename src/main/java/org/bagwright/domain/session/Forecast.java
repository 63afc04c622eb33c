package org.bagwright.domain.session;

import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.LengthUnit;

/**
 * What was predicted of the carry of some shots before they were hit, and how they came out.
 *
 * @param predictedM the carry that the golfer's earlier shots predict, m
 * @param dayM how much longer the golfer's other clubs make it on that day, m
 * @param offM the mean of the shots less both, m; shots far from the others count less
 * @param sdM how far that is off by chance, a standard deviation, m
 */
public record Forecast(double predictedM, double dayM, double offM, double sdM) {
    /** Half of the range that holds a normal number in 95 of 100 cases, in standard deviations. */
    public static final double HALF_95_SDS = 1.959963984540054;

    /** How words end that tell of more than chance. */
    public static final String NO_CHANCE = "more than chance";

    private static final String AS_PREDICTED = "as predicted";

    public Forecast {
        Checks.positive(predictedM, "predicted carry");
        Checks.finite(dayM, "day");
        Checks.finite(offM, "deviation");
        Checks.positive(sdM, "spread");
    }

    /** What was expected on the day, m. */
    public double expectedM() {
        return predictedM + dayM;
    }

    /** Half of the range in which the mean of these shots is in 19 of 20 cases, m. */
    public double rangeM() {
        return HALF_95_SDS * sdM;
    }

    /** Whether the shots came out as predicted, at a level of 5 %. */
    public boolean cameOut() {
        return Math.abs(offM) <= rangeM();
    }

    /** How the shots came out in words, such as {@code 5 yd longer than predicted: more than chance}. */
    public String inWords(LengthUnit unit) {
        if (cameOut()) {
            return AS_PREDICTED;
        }
        String off = Numbers.fixed(Math.abs(unit.fromM(offM)), 0) + " " + unit.label();
        return off + (offM > 0 ? " longer" : " shorter") + " than predicted: " + NO_CHANCE;
    }
}
