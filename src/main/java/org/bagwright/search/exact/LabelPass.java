package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bagwright.search.score.LexCost;

/**
 * Label setting: fills the slots one after the other in every way that can still beat the best plan known, and drops a
 * way where another one is no worse and leaves no less of every limit (dominance). Unlike the chain pass it keeps the
 * limits exactly, and what spread costs as soon as the last club of a group is chosen.
 *
 * <p>Needs terms by the centre of the box, or, where that does not hold, ways are dropped only for others with the very
 * same matched numbers. Where clubs of a group might break a must, ways are compared only if those clubs have the same
 * numbers and the mean is the same: then they break alike, whatever completes them.
 */
final class LabelPass {
    private static final int[] TOO_MANY = {};

    private final PricedCosts terms;
    private final BagModel model;
    private final ChainPass chain;
    private final BestChoice best;
    private final Meter meter;
    private final boolean comparable;
    private final int width;

    /** The last slot in which a club of each group can be. */
    private final int[] lastSlots;

    private final int[][] leastUses;
    private final LexCost limitsCost;
    private final SpreadMustDominance room;
    private boolean complete = true;

    /**
     * @param comparable whether choices with different matched numbers may be compared
     * @param width the most labels kept after a slot
     */
    LabelPass(ChainPass chain, PricedCosts terms, BestChoice best, Meter meter, boolean comparable, int width) {
        this.terms = terms;
        this.model = terms.model;
        this.chain = chain;
        this.best = best;
        this.meter = meter;
        this.comparable = comparable;
        this.width = width;
        lastSlots = lastSlots();
        leastUses = leastUses();
        limitsCost = terms.limitsCost();
        room = new SpreadMustDominance(terms);
    }

    private int[] lastSlots() {
        int[] last = new int[model.groups.length];
        Arrays.fill(last, -1);
        for (int slot = 0; slot < model.layers.length; slot++) {
            for (ExactOption option : model.layers[slot].options) {
                if (terms.matched(option) >= 0) {
                    last[terms.matched(option)] = slot;
                }
            }
        }
        return last;
    }

    /** The least that the slots from each one on take of every resource. */
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

    /**
     * Fills all slots and offers what comes out.
     *
     * @param goOn whether to keep only the best labels when there are too many, rather than to give up
     * @return whether every way was followed that could beat the best plan
     */
    boolean run(boolean goOn) {
        List<Label> labels = List.of(new Label(null, -1, 0, 0, new int[model.resources.length], model.groups.length));
        for (int slot = 0; slot < model.layers.length; slot++) {
            labels = fill(slot, labels);
            if (!complete && !goOn) {
                return false;
            }
        }
        for (Label label : labels) {
            best.offer(chosen(label));
        }
        return complete;
    }

    private List<ExactOption> chosen(Label last) {
        List<ExactOption> options = new ArrayList<>();
        int slot = model.layers.length - 1;
        for (Label label = last; label.parent != null; label = label.parent) {
            options.add(model.layers[slot--].options[label.option]);
        }
        Collections.reverse(options);
        return options;
    }

    private List<Label> fill(int slot, List<Label> labels) {
        Map<Integer, List<Label>> byFront = new TreeMap<>();
        SlotLayer layer = model.layers[slot];
        int made = 0;
        for (Label label : labels) {
            meter.spend(layer.size());
            for (int option = 0; option < layer.size(); option++) {
                Label next = extend(slot, layer, label, option);
                if (next != null) {
                    byFront.computeIfAbsent(next.front, front -> new ArrayList<>())
                            .add(next);
                    made++;
                }
            }
            if (made > 40L * width + 20_000) {
                complete = false;
                break;
            }
        }
        return narrowed(undominated(byFront.values()));
    }

    private List<Label> undominated(Iterable<List<Label>> byFront) {
        List<Label> kept = new ArrayList<>();
        for (List<Label> labels : byFront) {
            kept.addAll(undominated(labels));
        }
        return kept;
    }

    private List<Label> undominated(List<Label> labels) {
        labels.sort(Label::compareByCentre);
        List<Label> kept = new ArrayList<>();
        for (Label label : labels) {
            boolean dominated = false;
            for (int at = 0; at < kept.size() && !dominated; at++) {
                dominated = dominates(kept.get(at), label);
            }
            meter.spend(kept.size());
            if (!dominated) {
                kept.add(label);
            }
        }
        return kept;
    }

