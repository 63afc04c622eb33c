package org.bagwright.search.exact;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/**
 * Least costs of a club for differing from the mean of its group, given only the interval of that mean, so that their
 * sum over a group is never above what spread really costs. Two kinds: the least over the interval of each club by
 * itself, or (x - c)^2 - h^2 with the centre c and half width h, which is as good since {@code sum (x - mean)^2 = sum
 * (x - c)^2 - n (mean - c)^2} and much better in narrow intervals: its error falls with the square of the width.
 */
final class SpreadBound {
    /** Above this the cap on a single term could bind, and the centre would prove nothing. */
    private static final double MOST_POINTS = 1e6;

    private static final double MICROPOINTS_PER_POINT = 1e6;
    private static final double POINTS_PER_WEIGHT = 1e-6 / LexCost.WEIGHT_PER_MICROPOINT;
    private static final double NO_LOOSENESS = 1e-9;

    /** With less than this share of the distance to the incumbent in the width of the intervals, a split is no help. */
    private static final double LOOSE_SHARE = 0.25;

    /** Whether the centre gives a bound for all numbers of the bag. */
    final boolean centreHolds;

    private final Aim aim;
    private final MeanIntervals intervals;
    private final boolean[] centred;

    private SpreadBound(Aim aim, MeanIntervals intervals, boolean[] centred, boolean centreHolds) {
        this.aim = aim;
        this.intervals = intervals;
        this.centred = centred;
        this.centreHolds = centreHolds;
    }

    /** For all means that the clubs of a model can have, each club by itself. */
    static SpreadBound over(BagModel model) {
        Aim aim = model.bag.spreadAim();
        double[] numbers = model.bag.slots().stream()
                .flatMap(List::stream)
                .flatMap(option -> option.match().stream())
                .mapToDouble(ExactOption.Match::valueMeasureUnits)
                .sorted()
                .toArray();
        double apart = numbers.length == 0 ? 0 : numbers[numbers.length - 1] - numbers[0];
        boolean centreHolds = aim.penaltyPoints(apart) < MOST_POINTS;
        return new SpreadBound(aim, MeanIntervals.all(model), new boolean[model.groups.count()], centreHolds);
    }

    MeanIntervals intervals() {
        return intervals;
    }

    SpreadBound in(MeanIntervals other) {
        return new SpreadBound(aim, other, centred, centreHolds);
    }

    /** In the part of the intervals that the means of a model can reach, or nothing. */
    Optional<SpreadBound> within(BagModel model) {
        return intervals.within(model).map(this::in);
    }

    /** At the means that a choice has. */
    SpreadBound at(BagModel model, List<ExactOption> chosen) {
        return in(intervals.means(model, chosen));
    }

    /** The two halves across one group. */
    List<SpreadBound> halves(int group) {
        return intervals.halves(group).stream().map(this::in).toList();
    }

    /** With the kind of bound for each group that gives more for a choice; this one if nothing changes. */
    SpreadBound tighter(MatchGroups groups, List<ExactOption> chosen) {
        boolean[] kinds = centred.clone();
        for (int group = 0; group < kinds.length && centreHolds; group++) {
            boolean[] other = centred.clone();
            other[group] = !other[group];
            SpreadBound trial = new SpreadBound(aim, intervals, other, centreHolds);
            kinds[group] ^= trial.weight(groups, chosen, group) > weight(groups, chosen, group);
        }
        return Arrays.equals(kinds, centred) ? this : new SpreadBound(aim, intervals, kinds, centreHolds);
    }

    private long weight(MatchGroups groups, List<ExactOption> chosen, int group) {
        return chosen.stream()
                .filter(option -> groups.matched(option) == group)
                .mapToLong(option -> weight(group, option.matchMeasureUnits()))
                .sum();
    }

