package org.bagwright.domain.gauge;

import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;

/**
 * How well a gauge repeats a reading. What is left of the readings of all clubs after their fits shows it, once the readings
 * have enough numbers to spare. Its variance is then the mean of the usual one and that of the residuals,
 * {@code (n0 s0^2 + sum of squared residuals) / (n0 + spare numbers)}.
 *
 * @param scatterDeg one standard deviation, degrees
 * @param origin where it comes from
 * @param spareNumbers how many numbers the readings had beyond those they determine; 0 where none were looked at
 */
public record Repeatability(double scatterDeg, Origin origin, int spareNumbers) {
    /** Repeatability of a bench gauge, degrees: common practice, no source. */
    public static final double USUAL_DEG = 0.25;

    /** That of a gauge of which nothing is known. */
    public static final Repeatability USUAL = new Repeatability(USUAL_DEG, Origin.ASSUMED, 0);

    /** How many spare numbers the usual value is worth: most gauges repeat to between half and twice it; assumed. */
    static final int USUAL_WORTH = 6;

    /** With fewer spare numbers the usual value is kept; assumed. */
    static final int FEWEST_SPARE = 8;

    /** Above this share of the usual value a gauge or its use is in doubt; assumed. */
    private static final double MOST_RATIO = 1.6;

    /** Where a repeatability comes from. */
    public enum Origin {
        ASSUMED,
        GIVEN,
        ESTIMATED
    }

    public Repeatability {
        Checks.positive(scatterDeg, "repeatability");
    }

    /** That of a fitter's own gauge where he gives it, else the usual one. */
    public static Repeatability of(OptionalDouble givenDeg) {
        return givenDeg.isPresent() ? new Repeatability(givenDeg.getAsDouble(), Origin.GIVEN, 0) : USUAL;
    }

    /** What the fits of one gauge's readings show; one that the fitter gives stays. */
    public Repeatability shownBy(List<GaugedClub> fits) {
        int spare = fits.stream().mapToInt(GaugedClub::spareNumbers).sum();
        if (origin == Origin.GIVEN) {
            return this;
        }
        if (spare < FEWEST_SPARE) {
            return new Repeatability(USUAL_DEG, Origin.ASSUMED, spare);
        }
        double leftDeg2 =
                fits.stream().mapToDouble(GaugedClub::squaredResidualsDeg2).sum();
        double varianceDeg2 = (USUAL_WORTH * USUAL_DEG * USUAL_DEG + leftDeg2) / (USUAL_WORTH + spare);
        return new Repeatability(Math.sqrt(varianceDeg2), Origin.ESTIMATED, spare);
    }

    /** Whether the readings scatter much more than those of a usual gauge. */
    public boolean coarse() {
        return origin == Origin.ESTIMATED && scatterDeg > MOST_RATIO * USUAL_DEG;
    }

    /** In words, such as {@code 0.25 degrees (assumed)}. */
    public String inWords() {
        return switch (origin) {
            case ASSUMED -> Numbers.trimmed(scatterDeg) + " degrees (assumed: the readings are too few to show it)";
            case GIVEN -> Numbers.trimmed(scatterDeg) + " degrees (as given)";
            case ESTIMATED -> Numbers.fixed(scatterDeg, 2) + " degrees (estimated from these readings)";
        };
    }
}
