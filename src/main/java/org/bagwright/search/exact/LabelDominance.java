package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The dominance rule of labels: drops one where another one is no worse and leaves no less of every limit.
 *
 * <p>Labels with different matched numbers are compared only if the centre of the intervals gives a bound. Where clubs
 * of a group might break a must, labels are compared only if those clubs have the same numbers and the mean is the same:
 * then both break the same musts, whatever completes them.
 */
final class LabelDominance {
    private final BagModel model;
    private final SpreadBound spread;

    /** For each group how far its mean may leave its interval before any club of it breaks a must. */
    private final double[] margins;

    LabelDominance(PricedCosts terms) {
        model = terms.model;
        spread = terms.spread;
        margins = new double[model.groups.count()];
        Arrays.fill(margins, Double.POSITIVE_INFINITY);
        for (SlotLayer layer : model.layers) {
            for (ExactOption option : layer.options) {
                int group = model.groups.matched(option);
                if (group >= 0) {
                    margins[group] = Math.min(margins[group], spread.margin(group, option.matchMeasureUnits()));
                }
            }
        }
    }

    /** The labels with one front that no other one dominates, those with the least cost at the centre first. */
    List<Label> undominated(List<Label> labels, Meter meter) {
        labels.sort(Label::compareByCentre);
        List<Label> kept = new ArrayList<>();
        for (Label label : labels) {
            boolean dominated = false;
            for (int at = 0; at < kept.size() && !dominated; at++) {
                dominated = dominates(kept.get(at), label);
            }
            meter.spend(kept.size());
            if (!dominated) {
                kept.add(label);
            }
        }
        return kept;
    }

    /** Whether whatever completes the second completes the first at no more cost; the first costs no more so far. */
    private boolean dominates(Label first, Label second) {
        if (!first.takesNoMoreThan(second) || (model.stockMatters && !first.takesTheSame(second))) {
            return false;
        }
        if (first.sameMembers(second)) {
            return true;
        }
        if (!spread.centreHolds || !Arrays.equals(first.members, second.members) || !breakTheSame(first, second)) {
            return false;
        }
        return first.centreBreaks < second.centreBreaks
                || first.centreWeight + slackWeight(first, second) <= second.centreWeight;
    }

    /**
     * Whether in each group no must can be broken, or the clubs that might break one have the same numbers and the same
     * mean. Both must have as many clubs in every group, and the mean of the second must end in its interval.
     */
    private boolean breakTheSame(Label first, Label second) {
        for (int group = 0; group < margins.length; group++) {
            double apart = Math.abs(first.sums[group] - second.sums[group]);
            boolean inMargin = apart <= margins[group] * first.members[group];
            if (!inMargin && !first.breaksTheSame(second, group)) {
                return false;
            }
        }
        return true;
    }

    private long slackWeight(Label first, Label second) {
        long slack = 0;
        for (int group = 0; group < first.members.length; group++) {
            if (first.prints[group] != second.prints[group]) {
                double apart = first.sums[group] - second.sums[group];
                slack += spread.slackWeight(group, model.groups.members(group), apart);
            }
        }
        return slack;
    }
}
