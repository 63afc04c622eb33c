package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bagwright.search.score.LexCost;

/** Leaves a bag of a team only the options that are part of some choice below a cost at the team's prices. */
public final class OptionElimination {
    private final ExactBag bag;
    private final BagModel model;

    /**
     * @param bag the bag, without prices
     * @param limits its limits
     * @param prices what a piece of each stock item costs
     */
    public OptionElimination(ExactBag bag, BagLimits limits, Prices prices) {
        this.bag = bag;
        model = new BagModel(prices.priced(bag), limits, true);
    }

    /**
     * The bag with fewer options.
     *
     * @param limit options stay if some choice with them can cost less, prices included
     * @param kept options that stay in any case
     */
    public ExactBag below(LexCost limit, List<ExactOption> kept, Meter meter) {
        PricedCosts terms = new PricedCosts(model, SpreadBound.over(model), Prices.none(model.resources.length));
        boolean[][] marked;
        try {
            marked = new ChainPass(terms, meter).canBeat(limit);
        } catch (Meter.Ended ended) {
            return bag;
        }
        List<List<ExactOption>> slots = new ArrayList<>();
        for (int slot = 0; slot < marked.length; slot++) {
            slots.add(left(slot, model.layers[slot], marked[slot], kept.get(slot)));
        }
        return bag.withSlots(slots);
    }

    private List<ExactOption> left(int slot, SlotLayer layer, boolean[] marks, ExactOption kept) {
        Set<Integer> stays = new HashSet<>();
        stays.add(kept.index());
        for (int option = 0; option < layer.size(); option++) {
            if (marks[option]) {
                stays.add(layer.options[option].index());
            }
        }
        return bag.slots().get(slot).stream()
                .filter(option -> stays.contains(option.index()))
                .toList();
    }
}
