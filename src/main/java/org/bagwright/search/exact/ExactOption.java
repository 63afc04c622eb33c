package org.bagwright.search.exact;

import java.util.List;

/**
 * One way to fill a slot, as the exact search sees it.
 *
 * @param index its place among the options of its slot
 * @param breaks the musts it breaks by itself, thousandths
 * @param micropoints its own penalty, millionths of a point
 * @param changes items that differ from today
 * @param carried whether a club is in the slot; an empty slot is an option that is not carried
 * @param flies whether its carry counts for gaps; never for a putter or an empty slot
 * @param carryM carry, metres; unused unless it flies
 * @param wishM the gap wished from it to the next club that flies, metres
 * @param takes the pieces it takes of each stock item
 * @param group the clubs it is matched with, 0 or more; -1 for none
 * @param matchMeasureUnits the number to be matched: swingweight points or kg cm2; rounded to parts of 2^-32 so that sums
 *     are exact in any order
 */
public record ExactOption(
        int index,
        long breaks,
        long micropoints,
        int changes,
        boolean carried,
        boolean flies,
        double carryM,
        double wishM,
        List<Integer> takes,
        int group,
        double matchMeasureUnits) {
    public static final int NO_GROUP = -1;

    private static final double MATCH_STEPS = 1L << 32;
    private static final double MOST_MATCH = 1 << 16;

    public ExactOption {
        takes = List.copyOf(takes);
        require(breaks >= 0 && micropoints >= 0 && changes >= 0, "costs and changes must be 0 or more");
        require(carried || !flies, "an empty slot cannot fly");
        require(!flies || (Double.isFinite(carryM) && Double.isFinite(wishM)), "a club that flies needs a carry");
        require(takes.stream().allMatch(pieces -> pieces >= 0), "pieces taken must be 0 or more");
        group = carried && group >= 0 ? group : NO_GROUP;
        require(group < 0 || Math.abs(matchMeasureUnits) < MOST_MATCH, "a matched club needs a number");
        matchMeasureUnits = group < 0 ? 0 : Math.rint(matchMeasureUnits * MATCH_STEPS) / MATCH_STEPS;
    }

    public ExactOption withOwn(long otherBreaks, long otherMicropoints) {
        return new ExactOption(
                index,
                otherBreaks,
                otherMicropoints,
                changes,
                carried,
                flies,
                carryM,
                wishM,
                takes,
                group,
                matchMeasureUnits);
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
