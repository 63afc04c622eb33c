package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Neighbouring slots that hold all clubs of some groups, or of none, with the boxes in which the means can be. */
final class BreakBlock {
    final int first;
    final List<BreakSlot> slots;
    final int[] groups;
    private List<BreakBox> boxes;

    BreakBlock(int first, List<BreakSlot> slots, int[] groups, MeanIntervals intervals, int count) {
        this.first = first;
        this.slots = slots;
        this.groups = groups;
        boxes = List.of(new BreakBox(slots, intervals, new double[count]));
    }

    List<BreakBox> boxes() {
        return boxes;
    }

    /** The least of this block and all that follow, by the changes used before. */
    long[] backward(long[][] base, long[] after) {
        long[] least = new long[after.length];
        Arrays.fill(least, BreakSlot.UNREACHED);
        long[][] own = Arrays.copyOfRange(base, first, first + slots.size());
        for (BreakBox box : boxes) {
            box.backward(own, after);
            lower(least, box.rest[0]);
        }
        return least;
    }

    static void lower(long[] least, long[] other) {
        for (int used = 0; used < least.length; used++) {
            least[used] = Math.min(least[used], other[used]);
        }
    }

    /** The least up to the end of the block; drops the boxes and the kinds that cost more than a limit. */
    long[] forward(long[] before, long limit) {
        long[] least = new long[before.length];
        Arrays.fill(least, BreakSlot.UNREACHED);
        boolean[][] marks = new boolean[slots.size()][];
        for (int slot = 0; slot < marks.length; slot++) {
            marks[slot] = new boolean[slots.get(slot).kinds.size()];
        }
        List<BreakBox> left = new ArrayList<>();
        for (BreakBox box : boxes) {
            int best = box.best(before);
            if (before[best] + box.rest[0][best] <= limit) {
                left.add(box);
                lower(least, box.forward(before, limit, marks));
            }
        }
        boxes = left;
        for (int slot = 0; slot < marks.length; slot++) {
            for (int kind = 0; kind < marks[slot].length; kind++) {
                slots.get(slot).alive[kind] &= marks[slot][kind];
            }
        }
        return least;
    }

    /**
     * Adds what the least plan from here on takes of each resource.
     *
     * @param used changes used before
     * @return changes used after
     */
    int take(int used, double[] uses) {
        BreakBox best = boxes.get(0);
        for (BreakBox box : boxes) {
            best = box.rest[0][used] < best.rest[0][used] ? box : best;
        }
        int after = used;
        int[] path = best.path(used).orElseThrow();
        for (int slot = 0; slot < path.length; slot++) {
            BreakSlot.Kind kind = slots.get(slot).kinds.get(path[slot]);
            after += kind.changes();
            for (int resource = 0; resource < uses.length; resource++) {
                uses[resource] += kind.uses().get(resource);
            }
        }
        return after;
    }

    /** Moves the pulls of every box toward a limit. */
    void pull(long[] before, long limit, double share) {
        for (BreakBox box : boxes) {
            int used = box.best(before);
            double distance = limit + BreakSlot.UNIT - before[used] - box.rest[0][used];
            box.path(used).ifPresent(path -> box.pull(path, share * distance));
        }
    }

    /** Halves every box that is wider than this. */
    boolean split(double narrowMeasureUnits, int most) {
        boolean wide = groups.length > 0 && boxes.stream().anyMatch(box -> isWide(box, narrowMeasureUnits));
        if (!wide || 2 * boxes.size() > most) {
            return false;
        }
        List<BreakBox> halves = new ArrayList<>();
        for (BreakBox box : boxes) {
            halves.addAll(isWide(box, narrowMeasureUnits) ? box.halves(groups) : List.of(box));
        }
        boxes = halves;
        return true;
    }

    private boolean isWide(BreakBox box, double narrowMeasureUnits) {
        return Arrays.stream(groups).anyMatch(group -> box.intervals.half(group) > narrowMeasureUnits);
    }

    long work() {
        long kinds = slots.stream().mapToLong(slot -> slot.kinds.size()).sum();
        return kinds * boxes.size();
    }
}
