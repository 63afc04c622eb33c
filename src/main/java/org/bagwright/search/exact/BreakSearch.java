package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the plans of a bag break at least by the musts of their clubs and of their groups, gaps left out, and which options
 * and means a plan can have that breaks no more than the best one known. Groups are told apart: while the slots of one
 * are filled, its mean is in one of many small intervals; so the work grows with the sum of their numbers, not with
 * their product. Limits of the stock have prices, changes are counted.
 */
final class BreakSearch {
    private static final int MOST_BOXES = 64;
    private static final int MOST_LEVELS = 16;
    private static final int ROUNDS = 6;
    private static final double SHORTER = 0.8;

    /** Half an interval of this share of the tolerance is narrow enough. */
    private static final double NARROW_SHARE = 1.0 / 4000;

    private final BagModel model;
    private final Meter meter;
    private final long limit;
    private final List<BreakSlot> slots;
    private final List<BreakBlock> blocks = new ArrayList<>();
    private final int counts;
    private double[] prices;
    private long bound;

    /** @param mostBreaks what the best plan known breaks, thousandths */
    BreakSearch(BagModel model, MeanIntervals intervals, long mostBreaks, Meter meter) {
        this.model = model;
        this.meter = meter;
        limit = mostBreaks * BreakSlot.UNIT;
        counts = model.changeCounts();
        prices = new double[model.resources.length];
        slots = IntStream.range(0, model.layers.length)
                .mapToObj(slot -> new BreakSlot(model, slot))
                .toList();
        blocks(intervals);
    }

    /** Groups whose slots overlap share a block; slots between groups have blocks of their own. */
    private void blocks(MeanIntervals intervals) {
        int start = 0;
        while (start < slots.size()) {
            int end = start + 1;
            for (int slot = start; slot < end; slot++) {
                end = Math.max(end, end(slot));
            }
            List<BreakSlot> own = slots.subList(start, end);
            int[] held = IntStream.range(0, model.groups.count())
                    .filter(group -> own.stream().anyMatch(slot -> slot.holds(group)))
                    .toArray();
            blocks.add(new BreakBlock(start, own, held, intervals, model.groups.count()));
            start = end;
        }
    }

    /** After the last slot that has a group in common with a slot. */
    private int end(int slot) {
        return IntStream.range(slot, slots.size())
                        .filter(other -> IntStream.range(0, model.groups.count())
                                .anyMatch(group -> slots.get(slot).holds(group)
                                        && slots.get(other).holds(group)))
                        .reduce(slot, Math::max)
                + 1;
    }

    /** Searches; whether there can be a plan in the intervals that breaks no more than the best one known. */
    boolean run() {
        boolean finer = true;
        for (int level = 0; level < MOST_LEVELS && finer; level++) {
            double share = 1;
            for (int round = 0; round < ROUNDS; round++) {
                if (!round(share)) {
                    return false;
                }
                share *= SHORTER;
            }
            finer = split();
        }
        return true;
    }

    private boolean split() {
        double narrow = model.bag.spreadAim().toleranceMeasureUnits() * NARROW_SHARE;
        boolean split = false;
        for (BreakBlock block : blocks) {
            split |= block.split(narrow, MOST_BOXES);
        }
        return split;
    }

    private boolean round(double share) {
        meter.spend(2L * counts * blocks.stream().mapToLong(BreakBlock::work).sum());
        long[] rest = new long[counts];
        long[][] base = slots.stream().map(slot -> slot.base(prices)).toArray(long[][]::new);
        for (int block = blocks.size() - 1; block >= 0; block--) {
            rest = blocks.get(block).backward(base, rest);
        }
        long limitsCost = limitsCost();
        bound = Math.max(bound, Math.min(rest[0] - limitsCost, limit));
        if (rest[0] - limitsCost > limit) {
            return false;
        }
        double[] moved = moved(rest[0] - limitsCost, share);
        long[] before = new long[counts];
        Arrays.fill(before, 1, counts, BreakSlot.UNREACHED);
        for (BreakBlock block : blocks) {
            long[] after = block.forward(before, limit + limitsCost);
            block.pull(before, limit + limitsCost, share);
            before = after;
        }
        prices = moved;
        return true;
    }

    private long limitsCost() {
        double cost = 0;
        for (int resource = 0; resource < prices.length; resource++) {
            cost += prices[resource] * model.available[resource];
        }
        return (long) Math.ceil(cost);
    }

    /** The prices one step on against what the plan with the least cost takes beyond the limits. */
    private double[] moved(long reached, double share) {
        double[] beyond = new double[prices.length];
        int used = 0;
        for (BreakBlock block : blocks) {
            used = block.take(used, beyond);
        }
        double square = 0;
        for (int resource = 0; resource < beyond.length; resource++) {
            beyond[resource] -= model.available[resource];
            square += beyond[resource] * beyond[resource];
        }
        double[] moved = prices.clone();
        for (int resource = 0; resource < moved.length && square > 0; resource++) {
            double step = share * (limit + BreakSlot.UNIT - reached) * beyond[resource] / square;
            moved[resource] = Math.max(0, prices[resource] + step);
        }
        return moved;
    }

    /** What every plan in the intervals breaks at least, or what the best one known does, thousandths. */
    long breaks() {
        return -Math.floorDiv(-bound, BreakSlot.UNIT);
    }

    /** For each option of each slot whether a plan with it can break no more than the best one known. */
    boolean[][] marks() {
        return slots.stream().map(BreakSlot::marks).toArray(boolean[][]::new);
    }

    /** The intervals that are left to the means of such plans. */
    MeanIntervals intervals(MeanIntervals all) {
        MeanIntervals left = all;
        for (BreakBlock block : blocks) {
            left = left.around(block.boxes().stream().map(box -> box.intervals).toList(), block.groups);
        }
        return left;
    }
}