    /** By the centre for all groups if that holds, for none if not. */
    SpreadBound byCentre() {
        boolean[] kinds = new boolean[centred.length];
        Arrays.fill(kinds, centreHolds);
        return new SpreadBound(aim, intervals, kinds, centreHolds);
    }

    long breaks(int group, double number) {
        return aim.must() ? PenaltyRules.breaks(aim.hardBreakThousandths(intervals.outside(group, number))) : 0;
    }

    long weight(int group, double number) {
        if (!centred[group]) {
            return LexCost.weight(PenaltyRules.micropoints(aim.penaltyPoints(intervals.outside(group, number))), 0);
        }
        double points = aim.penaltyPoints(number - intervals.centre(group)) - aim.penaltyPoints(intervals.half(group));
        return LexCost.weight((long) Math.floor(points * MICROPOINTS_PER_POINT - 1), 0);
    }

    /** What the club costs if the mean is the centre of its interval: summed over a group, at least the true cost. */
    long centreWeight(int group, double number) {
        return LexCost.weight(PenaltyRules.micropoints(aim.penaltyPoints(number - intervals.centre(group))), 0);
    }

    /**
     * How much more one choice of members can cost than another, beyond what it costs more at the centre, whatever
     * members both have in common.
     *
     * @param members how many clubs the group has at most
     * @param sumApart the difference of the sums of both choices
     */
    long slackWeight(int group, int members, double sumApart) {
        double half = intervals.half(group);
        double byWidth = members * aim.penaltyPoints(half);
        double bySum = 2 * aim.penaltyPoints(1) * half * Math.abs(sumApart);
        return LexCost.weight((long) Math.ceil(Math.min(byWidth, bySum) * MICROPOINTS_PER_POINT) + 2L * members + 1, 0);
    }

    /** How far the mean may leave its interval before a club with this number breaks a must; below 0 if it may within. */
    double margin(int group, double number) {
        double farthest = Math.abs(number - intervals.centre(group)) + intervals.half(group);
        return aim.must() ? aim.toleranceMeasureUnits() - farthest : Double.POSITIVE_INFINITY;
    }

    /** Whether the width of the intervals accounts for much of a distance between a bound and the incumbent. */
    boolean isLoose(MatchGroups groups, LexCost apart) {
        if (apart.breaks() > 0) {
            return sum(group -> breakLooseness(group, groups)) > LOOSE_SHARE * apart.breaks();
        }
        double apartPoints = Math.max(0, apart.weight()) * POINTS_PER_WEIGHT;
        return sum(group -> looseness(group, groups)) > LOOSE_SHARE * apartPoints;
    }

    private double sum(IntToDoubleFunction looseness) {
        return IntStream.range(0, centred.length).mapToDouble(looseness).sum();
    }

    /** How far the width of the interval can take the breaks of a group below the truth, thousandths. */
    private double breakLooseness(int group, MatchGroups groups) {
        double tolerances = intervals.half(group) / aim.toleranceMeasureUnits();
        int members = groups.members(group);
        return aim.must() && members > 1 ? members * tolerances * PenaltyRules.BREAK_THOUSANDTHS : 0;
    }

    /** How far the width of the interval can take the bound of a group below the truth, points (tolerances for musts). */
    private double looseness(int group, MatchGroups groups) {
        double half = intervals.half(group);
        double byMust = aim.must() ? half / aim.toleranceMeasureUnits() : 0;
        int members = groups.members(group);
        return members < 2 ? 0 : members * (aim.penaltyPoints(half) + byMust);
    }

    /** The group whose interval makes the bound loosest, or {@link ExactOption#NO_GROUP} if none does. */
    int loosest(MatchGroups groups) {
        int loosest = ExactOption.NO_GROUP;
        double most = NO_LOOSENESS;
        for (int group = 0; group < centred.length; group++) {
            if (looseness(group, groups) > most) {
                loosest = group;
                most = looseness(group, groups);
            }
        }
        return loosest;
    }
}
