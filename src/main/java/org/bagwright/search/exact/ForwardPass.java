package org.bagwright.search.exact;

import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.ValueTable;

/**
 * The least cost of all slots before each one, by front and count of changes. With the least cost of all slots that
 * follow it gives the least cost of any plan through an option, which rules out those that cannot beat the incumbent.
 */
final class ForwardPass {
    private final PricedCosts terms;

    /** After each slot, and at 0 before the first: the least cost of the slots that follow. */
    private final ValueTable[] rest;

    private final LexCost limit;
    private ValueTable before;

    /** @param limit options stay if some plan through them costs less, prices included */
    ForwardPass(PricedCosts terms, ValueTable[] rest, LexCost limit) {
        this.terms = terms;
        this.rest = rest;
        this.limit = limit;
        before = ValueTable.start(terms.model.changeCounts());
    }

    /** For each option of each slot whether it stays. */
    boolean[][] run(Meter meter) {
        boolean[][] marked = new boolean[terms.model.layers.length][];
        for (int slot = 0; slot < marked.length; slot++) {
            meter.spend(terms.model.layers[slot].work() * terms.model.changeCounts());
            marked[slot] = through(slot, terms.model.layers[slot]);
        }
        return marked;
    }

    private boolean[] through(int slot, SlotLayer layer) {
        ValueTable arrive = arrive(layer);
        ValueTable after = ValueTable.outOfReach(layer.frontsAfter(), terms.model.changeCounts());
        boolean[] marked = new boolean[layer.size()];
        for (int option = 0; option < marked.length; option++) {
            marked[option] = layer.fronts[option] == SlotLayer.PASSES
                    ? pass(slot, layer, option, after)
                    : land(slot, layer, option, arrive, after);
        }
        before = after;
        return marked;
    }

    /** The least cost of all slots before and of the gap to each own front. */
    private ValueTable arrive(SlotLayer layer) {
        ValueTable arrive = ValueTable.outOfReach(layer.ownFronts, terms.model.changeCounts());
        for (int front = 0; front < layer.frontsBefore; front++) {
            for (int own = 0; own < layer.ownFronts; own++) {
                arrive.lower(own, before, front, 0, layer.gapBreaks(front, own), layer.gapWeight(front, own));
            }
        }
        return arrive;
    }

    private boolean land(int slot, SlotLayer layer, int option, ValueTable arrive, ValueTable after) {
        int front = layer.fronts[option];
        int changes = layer.counted[option];
        long breaks = terms.breaks[slot][option];
        long weight = terms.weights[slot][option];
        after.lower(front, arrive, front, changes, breaks, weight);
        return arrive.below(limit, front, rest[slot + 1], front, changes, breaks, weight);
    }

    private boolean pass(int slot, SlotLayer layer, int option, ValueTable after) {
        int changes = layer.counted[option];
        long breaks = terms.breaks[slot][option];
        long weight = terms.weights[slot][option];
        boolean below = false;
        for (int front = 0; front < layer.frontsBefore; front++) {
            int to = layer.ownFronts + front;
            after.lower(to, before, front, changes, breaks, weight);
            below = below || before.below(limit, front, rest[slot + 1], to, changes, breaks, weight);
        }
        return below;
    }
}
