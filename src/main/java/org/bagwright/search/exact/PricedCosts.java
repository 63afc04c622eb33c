package org.bagwright.search.exact;

import java.util.List;
import org.bagwright.search.score.LexCost;

/** What each option of a model costs by itself in a bound: its own cost, the least for spread, and its pieces' prices. */
public final class PricedCosts {
    final BagModel model;
    final SpreadBound spread;
    final Prices prices;

    /** By slot and option. */
    final long[][] breaks;

    final long[][] weights;

    public PricedCosts(BagModel model, SpreadBound spread, Prices prices) {
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
        LexCost own = ChoiceValue.own(filled).plus(prices.of(layer.uses[option]));
        int group = matched(filled);
        boolean matched = group >= 0;
        double number = filled.matchMeasureUnits();
        breaks[slot][option] = own.breaks() + (matched ? spread.breaks(group, number) : 0);
        weights[slot][option] = own.weight() + (matched ? spread.weight(group, number) : 0);
    }

    /** The place of the group of an option if it can differ from the mean there. */
    int matched(ExactOption option) {
        int group = model.group(option);
        return group >= 0 && model.members[group] > 1 ? group : ExactOption.NO_GROUP;
    }

    /** What the limits themselves would cost at these prices. */
    LexCost limitsCost() {
        return prices.of(model.available);
    }

    /** What spread costs in the bound for this choice and group. */
    long spreadWeight(List<ExactOption> chosen, int group) {
        return chosen.stream()
                .filter(option -> matched(option) == group)
                .mapToLong(option -> spread.weight(group, option.matchMeasureUnits()))
                .sum();
    }
}
