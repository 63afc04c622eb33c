package org.bagwright.domain.option;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;

/**
 * The penalty of something by measure: points, and broken musts in thousandths of a tolerance. It cannot change.
 */
public final class Terms {
    private static final int COUNT = Measure.values().length;

    public static final Terms NONE = new Terms(new double[COUNT], new long[COUNT]);

    private final double[] points;
    private final long[] breaks;

    private Terms(double[] points, long[] breaks) {
        this.points = points;
        this.breaks = breaks;
    }

    /** One measure's term. */
    public static Terms of(Measure measure, double points, long breaks) {
        Terms terms = new Terms(new double[COUNT], new long[COUNT]);
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
        Terms terms = new Terms(new double[COUNT], new long[COUNT]);
        deviationsMeasureUnits.forEach((measure, deviation) -> {
            terms.points[measure.ordinal()] = aims.of(measure).penaltyPoints(deviation);
            terms.breaks[measure.ordinal()] = aims.of(measure).hardBreakThousandths(deviation);
        });
        return terms;
    }

    /** What a measure costs, points; 0 where it costs nothing. */
    public double points(Measure measure) {
        return points[measure.ordinal()];
    }

    /** By how much a measure's must is broken, thousandths of a tolerance. */
    public long breaks(Measure measure) {
        return breaks[measure.ordinal()];
    }

    public double totalPoints() {
        double total = 0;
        for (double each : points) {
            total += each;
        }
        return total;
    }

    public long totalBreaks() {
        long total = 0;
        for (long each : breaks) {
            total += each;
        }
        return total;
    }

    /** The measures whose musts are broken, in their order. */
    public List<Measure> broken() {
        return Arrays.stream(Measure.values())
                .filter(measure -> breaks(measure) > 0)
                .toList();
    }

    public Terms plus(Terms other) {
        Terms sum = new Terms(points.clone(), breaks.clone());
        for (int measure = 0; measure < COUNT; measure++) {
            sum.points[measure] += other.points[measure];
            sum.breaks[measure] += other.breaks[measure];
        }
        return sum;
    }

    /** The same broken musts, with the points divided by a number above 0. */
    Terms cheaperBy(double divisor) {
        return new Terms(Arrays.stream(points).map(each -> each / divisor).toArray(), breaks);
    }

    /** The same points, with the broken musts of these measures only. */
    public Terms keepingMusts(Predicate<Measure> kept) {
        Terms terms = new Terms(points, new long[COUNT]);
        broken().stream().filter(kept).forEach(measure -> terms.breaks[measure.ordinal()] = breaks(measure));
        return terms;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Terms terms
                && Arrays.equals(points, terms.points)
                && Arrays.equals(breaks, terms.breaks);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(points) + Arrays.hashCode(breaks);
    }

    /** The measures that cost anything, such as {@code {LIE=0.5, GAP=2.0 (250)}}, broken musts in brackets. */
    @Override
    public String toString() {
        return Arrays.stream(Measure.values())
                .filter(measure -> points(measure) != 0 || breaks(measure) != 0)
                .map(measure ->
                        measure + "=" + points(measure) + (breaks(measure) == 0 ? "" : " (" + breaks(measure) + ")"))
                .toList()
                .toString();
    }
}
