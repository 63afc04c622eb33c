package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bagwright.search.score.PenaltyRules;

/**
 * One slot of a bag as far as the musts of its clubs and of their groups go: options that break the same and take the same
 * of the limits are one kind. Gaps are left out.
 */
final class BreakSlot {
    /** Parts of a thousandth of a break in which prices are counted. */
    static final long UNIT = 1024;

    static final long UNREACHED = Long.MAX_VALUE / 4;

    final List<Kind> kinds;

    /** Whether a plan with no more breaks than the best can hold each kind. */
    final boolean[] alive;

    private final BagModel model;
    private final int[] kindOf;

    /** What options have in common. */
    record Kind(int changes, List<Integer> uses, long breaks, int group, double matchMeasureUnits) {}

    BreakSlot(BagModel model, int slot) {
        this.model = model;
        SlotLayer layer = model.layers[slot];
        Map<Kind, Integer> places = new LinkedHashMap<>();
        kindOf = new int[layer.size()];
        for (int option = 0; option < kindOf.length; option++) {
            Kind kind = kind(layer, option);
            places.putIfAbsent(kind, places.size());
            kindOf[option] = places.get(kind);
        }
        kinds = new ArrayList<>(places.keySet());
        alive = new boolean[kinds.size()];
        Arrays.fill(alive, true);
    }

    private Kind kind(SlotLayer layer, int option) {
        ExactOption filled = layer.options[option];
        int group = model.groups.matched(filled);
        return new Kind(
                layer.counted[option],
                IntStream.of(layer.uses[option]).boxed().toList(),
                filled.breaks(),
                group,
                group >= 0 ? filled.matchMeasureUnits() : 0);
    }

    boolean holds(int group) {
        return kinds.stream().anyMatch(kind -> kind.group() == group);
    }

    /** Whether each option can still be part of a plan with no more breaks than the best. */
    boolean[] marks() {
        boolean[] marks = new boolean[kindOf.length];
        for (int option = 0; option < marks.length; option++) {
            marks[option] = alive[kindOf[option]];
        }
        return marks;
    }

    /** What each kind breaks by itself, with the prices of what it takes. */
    long[] base(double[] prices) {
        long[] base = new long[kinds.size()];
        for (int kind = 0; kind < base.length; kind++) {
            double price = 0;
            for (int resource = 0; resource < prices.length; resource++) {
                price += prices[resource] * kinds.get(kind).uses().get(resource);
            }
            base[kind] = kinds.get(kind).breaks() * UNIT + (long) price;
        }
        return base;
    }

    /** What each kind breaks at least where the means are in these intervals. */
    long[] spread(MeanIntervals intervals) {
        long[] spread = new long[kinds.size()];
        for (int kind = 0; kind < spread.length; kind++) {
            int group = kinds.get(kind).group();
            double outside =
                    group >= 0 ? intervals.outside(group, kinds.get(kind).matchMeasureUnits()) : 0;
            spread[kind] = PenaltyRules.breaks(model.bag.spreadAim().hardBreakThousandths(outside)) * UNIT;
        }
        return spread;
    }
}
