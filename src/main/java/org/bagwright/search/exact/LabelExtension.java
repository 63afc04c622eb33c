package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bagwright.search.score.LexCost;

/**
 * Fills one more slot of a label. Keeps the limits exactly, unlike the chain pass, and replaces the bound of what spread
 * costs by what it does cost as soon as the last club of a group is chosen.
 */
final class LabelExtension {
    private static final int[] TOO_MANY = {};

    private final PricedCosts terms;
    private final BagModel model;
    private final ChainPass chain;
    private final Incumbent incumbent;
    private final LexCost limitsCost;

    /** The last slot in which a club of each group can be. */
    private final int[] lastSlots;

    /** The least that the slots from each one on take of every resource. */
    private final int[][] leastUses;

    LabelExtension(ChainPass chain, Incumbent incumbent) {
        this.chain = chain;
        this.incumbent = incumbent;
        terms = chain.terms;
        model = terms.model;
        limitsCost = terms.limitsCost();
        lastSlots = lastSlots();
        leastUses = leastUses();
    }

    private int[] lastSlots() {
        int[] last = new int[model.groups.count()];
        Arrays.fill(last, -1);
        for (int slot = 0; slot < model.layers.length; slot++) {
            for (ExactOption option : model.layers[slot].options) {
                if (model.groups.matched(option) >= 0) {
                    last[model.groups.matched(option)] = slot;
                }
            }
        }
        return last;
    }

    private int[][] leastUses() {
        int[][] least = new int[model.layers.length + 1][model.resources.length];
        for (int slot = model.layers.length - 1; slot >= 0; slot--) {
            for (int resource = 0; resource < model.resources.length; resource++) {
                int item = resource;
                least[slot][resource] = least[slot + 1][resource]
                        + Arrays.stream(model.layers[slot].uses)
                                .mapToInt(uses -> uses[item])
                                .min()
                                .orElse(0);
            }
        }
        return least;
    }

    /** The label with an option in the next slot, or null if that breaks a limit or cannot beat the incumbent. */
    Label extended(Label label, int slot, int option) {
        SlotLayer layer = model.layers[slot];
        int changes = label.changes + layer.counted[option];
        if (changes >= model.changeCounts()) {
            return null;
        }
        int front = layer.frontAfter(option, label.front);
        long gapBreaks = layer.gapBreaksTo(option, label.front);
        long gapWeight = layer.gapWeightTo(option, label.front);
        long breaks = label.breaks + terms.breaks[slot][option] + gapBreaks;
        long weight = label.weight + terms.weights[slot][option] + gapWeight;
        if (!canBeat(
                breaks + chain.restBreaks(slot + 1, front, changes),
                weight + chain.restWeight(slot + 1, front, changes))) {
            return null;
        }
        int[] uses = usesAfter(slot, layer.uses[option], label.uses);
        if (uses.length != label.uses.length) {
            return null;
        }
        Label next = new Label(label, option, front, changes, uses, model.groups.count());
        next.breaks = breaks;
        next.weight = weight;
        next.centreBreaks = label.centreBreaks + gapBreaks;
        next.centreWeight = label.centreWeight + gapWeight;
        join(layer.options[option], next);
        return closed(slot, next);
    }

    private int[] usesAfter(int slot, int[] more, int[] before) {
        if (before.length == 0) {
            return before;
        }
        int[] uses = before.clone();
        for (int resource = 0; resource < uses.length; resource++) {
            uses[resource] += more[resource];
            if (uses[resource] + leastUses[slot + 1][resource] > model.available[resource]) {
                return TOO_MANY;
            }
        }
        return uses;
    }

    private boolean canBeat(long totalBreaks, long totalWeight) {
        LexCost limit = incumbent.limit();
        long allBreaks = totalBreaks - limitsCost.breaks();
        return allBreaks < limit.breaks()
                || (allBreaks == limit.breaks() && totalWeight - limitsCost.weight() < limit.weight());
    }

    /** Adds what the club costs by itself at the centre, and the club to its group. */
    private void join(ExactOption option, Label label) {
        LexCost own = option.own();
        label.centreBreaks += own.breaks();
        label.centreWeight += own.weight();
        int group = model.groups.matched(option);
        if (group >= 0) {
            double number = option.matchMeasureUnits();
            label.join(group, number, terms.spread.margin(group, number) < 0);
            label.centreWeight += terms.spread.centreWeight(group, number);
        }
    }

    /** The label with the groups closed that are complete after a slot, or null if it cannot beat the incumbent. */
    private Label closed(int slot, Label label) {
        for (int group = 0; group < lastSlots.length; group++) {
            if (lastSlots[group] == slot) {
                close(slot, group, label);
            }
        }
        label.totalBreaks = label.breaks + chain.restBreaks(slot + 1, label.front, label.changes);
        label.totalWeight = label.weight + chain.restWeight(slot + 1, label.front, label.changes);
        return canBeat(label.totalBreaks, label.totalWeight) ? label : null;
    }

    /** Replaces the bound of what spread costs in a group that is complete by what it does cost. */
    private void close(int slot, int group, Label label) {
        List<Double> numbers = new ArrayList<>();
        int at = slot;
        for (Label each = label; each.parent != null; each = each.parent) {
            ExactOption option = model.layers[at--].options[each.option];
            if (model.groups.matched(option) == group) {
                double number = option.matchMeasureUnits();
                numbers.add(number);
                label.breaks -= terms.spread.breaks(group, number);
                label.weight -= terms.spread.weight(group, number);
                label.centreWeight -= terms.spread.centreWeight(group, number);
            }
        }
        LexCost exact = numbers.isEmpty() ? LexCost.NONE : model.bag.spreadOf(numbers);
        label.breaks += exact.breaks();
        label.weight += exact.weight();
        label.centreBreaks += exact.breaks();
        label.centreWeight += exact.weight();
        label.close(group);
    }
}
