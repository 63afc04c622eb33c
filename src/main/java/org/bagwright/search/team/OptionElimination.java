package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.BagModel;
import org.bagwright.search.exact.ChainPass;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.MeanIntervals;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.exact.PricedCosts;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.exact.SlotLayer;
import org.bagwright.search.exact.SpreadBound;
import org.bagwright.search.score.LexCost;

/** Leaves a bag of a team only the options that lie on some choice below a cost at the team's prices. */
final class OptionElimination {
    private final ExactBag bag;
    private final BagLimits limits;
    private final StockPrices prices;
    private final Meter meter;

    OptionElimination(ExactBag bag, BagLimits limits, StockPrices prices, Meter meter) {
        this.bag = bag;
        this.limits = limits;
        this.prices = prices;
        this.meter = meter;
    }

    /**
     * The bag with fewer options.
     *
     * @param limit options stay if some choice with them can cost less, prices included
     * @param kept options that stay in any case
     */
    ExactBag below(LexCost limit, List<ExactOption> kept) {
        BagModel model = new BagModel(prices.priced(bag), limits, true);
        SpreadBound spread =
                new SpreadBound(bag.spreadAim(), MeanIntervals.all(model), new boolean[model.groups.length]);
        PricedCosts terms = new PricedCosts(model, spread, Prices.none(model.resources.length));
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
        boolean[] stays = new boolean[1 + indexes(slot)];
        stays[kept.index()] = true;
        for (int option = 0; option < layer.size(); option++) {
            stays[layer.options[option].index()] |= marks[option];
        }
        return bag.slots().get(slot).stream()
                .filter(option -> stays[option.index()])
                .toList();
    }

    private int indexes(int slot) {
        return bag.slots().get(slot).stream().mapToInt(ExactOption::index).max().orElseThrow();
    }
}
