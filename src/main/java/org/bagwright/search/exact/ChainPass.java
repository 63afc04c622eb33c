package org.bagwright.search.exact;

import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.ValueTable;

/**
 * Dynamic programming along the slots of a bag, from the last one back: for every front and every count of changes used
 * the least cost of all slots that follow. At the first slot that is a lower bound for the bag.
 */
final class ChainPass {
    final PricedCosts terms;

    private final BagModel model;
    private final Meter meter;
    private final int counts;

    /** After each slot, and at 0 before the first: the least cost of the slots that follow. */
    private final ValueTable[] rest;

    ChainPass(PricedCosts terms, Meter meter) {
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
            pass(slot, layer, from);
            rest[slot] = from;
        }
    }

    /** The least cost of a slot and all that follow, by its front. */
    private ValueTable enter(int slot, SlotLayer layer) {
        ValueTable enter = ValueTable.outOfReach(layer.ownFronts, counts);
        for (int option = 0; option < layer.size(); option++) {
            int front = layer.fronts[option];
            if (front != SlotLayer.PASSES) {
                lower(enter, front, slot, option, front);
            }
        }
        return enter;
    }

    private void pass(int slot, SlotLayer layer, ValueTable from) {
        for (int option = 0; option < layer.size() && layer.passes; option++) {
            if (layer.fronts[option] == SlotLayer.PASSES) {
                for (int front = 0; front < layer.frontsBefore; front++) {
                    lower(from, front, slot, option, layer.ownFronts + front);
                }
            }
        }
    }

    /** Lowers a row to what an option costs with all slots that follow from the front after it. */
    private void lower(ValueTable table, int row, int slot, int option, int frontAfter) {
        int changes = model.layers[slot].counted[option];
        table.lower(row, rest[slot + 1], frontAfter, -changes, terms.breaks[slot][option], terms.weights[slot][option]);
    }

    /** The least cost of the whole bag at these prices, with the price of the limits taken off: a lower bound. */
    LexCost bound() {
        return rest(0, 0, 0).minus(terms.limitsCost());
    }

    private LexCost rest(int slotsFilled, int front, int used) {
        return new LexCost(restBreaks(slotsFilled, front, used), restWeight(slotsFilled, front, used));
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
                        .plus(new LexCost(layer.gapBreaksTo(option, front), layer.gapWeightTo(option, front)))
                        .plus(new LexCost(terms.breaks[slot][option], terms.weights[slot][option]));
                if (way.compareTo(least) < 0) {
                    least = way;
                    best = option;
                }
            }
        }
        return best;
    }

    /** For each option whether some plan through it can cost less than a value. */
    boolean[][] canBeat(LexCost value) {
        return new ForwardPass(terms, rest, value.plus(terms.limitsCost())).run(meter);
    }
}
