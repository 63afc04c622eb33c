package org.bagwright.search.score;

import java.util.List;
import org.bagwright.domain.book.Aim;

/**
 * What a choice costs, in whole numbers so that sums are the same in any order; less is better, excess first, then breaks.
 *
 * @param excess what no plan trades against anything else: pieces beyond the stock, changes beyond the most, clubs beyond
 *     the most that the rules allow, options that are not open; each one a piece
 * @param breaks hard breaks, thousandths
 * @param micropoints the penalty, millionths of a point
 */
public record Cost(long excess, long breaks, long micropoints) implements Comparable<Cost> {
    public static final Cost NONE = new Cost(0, 0, 0);

    /** An excess with what the exact search counts below it. */
    public static Cost of(long excess, LexCost value) {
        return new Cost(excess, value.breaks(), value.micropoints());
    }

    /** What the deviations of all clubs of one group from their mean cost. */
    public static Cost spread(Aim aim, List<Double> values) {
        double mean = PenaltyRules.mean(values);
        Cost cost = NONE;
        for (double value : values) {
            long breaks = PenaltyRules.breaks(aim.hardBreakThousandths(value - mean));
            cost = cost.plus(new Cost(0, breaks, PenaltyRules.micropoints(aim.penaltyPoints(value - mean))));
        }
        return cost;
    }

    public Cost plus(Cost other) {
        return new Cost(excess + other.excess, breaks + other.breaks, micropoints + other.micropoints);
    }

    /** The hard breaks as they are told, each piece of excess as one whole limit. */
    public long toldBreaks() {
        return excess * PenaltyRules.BREAK_THOUSANDTHS + breaks;
    }

    @Override
    public int compareTo(Cost other) {
        if (excess != other.excess) {
            return Long.compare(excess, other.excess);
        }
        return breaks != other.breaks
                ? Long.compare(breaks, other.breaks)
                : Long.compare(micropoints, other.micropoints);
    }
}
