package org.bagwright.search.score;

import java.util.List;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.WantedRange;

/**
 * What each single term costs. Every term is rounded to whole micropoints once, here, so that the constraint streams,
 * the plain sum and the chain agree to the last digit.
 */
public final class PenaltyRules {
    /** A broken limit that is not measured in tolerances, thousandths. */
    public static final long BREAK_THOUSANDTHS = 1000;

    /** The clubs that the rules of the game allow in a bag. */
    public static final int MOST_CLUBS = BagOptions.MOST_CLUBS;

    /** Within the search one term can cost no more, so that sums over many bags stay exact; see {@link PenaltyScale}. */
    static final double MOST_POINTS = 1e7;

    private static final double MICROPOINTS_PER_POINT = 1e6;
    private static final long MOST_MICROPOINTS = (long) (MOST_POINTS * MICROPOINTS_PER_POINT);
    private static final long MOST_BREAKS = 10_000_000_000_000L;
    private static final double MM_PER_M = 1000;

    /** A hair over a whole millimetre is noise of the arithmetic, not another millimetre. */
    private static final double NOISE_MM = 1e-6;

    private PenaltyRules() {}

    public static long micropoints(double points) {
        if (Double.isNaN(points)) {
            throw new IllegalArgumentException("a penalty is not a number");
        }
        return Math.min(MOST_MICROPOINTS, Math.round(points * MICROPOINTS_PER_POINT));
    }

    public static double points(long micropoints) {
        return micropoints / MICROPOINTS_PER_POINT;
    }

    public static long breaks(long thousandths) {
        return Math.min(MOST_BREAKS, thousandths);
    }

    /** What a gap costs of which not more is known than its mean and its variance. */
    public static long gapMicropoints(Aim gapAim, double gapM, double wishM, double varianceM2) {
        return micropoints(gapAim.penaltyPoints(gapM - wishM, varianceM2));
    }

    public static long gapMustBreaks(Aim gapAim, double gapM, double wishM) {
        return breaks(gapAim.hardBreakThousandths(gapM - wishM));
    }

    /** What a gap breaks of its limits. */
    public static long gapLimitBreaks(Aim gapAim, double gapM, WantedRange limitsM) {
        return breaks(gapAim.limitBreakThousandths(limitsM.deviationMeasureUnits(gapM)));
    }

    /** What it breaks when a club carries no further than the next: 1000 and one for each millimetre missing. */
    public static long carryBreaks(double gapM) {
        return gapM > 0 ? 0 : BREAK_THOUSANDTHS + (long) Math.ceil(-gapM * MM_PER_M - NOISE_MM);
    }

    public static int clubsBeyond(int clubs) {
        return Math.max(0, clubs - MOST_CLUBS);
    }

    public static int changesBeyond(int changes, int mostChanges) {
        return Math.max(0, changes - mostChanges);
    }

    /** The mean of the clubs of one group, the same to the last digit in any order of them. */
    public static double mean(List<Double> values) {
        return values.stream().sorted().mapToDouble(value -> value).reduce(0, Double::sum) / values.size();
    }
}