    /** Whether whatever completes the second completes the first at no more cost; the first costs no more so far. */
    private boolean dominates(Label first, Label second) {
        if (!first.takesNoMoreThan(second) || (model.tellsTakes && !first.takesTheSame(second))) {
            return false;
        }
        if (first.sameMembers(second)) {
            return true;
        }
        if (!comparable || !Arrays.equals(first.members, second.members) || !room.breakAlike(first, second)) {
            return false;
        }
        return first.centreBreaks < second.centreBreaks
                || first.centreWeight + slackWeight(first, second) <= second.centreWeight;
    }

    private long slackWeight(Label first, Label second) {
        long slack = 0;
        for (int group = 0; group < first.members.length; group++) {
            if (first.prints[group] != second.prints[group]) {
                double apart = first.sums[group] - second.sums[group];
                slack += terms.spread.slackWeight(group, model.members[group], apart);
            }
        }
        return slack;
    }

    private List<Label> narrowed(List<Label> labels) {
        if (labels.size() <= width) {
            return labels;
        }
        complete = false;
        labels.sort(Label::compareByTotal);
        return labels.subList(0, width);
    }

    /** The label with one more slot filled, or null if that breaks a limit or cannot beat the best plan. */
    private Label extend(int slot, SlotLayer layer, Label label, int option) {
        int changes = label.changes + layer.counted[option];
        if (changes >= model.changeCounts()) {
            return null;
        }
        int own = layer.fronts[option];
        boolean lands = own != SlotLayer.PASSES;
        int front = layer.frontAfter(option, label.front);
        long breaks = label.breaks + terms.breaks[slot][option] + (lands ? layer.gapBreaks(label.front, own) : 0);
        long gapWeight = lands ? layer.gapWeight(label.front, own) : 0;
        long weight = label.weight + terms.weights[slot][option] + gapWeight;
        long totalBreaks = breaks + chain.restBreaks(slot + 1, front, changes);
        if (!canBeat(totalBreaks, weight + chain.restWeight(slot + 1, front, changes))) {
            return null;
        }
        int[] uses = usesAfter(slot, layer.uses[option], label.uses);
        if (uses.length != label.uses.length) {
            return null;
        }
        Label next = new Label(label, option, front, changes, uses, model.groups.length);
        next.breaks = breaks;
        next.weight = weight;
        next.centreBreaks = label.centreBreaks + (lands ? layer.gapBreaks(label.front, own) : 0);
        next.centreWeight = label.centreWeight + gapWeight;
        return settled(slot, layer.options[option], next);
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
        LexCost limit = best.value();
        long allBreaks = totalBreaks - limitsCost.breaks();
        return allBreaks < limit.breaks()
                || (allBreaks == limit.breaks() && totalWeight - limitsCost.weight() < limit.weight());
    }

    private Label settled(int slot, ExactOption option, Label next) {
        LexCost own = ChoiceValue.own(option);
        next.centreBreaks += own.breaks();
        next.centreWeight += own.weight();
        int group = terms.matched(option);
        if (group >= 0) {
            double number = option.matchMeasureUnits();
            next.join(group, number, terms.spread.room(group, number) < 0);
            next.centreWeight += terms.spread.centreWeight(group, option.matchMeasureUnits());
        }
        for (int open = 0; open < lastSlots.length; open++) {
            if (lastSlots[open] == slot) {
                settle(slot, open, next);
            }
        }
        next.totalBreaks = next.breaks + chain.restBreaks(slot + 1, next.front, next.changes);
        next.totalWeight = next.weight + chain.restWeight(slot + 1, next.front, next.changes);
        return canBeat(next.totalBreaks, next.totalWeight) ? next : null;
    }

    /** Replaces the bound of what spread costs in a group that is complete by what it does cost. */
    private void settle(int slot, int group, Label label) {
        double[] numbers = new double[label.members[group]];
        int count = 0;
        int at = slot;
        for (Label each = label; each.parent != null; each = each.parent) {
            ExactOption option = model.layers[at--].options[each.option];
            if (terms.matched(option) == group) {
                numbers[count++] = option.matchMeasureUnits();
                label.breaks -= terms.spread.breaks(group, option.matchMeasureUnits());
                label.weight -= terms.spread.weight(group, option.matchMeasureUnits());
                label.centreWeight -= terms.spread.centreWeight(group, option.matchMeasureUnits());
            }
        }
        LexCost exact = count == 0 ? LexCost.NONE : ChoiceValue.spread(model.bag.spreadAim(), numbers);
        label.breaks += exact.breaks();
        label.weight += exact.weight();
        label.centreBreaks += exact.breaks();
        label.centreWeight += exact.weight();
        label.close(group);
    }
}
