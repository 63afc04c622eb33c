package org.bagwright.domain.book;

import org.bagwright.domain.units.Checks;

/**
 * How much one measure counts: a deviation of one tolerance costs {@code importancePoints}, twice that four times as
 * much.
 *
 * @param measure what is measured
 * @param toleranceMeasureUnits the deviation that costs one importance, above 0, in the unit of {@link
 *     Measure#unit}, metres for distances
 * @param importancePoints the cost of one tolerance, 0 or more; for change the cost of one changed item
 * @param must whether a deviation beyond the tolerance breaks a hard limit
 * @param onWhatIsLikely whether the variance of what is expected costs as its deviation does
 */
public record Aim(
        Measure measure, double toleranceMeasureUnits, double importancePoints, boolean must, boolean onWhatIsLikely) {
    /** An aim by the best guess alone. */
    public Aim(Measure measure, double toleranceMeasureUnits, double importancePoints, boolean must) {
        this(measure, toleranceMeasureUnits, importancePoints, must, false);
    }

    public Aim {
        Checks.positive(toleranceMeasureUnits, measure + " tolerance");
        Checks.notNegative(importancePoints, measure + " importance");
    }

    /** The same aim as a must or as a wish. */
    public Aim withMust(boolean other) {
        return new Aim(measure, toleranceMeasureUnits, importancePoints, other, onWhatIsLikely);
    }

    /** The same aim with its cost divided by a number above 0. */
    public Aim cheaperBy(double divisor) {
        return new Aim(measure, toleranceMeasureUnits, importancePoints / divisor, must, onWhatIsLikely);
    }

    /** The same aim by what is likely or by the best guess. */
    public Aim onWhatIsLikely(boolean other) {
        return new Aim(measure, toleranceMeasureUnits, importancePoints, must, other);
    }

    /** Whether a deviation can break a limit: it is a must, and one that can be missed. */
    public boolean isHard() {
        return must && measure.canBeMust();
    }

    /**
     * The cost in points of a deviation in this measure's unit: {@code importance x (deviation / tolerance)^2}; for items
     * that change, what one costs times their number.
     */
    public double penaltyPoints(double deviationMeasureUnits) {
        return measure.scope() == Measure.Scope.ITEMS
                ? deviationMeasureUnits * squaredPoints(1)
                : squaredPoints(deviationMeasureUnits);
    }

    /**
     * The expected cost in points of what is uncertain: {@code importance x (deviation^2 + variance) / tolerance^2}; by the
     * best guess the variance costs nothing.
     */
    public double penaltyPoints(double deviationMeasureUnits, double varianceMeasureUnits2) {
        return penaltyPoints(deviationMeasureUnits) + doubtPoints(varianceMeasureUnits2);
    }

    /** What a variance costs, points; nothing by the best guess. */
    public double doubtPoints(double varianceMeasureUnits2) {
        return onWhatIsLikely
                ? importancePoints * varianceMeasureUnits2 / (toleranceMeasureUnits * toleranceMeasureUnits)
                : 0;
    }

    private double squaredPoints(double deviationMeasureUnits) {
        double tolerances = deviationMeasureUnits / toleranceMeasureUnits;
        return importancePoints * tolerances * tolerances;
    }

    /** The size of a deviation in tolerances. */
    public double tolerances(double deviationMeasureUnits) {
        return Math.abs(deviationMeasureUnits) / toleranceMeasureUnits;
    }

    /** How far a deviation goes beyond the tolerance, in thousandths of it rounded up; 0 inside it or if it is no must. */
    public long hardBreakThousandths(double deviationMeasureUnits) {
        return isHard() ? thousandths(tolerances(deviationMeasureUnits) - 1) : 0;
    }

    /** How far a deviation goes beyond a limit of this measure, must or not, in thousandths of the tolerance rounded up. */
    public long limitBreakThousandths(double beyondMeasureUnits) {
        return thousandths(tolerances(beyondMeasureUnits));
    }

    /** A number of tolerances in thousandths rounded up; 0 for what is only noise of the arithmetic. */
    static long thousandths(double tolerances) {
        return tolerances > 1e-9 ? (long) Math.ceil(tolerances * 1000 - 1e-6) : 0;
    }
}
