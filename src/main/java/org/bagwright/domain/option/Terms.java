package org.bagwright.domain.option;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;

/**
 * The penalty of something: points by measure, how many of all these are for doubt, and in thousandths of a tolerance the
 * broken musts by measure and the broken limits by kind. It cannot change.
 */
public final class Terms {
    private static final int COUNT = Measure.values().length;

    private static final int LIMITS = LimitKind.values().length;

    public static final Terms NONE = free();

    private final double[] points;
    private final double doubtPoints;
    private final long[] breaks;
    private final long[] limits;

    private Terms(double[] points, double doubtPoints, long[] breaks, long[] limits) {
        this.points = points;
        this.doubtPoints = doubtPoints;
        this.breaks = breaks;
        this.limits = limits;
    }

    private static Terms free() {
        return new Terms(new double[COUNT], 0, new long[COUNT], new long[LIMITS]);
    }

    /** One measure's term. */
    public static Terms of(Measure measure, double points, long breaks) {
        Terms terms = free();
        terms.points[measure.ordinal()] = points;
        terms.breaks[measure.ordinal()] = breaks;
        return terms;
    }

    /** What one deviation costs, in the unit of the aim's measure. */
    public static Terms of(Aim aim, double deviationMeasureUnits) {
        return of(
                aim.measure(),
                aim.penaltyPoints(deviationMeasureUnits),
                aim.hardBreakThousandths(deviationMeasureUnits));
    }

    /** What deviations cost, each in the unit of its measure. */
    public static Terms of(Aims aims, Map<Measure, Double> deviationsMeasureUnits) {
        Terms terms = free();
        deviationsMeasureUnits.forEach((measure, deviation) -> {
            terms.points[measure.ordinal()] = aims.of(measure).penaltyPoints(deviation);
            terms.breaks[measure.ordinal()] = aims.of(measure).hardBreakThousandths(deviation);
        });
        return terms;
    }

    /** What the variance of a measure's value costs, in the square of the unit of its aim's measure. */
    public static Terms ofDoubt(Aim aim, double varianceMeasureUnits2) {
        double doubtPoints = aim.doubtPoints(varianceMeasureUnits2);
        double[] points = new double[COUNT];
        points[aim.measure().ordinal()] = doubtPoints;
        return new Terms(points, doubtPoints, new long[COUNT], new long[LIMITS]);
    }

    /** The same terms with so much of a limit broken, thousandths of a tolerance. */
    public Terms withLimit(LimitKind kind, long breakThousandths) {
        Terms terms = new Terms(points, doubtPoints, breaks, limits.clone());
        terms.limits[kind.ordinal()] = breakThousandths;
        return terms;
    }

    /** What a measure costs, points; 0 where it costs nothing. */
    public double points(Measure measure) {
        return points[measure.ordinal()];
    }

    /** What of the points of all measures together is there only because a carry is not known exactly. */
    public double doubtPoints() {
        return doubtPoints;
    }

    /** By how much a measure's must is broken, thousandths of a tolerance. */
    public long breaks(Measure measure) {
        return breaks[measure.ordinal()];
    }

    /** By how much a limit is broken, thousandths of a tolerance. */
    public long limitBreaks(LimitKind kind) {
        return limits[kind.ordinal()];
    }

    public double totalPoints() {
        double total = 0;
        for (double each : points) {
            total += each;
        }
        return total;
    }

    /** Musts and limits together. */
    public long totalBreaks() {
        return mustBreaks() + limitBreaks();
    }

    /** All musts together. */
    public long mustBreaks() {
        return Arrays.stream(breaks).sum();
    }

    /** All limits together. */
    public long limitBreaks() {
        return Arrays.stream(limits).sum();
    }

    /** The kinds of limits that are broken, in their order. */
    public List<LimitKind> brokenLimits() {
        return Arrays.stream(LimitKind.values())
                .filter(kind -> limitBreaks(kind) > 0)
                .toList();
    }

    /** The measures whose musts are broken, in their order. */
    public List<Measure> broken() {
        return Arrays.stream(Measure.values())
                .filter(measure -> breaks(measure) > 0)
                .toList();
    }

    public Terms plus(Terms other) {
        Terms sum = new Terms(points.clone(), doubtPoints + other.doubtPoints, breaks.clone(), limits.clone());
        for (int measure = 0; measure < COUNT; measure++) {
            sum.points[measure] += other.points[measure];
            sum.breaks[measure] += other.breaks[measure];
        }
        for (int kind = 0; kind < LIMITS; kind++) {
            sum.limits[kind] += other.limits[kind];
        }
        return sum;
    }

    /** The same broken musts and limits, with the points divided by a number above 0. */
    Terms cheaperBy(double divisor) {
        double[] cheaper = Arrays.stream(points).map(each -> each / divisor).toArray();
        return new Terms(cheaper, doubtPoints / divisor, breaks, limits);
    }

    /** The same terms without their doubt, which is all of one measure. */
    public Terms withoutDoubt(Measure measure) {
        double[] misses = points.clone();
        misses[measure.ordinal()] -= doubtPoints;
        return new Terms(misses, 0, breaks, limits);
    }

    /** The same points, with the broken limits of these kinds only. */
    public Terms keepingLimits(Predicate<LimitKind> kept) {
        Terms terms = new Terms(points, doubtPoints, breaks, new long[LIMITS]);
        brokenLimits().stream().filter(kept).forEach(kind -> terms.limits[kind.ordinal()] = limitBreaks(kind));
        return terms;
    }

    /** The same points and broken limits, with the broken musts of these measures only. */
    public Terms keepingMusts(Predicate<Measure> kept) {
        Terms terms = new Terms(points, doubtPoints, new long[COUNT], limits);
        broken().stream().filter(kept).forEach(measure -> terms.breaks[measure.ordinal()] = breaks(measure));
        return terms;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Terms terms
                && Arrays.equals(points, terms.points)
                && doubtPoints == terms.doubtPoints
                && Arrays.equals(breaks, terms.breaks)
                && Arrays.equals(limits, terms.limits);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(points) + Arrays.hashCode(breaks)) + Arrays.hashCode(limits);
    }

    /** The measures that cost anything, such as {@code [LIE=0.5, GAP=2.0 (250)]}, broken musts in brackets; then limits. */
    @Override
    public String toString() {
        String broken = limitBreaks() == 0 ? "" : brokenLimits() + " " + limitBreaks();
        return Arrays.stream(Measure.values())
                        .filter(measure -> points(measure) != 0 || breaks(measure) != 0)
                        .map(measure -> measure + "=" + points(measure)
                                + (breaks(measure) == 0 ? "" : " (" + breaks(measure) + ")"))
                        .toList()
                + broken;
    }
}
