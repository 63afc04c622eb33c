package org.bagwright.search.exact;

import org.bagwright.search.score.LexCost;

/** What each option of a model costs by itself in a bound: its own cost, the least for spread, and its pieces' prices. */
final class PricedCosts {
    final BagModel model;
    final SpreadBound spread;

    /** By slot and option. */
    final long[][] breaks;

    final long[][] weights;

    private final Prices prices;

    PricedCosts(BagModel model, SpreadBound spread, Prices prices) {
        this.model = model;
        this.spread = spread;
        this.prices = prices;
        breaks = new long[model.layers.length][];
        weights = new long[model.layers.length][];
        for (int slot = 0; slot < model.layers.length; slot++) {
            SlotLayer layer = model.layers[slot];
            breaks[slot] = new long[layer.size()];
            weights[slot] = new long[layer.size()];
            for (int option = 0; option < layer.size(); option++) {
                fill(slot, option, layer);
            }
        }
    }

    private void fill(int slot, int option, SlotLayer layer) {
        ExactOption filled = layer.options[option];
        LexCost own = filled.own().plus(prices.of(layer.uses[option]));
        int group = model.groups.matched(filled);
        boolean matched = group >= 0;
        double number = filled.matchMeasureUnits();
        breaks[slot][option] = own.breaks() + (matched ? spread.breaks(group, number) : 0);
        weights[slot][option] = own.weight() + (matched ? spread.weight(group, number) : 0);
    }

    /** What the limits themselves would cost at these prices. */
    LexCost limitsCost() {
        return prices.of(model.available);
    }
}
