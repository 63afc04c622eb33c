package org.bagwright.search.exact;

import org.bagwright.domain.book.Aim;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/**
 * Least costs of a club for differing from the mean of its group, given only the box in which the mean lies, so that
 * their sum over a group is never above what spread really costs. Two kinds: the least over the interval of each club
 * by itself, or (x - c)^2 - h^2 with the centre c and half width h, which is as good since {@code sum (x - mean)^2 = sum
 * (x - c)^2 - n (mean - c)^2} and much better in narrow boxes: its error falls with the square of the width.
 */
public final class SpreadBound {
    /** Beyond this the cap on a single term could bite, and the centre would prove nothing. */
    private static final double MOST_POINTS = 1e6;

    private static final double MICROPOINTS_PER_POINT = 1e6;

    private final Aim aim;
    private final MeanIntervals box;
    private final boolean[] centred;

    public SpreadBound(Aim aim, MeanIntervals box, boolean[] centred) {
        this.aim = aim;
        this.box = box;
        this.centred = centred;
    }

    /** Whether the centre may be used for numbers this far apart. */
    static boolean centreHolds(Aim aim, double apart) {
        return aim.penaltyPoints(apart) < MOST_POINTS;
    }

    long breaks(int group, double number) {
        return aim.must() ? PenaltyRules.breaks(aim.hardBreakThousandths(box.outside(group, number))) : 0;
    }

    long weight(int group, double number) {
        if (!centred[group]) {
            return LexCost.weight(PenaltyRules.micropoints(aim.penaltyPoints(box.outside(group, number))), 0);
        }
        double points = aim.penaltyPoints(number - box.centre(group)) - aim.penaltyPoints(box.half(group));
        return LexCost.weight((long) Math.floor(points * MICROPOINTS_PER_POINT - 1), 0);
    }

    /** What the club costs if the mean is the centre of the box: summed over a group, at least the true cost. */
    long centreWeight(int group, double number) {
        return LexCost.weight(PenaltyRules.micropoints(aim.penaltyPoints(number - box.centre(group))), 0);
    }

    /**
     * How much more one choice of members can cost than another, beyond what it costs more at the centre, whatever
     * members both have in common besides.
     *
     * @param members how many clubs the group has at most
     * @param sumApart the difference of the sums of both choices
     */
    long slackWeight(int group, int members, double sumApart) {
        double half = box.half(group);
        double byWidth = members * aim.penaltyPoints(half);
        double bySum = 2 * aim.penaltyPoints(1) * half * Math.abs(sumApart);
        return LexCost.weight((long) Math.ceil(Math.min(byWidth, bySum) * MICROPOINTS_PER_POINT) + 2L * members + 1, 0);
    }

    /** How far the mean may leave the box before a club with this number breaks a must; below 0 if it may within. */
    double room(int group, double number) {
        double farthest = Math.abs(number - box.centre(group)) + box.half(group);
        return aim.must() ? aim.toleranceMeasureUnits() - farthest : Double.POSITIVE_INFINITY;
    }

    /** How far the breaks of a group can be told too few because of the width of the box, thousandths. */
    double breakLooseness(int group, int members) {
        double tolerances = box.half(group) / aim.toleranceMeasureUnits();
        return aim.must() && members > 1 ? members * tolerances * PenaltyRules.BREAK_THOUSANDTHS : 0;
    }

    /** How far the bound of a group can lie below the truth at most, points, and for musts tolerances besides. */
    double looseness(int group, int members) {
        double half = box.half(group);
        double byMust = aim.must() ? half / aim.toleranceMeasureUnits() : 0;
        return members < 2 ? 0 : members * (aim.penaltyPoints(half) + byMust);
    }
}
