package org.bagwright.search.exact;

import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.ValueTable;

/**
 * Dynamic programming along the slots of a bag. The backward pass knows for every front and every count of changes used
 * the least cost of all slots that follow; the forward pass the least cost of all slots before; both together the least
 * cost of any plan through an option, which rules out those that cannot beat the best plan known.
 */
public final class ChainPass {
    private final PricedCosts terms;
    private final BagModel model;
    private final Meter meter;
    private final int counts;

    /** After each slot, and at 0 before the first: the least cost of the slots that follow. */
    private final ValueTable[] rest;

    public ChainPass(PricedCosts terms, Meter meter) {
        this.terms = terms;
        this.model = terms.model;
        this.meter = meter;
        counts = model.changeCounts();
        rest = new ValueTable[model.layers.length + 1];
        backward();
    }

    private void backward() {
        int slots = model.layers.length;
        rest[slots] = ValueTable.free(model.layers[slots - 1].frontsAfter(), counts);
        for (int slot = slots - 1; slot >= 0; slot--) {
            SlotLayer layer = model.layers[slot];
            meter.spend(layer.work() * counts);
            ValueTable enter = enter(slot, layer);
            ValueTable from = ValueTable.outOfReach(layer.frontsBefore, counts);
            for (int front = 0; front < layer.frontsBefore; front++) {
                for (int own = 0; own < layer.ownFronts; own++) {
                    from.lower(front, enter, own, 0, layer.gapBreaks(front, own), layer.gapWeight(front, own));
                }
            }
            passBackward(slot, layer, from);
            rest[slot] = from;
        }
    }

    /** The least cost of a slot and all that follow, by its front. */
    private ValueTable enter(int slot, SlotLayer layer) {
        ValueTable enter = ValueTable.outOfReach(layer.ownFronts, counts);
        for (int option = 0; option < layer.size(); option++) {
            int front = layer.fronts[option];
            if (front != SlotLayer.PASSES) {
                enter.lower(
                        front,
                        rest[slot + 1],
                        front,
                        -layer.counted[option],
                        breaks(slot, option),
                        weight(slot, option));
            }
        }
        return enter;
    }

    private void passBackward(int slot, SlotLayer layer, ValueTable from) {
        for (int option = 0; option < layer.size() && layer.passes; option++) {
            if (layer.fronts[option] == SlotLayer.PASSES) {
                for (int front = 0; front < layer.frontsBefore; front++) {
                    from.lower(
                            front,
                            rest[slot + 1],
                            layer.ownFronts + front,
                            -layer.counted[option],
                            breaks(slot, option),
                            weight(slot, option));
                }
            }
        }
    }

    private long breaks(int slot, int option) {
        return terms.breaks[slot][option];
    }

    private long weight(int slot, int option) {
        return terms.weights[slot][option];
    }

    /** The least cost of the whole bag at these prices, with the price of the limits taken off: a lower bound. */
    LexCost bound() {
        return rest(0, 0, 0).minus(terms.limitsCost());
    }

    LexCost rest(int slotsFilled, int front, int used) {
        return new LexCost(rest[slotsFilled].breaks(front, used), rest[slotsFilled].weight(front, used));
    }

    long restBreaks(int slotsFilled, int front, int used) {
        return rest[slotsFilled].breaks(front, used);
    }

    long restWeight(int slotsFilled, int front, int used) {
        return rest[slotsFilled].weight(front, used);
    }

    /** The options of a choice with this least cost, by their places; of equal ones the earliest. */
    int[] path() {
        int[] places = new int[model.layers.length];
        int front = 0;
        int used = 0;
        for (int slot = 0; slot < places.length; slot++) {
            SlotLayer layer = model.layers[slot];
            places[slot] = step(slot, layer, front, used);
            used += layer.counted[places[slot]];
            front = layer.frontAfter(places[slot], front);
        }
        return places;
    }

    private int step(int slot, SlotLayer layer, int front, int used) {
        int best = 0;
        LexCost least = LexCost.OUT_OF_REACH;
        for (int option = 0; option < layer.size(); option++) {
            int usedAfter = used + layer.counted[option];
            if (usedAfter < counts) {
                int after = layer.frontAfter(option, front);
                LexCost way = rest(slot + 1, after, usedAfter)
                        .plus(gap(layer, option, front))
                        .plus(new LexCost(breaks(slot, option), weight(slot, option)));
                if (way.compareTo(least) < 0) {
                    least = way;
                    best = option;
                }
            }
        }
        return best;
    }

    private static LexCost gap(SlotLayer layer, int option, int front) {
        int own = layer.fronts[option];
        return own == SlotLayer.PASSES
                ? LexCost.NONE
                : new LexCost(layer.gapBreaks(front, own), layer.gapWeight(front, own));
    }

    /** For each option whether some plan through it can cost less than a value. */
    public boolean[][] canBeat(LexCost value) {
        LexCost limit = value.plus(terms.limitsCost());
        boolean[][] marked = new boolean[model.layers.length][];
        ValueTable before = ValueTable.start(counts);
        for (int slot = 0; slot < marked.length; slot++) {
            SlotLayer layer = model.layers[slot];
            meter.spend(layer.work() * counts);
            ValueTable arrive = arrive(layer, before);
            ValueTable after = ValueTable.outOfReach(layer.frontsAfter(), counts);
            marked[slot] = new boolean[layer.size()];
            for (int option = 0; option < layer.size(); option++) {
                marked[slot][option] = layer.fronts[option] == SlotLayer.PASSES
                        ? passForward(slot, option, before, after, limit)
                        : landForward(slot, option, arrive, after, limit);
            }
            before = after;
        }
        return marked;
    }

    private ValueTable arrive(SlotLayer layer, ValueTable before) {
        ValueTable arrive = ValueTable.outOfReach(layer.ownFronts, counts);
        for (int front = 0; front < layer.frontsBefore; front++) {
            for (int own = 0; own < layer.ownFronts; own++) {
                arrive.lower(own, before, front, 0, layer.gapBreaks(front, own), layer.gapWeight(front, own));
            }
        }
        return arrive;
    }

    private boolean landForward(int slot, int option, ValueTable arrive, ValueTable after, LexCost limit) {
        SlotLayer layer = model.layers[slot];
        int front = layer.fronts[option];
        int changes = layer.counted[option];
        after.lower(front, arrive, front, changes, breaks(slot, option), weight(slot, option));
        return arrive.below(limit, front, rest[slot + 1], front, changes, breaks(slot, option), weight(slot, option));
    }

    private boolean passForward(int slot, int option, ValueTable before, ValueTable after, LexCost limit) {
        SlotLayer layer = model.layers[slot];
        int changes = layer.counted[option];
        long breaks = breaks(slot, option);
        long weight = weight(slot, option);
        boolean below = false;
        for (int front = 0; front < layer.frontsBefore; front++) {
            int to = layer.ownFronts + front;
            after.lower(to, before, front, changes, breaks, weight);
            below = below || before.below(limit, front, rest[slot + 1], to, changes, breaks, weight);
        }
        return below;
    }
}
