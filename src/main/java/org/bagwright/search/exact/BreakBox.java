package org.bagwright.search.exact;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The plans whose clubs of some groups have their means in given intervals: the least that the slots of these groups
 * break, by the changes used before. Since the deviations from a mean sum to nothing, each may count with a pull up or
 * down; that keeps the mean of the clubs in its interval.
 */
final class BreakBox {
    /** So that sums stay far below what cannot be reached. */
    private static final double MOST_PULL = 1e11;

    /** A mean can be outside its interval by a rounding of this size. */
    private static final double ROUNDING = 1e-9;

    final MeanIntervals intervals;

    /** For each group what a deviation of one unit counts. */
    final double[] pulls;

    /** Before each slot and after the last: the least of all slots from there on, by the changes used. */
    final long[][] rest;

    private final List<BreakSlot> slots;
    private final long[][] spread;
    private final long[][] costs;

    BreakBox(List<BreakSlot> slots, MeanIntervals intervals, double[] pulls) {
        this.slots = slots;
        this.intervals = intervals;
        this.pulls = pulls;
        spread = slots.stream().map(slot -> slot.spread(intervals)).toArray(long[][]::new);
        costs = new long[spread.length][];
        rest = new long[spread.length + 1][];
    }

    /** Fills in the least from the last slot back. */
    void backward(long[][] base, long[] after) {
        rest[costs.length] = after;
        for (int slot = costs.length - 1; slot >= 0; slot--) {
            costs[slot] = costs(slot, base[slot]);
            rest[slot] = before(slot, rest[slot + 1]);
        }
    }

    private long[] costs(int slot, long[] base) {
        long[] all = new long[base.length];
        for (int kind = 0; kind < all.length; kind++) {
            BreakSlot.Kind filled = slots.get(slot).kinds.get(kind);
            all[kind] = base[kind] + spread[slot][kind] + pulled(filled.group(), filled.matchMeasureUnits());
        }
        return all;
    }

    private long pulled(int group, double matchMeasureUnits) {
        if (group < 0 || pulls[group] == 0) {
            return 0;
        }
        double off = pulls[group] * (matchMeasureUnits - intervals.centre(group));
        return (long) Math.floor(off - Math.abs(pulls[group]) * (intervals.half(group) + ROUNDING)) - 1;
    }

    private long[] before(int slot, long[] after) {
        long[] least = new long[after.length];
        Arrays.fill(least, BreakSlot.UNREACHED);
        BreakSlot options = slots.get(slot);
        for (int kind = 0; kind < costs[slot].length; kind++) {
            if (options.alive[kind]) {
                int changes = options.kinds.get(kind).changes();
                for (int used = 0; used + changes < after.length; used++) {
                    least[used] = Math.min(least[used], costs[slot][kind] + after[used + changes]);
                }
            }
        }
        return least;
    }

    /** The changes used before with which the whole is least. */
    int best(long[] before) {
        int best = 0;
        for (int used = 1; used < before.length; used++) {
            if (before[used] + rest[0][used] < before[best] + rest[0][best]) {
                best = used;
            }
        }
        return best;
    }

    /** The kinds with which that least is reached, or nothing where too few of them are left. */
    Optional<int[]> path(int usedBefore) {
        int[] path = new int[costs.length];
        int used = usedBefore;
        for (int slot = 0; slot < path.length; slot++) {
            path[slot] = step(slot, used);
            if (path[slot] < 0) {
                return Optional.empty();
            }
            used += slots.get(slot).kinds.get(path[slot]).changes();
        }
        return Optional.of(path);
    }

    private int step(int slot, int used) {
        BreakSlot options = slots.get(slot);
        int best = -1;
        long least = Long.MAX_VALUE;
        for (int kind = 0; kind < costs[slot].length; kind++) {
            int after = used + options.kinds.get(kind).changes();
            if (options.alive[kind] && after < rest[slot].length && costs[slot][kind] + rest[slot + 1][after] < least) {
                least = costs[slot][kind] + rest[slot + 1][after];
                best = kind;
            }
        }
        return best;
    }

    /**
     * The least of all slots up to the last of the box, by the changes used; marks every kind through which a plan costs
     * no more than a limit.
     */
    long[] forward(long[] before, long limit, boolean[][] marks) {
        long[] reached = before;
        for (int slot = 0; slot < costs.length; slot++) {
            long[] after = new long[before.length];
            Arrays.fill(after, BreakSlot.UNREACHED);
            BreakSlot options = slots.get(slot);
            for (int kind = 0; kind < costs[slot].length; kind++) {
                int changes = options.kinds.get(kind).changes();
                for (int used = 0; used + changes < after.length && options.alive[kind]; used++) {
                    long way = reached[used] + costs[slot][kind];
                    after[used + changes] = Math.min(after[used + changes], way);
                    marks[slot][kind] |= way + rest[slot + 1][used + changes] <= limit;
                }
            }
            reached = after;
        }
        return reached;
    }

    /**
     * Moves the pulls so that the clubs of a path get a mean nearer to its interval.
     *
     * @param distance how much more the path would have to cost
     */
    void pull(int[] path, double distance) {
        double[] beyond = new double[pulls.length];
        for (int group = 0; group < pulls.length; group++) {
            beyond[group] = beyond(path, group);
        }
        double square = Arrays.stream(beyond).map(each -> each * each).sum();
        for (int group = 0; group < pulls.length && square > 0; group++) {
            double moved = pulls[group] + distance * beyond[group] / square;
            double held = Math.max(-MOST_PULL, Math.min(MOST_PULL, moved));
            pulls[group] = held * pulls[group] < 0 ? 0 : held;
        }
    }

    /** How far the deviations of a group sum to more, or to less below 0, than its interval allows; for each club. */
    private double beyond(int[] path, int group) {
        double sum = 0;
        double allowed = 0;
        for (int slot = 0; slot < path.length; slot++) {
            BreakSlot.Kind kind = slots.get(slot).kinds.get(path[slot]);
            if (kind.group() == group) {
                sum += kind.matchMeasureUnits() - intervals.centre(group);
                allowed += intervals.half(group);
            }
        }
        if (pulls[group] == 0) {
            return Math.abs(sum) <= allowed ? 0 : sum - Math.copySign(allowed, sum);
        }
        return sum - Math.copySign(allowed, pulls[group]);
    }

    /** The two halves across the widest interval of some groups. */
    List<BreakBox> halves(int[] groups) {
        int widest = groups[0];
        for (int group : groups) {
            widest = intervals.half(group) > intervals.half(widest) ? group : widest;
        }
        return intervals.halves(widest).stream()
                .map(half -> new BreakBox(slots, half, pulls.clone()))
                .toList();
    }
}
