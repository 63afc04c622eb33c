package org.bagwright.search.exact;

import java.util.Arrays;

/** Tells of two ways to fill the first slots whether their clubs break the musts of spread alike, whatever completes them. */
final class SpreadMustDominance {
    /** For each group how far its mean may leave the box before any club of it breaks a must. */
    private final double[] rooms;

    SpreadMustDominance(PricedCosts terms) {
        rooms = new double[terms.model.groups.length];
        Arrays.fill(rooms, Double.POSITIVE_INFINITY);
        for (SlotLayer layer : terms.model.layers) {
            for (ExactOption option : layer.options) {
                int group = terms.matched(option);
                if (group >= 0) {
                    rooms[group] = Math.min(rooms[group], terms.spread.room(group, option.matchMeasureUnits()));
                }
            }
        }
    }

    /**
     * Whether no must can be broken in a group, or else its clubs that might break one have the same numbers and the same
     * mean. Both must have as many clubs in every group, and the mean of the second must end in the box.
     */
    boolean breakAlike(Label first, Label second) {
        for (int group = 0; group < rooms.length; group++) {
            double apart = Math.abs(first.sums[group] - second.sums[group]);
            boolean inRoom = apart <= rooms[group] * first.members[group];
            if (!inRoom && !first.breaksLike(second, group)) {
                return false;
            }
        }
        return true;
    }
}
