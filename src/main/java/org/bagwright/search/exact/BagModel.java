package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * A bag made ready for the passes of the exact search: only the limits that can bite, only the groups that can cost
 * anything, and of options that nothing can tell apart only the cheapest. Built anew whenever options are ruled out,
 * since with fewer options fewer limits bite.
 */
public final class BagModel {
    final ExactBag bag;
    final BagLimits limits;
    public final SlotLayer[] layers;

    /** Whether the changes are counted: only where the limit can bite. */
    final boolean counts;

    /** The resources whose limits can bite. */
    public final int[] resources;

    /** How much of each of them there is. */
    final int[] available;

    /** The groups that could cost anything at the start; elsewhere a group is known by its place here. */
    public final int[] groups;

    /** In how many slots a club of each group can be. */
    final int[] members;

    private record Likeness(
            boolean flies,
            double carryM,
            double wishM,
            int changes,
            List<Integer> uses,
            int group,
            double matchMeasureUnits) {}

    /** Whether what a choice takes of the stock matters even where this bag's limits cannot bite: for a team. */
    final boolean tellsTakes;

    public BagModel(ExactBag bag, BagLimits limits, boolean tellsTakes) {
        this(bag, limits, bag.slots(), bag.matches() ? groups(bag.slots()) : new int[0], tellsTakes);
    }

    private BagModel(ExactBag bag, BagLimits limits, List<List<ExactOption>> slots, int[] groups, boolean tellsTakes) {
        this.bag = bag;
        this.limits = limits;
        this.tellsTakes = tellsTakes;
        this.groups = groups;
        List<List<ExactOption>> possible = possible(limits, slots);
        counts = most(possible, ExactOption::changes) > limits.mostChanges();
        resources = IntStream.range(0, limits.resources())
                .filter(resource -> most(possible, option -> BagLimits.use(option, resource)) > mostIgnored(resource))
                .toArray();
        available = IntStream.of(resources).map(limits::limit).toArray();
        members = members(possible);
        layers = new SlotLayer[slots.size()];
        SlotLayer before = SlotLayer.nothing();
        for (int slot = 0; slot < layers.length; slot++) {
            before = new SlotLayer(before, unlike(possible.get(slot)), counts, resources, bag.gapAim());
            layers[slot] = before;
        }
    }

    private int mostIgnored(int resource) {
        return tellsTakes && resource < limits.stock().size() ? 0 : limits.limit(resource);
    }

    /** Without the options that break a limit whatever the other slots hold. */
    private static List<List<ExactOption>> possible(BagLimits limits, List<List<ExactOption>> slots) {
        List<List<ExactOption>> left = slots;
        for (int resource = 0; resource < limits.resources(); resource++) {
            int item = resource;
            left = within(left, option -> BagLimits.use(option, item), limits.limit(resource));
        }
        return within(left, ExactOption::changes, limits.mostChanges());
    }

    private static List<List<ExactOption>> within(
            List<List<ExactOption>> slots, ToIntFunction<ExactOption> use, int limit) {
        int[] least = slots.stream()
                .mapToInt(slot -> slot.stream().mapToInt(use).min().orElse(0))
                .toArray();
        int spare = limit - IntStream.of(least).sum();
        return IntStream.range(0, least.length)
                .mapToObj(slot -> slots.get(slot).stream()
                        .filter(option -> use.applyAsInt(option) <= least[slot] + spare)
                        .toList())
                .toList();
    }

    private static long most(List<List<ExactOption>> slots, ToIntFunction<ExactOption> use) {
        return slots.stream()
                .mapToLong(slot -> slot.stream().mapToInt(use).max().orElse(0))
                .sum();
    }

    /** The groups of which two clubs can be carried. */
    private static int[] groups(List<List<ExactOption>> slots) {
        Map<Integer, Integer> members = new LinkedHashMap<>();
        for (List<ExactOption> slot : slots) {
            Set<Integer> seen = new HashSet<>();
            slot.stream()
                    .map(ExactOption::group)
                    .filter(seen::add)
                    .forEach(group -> members.merge(group, 1, Integer::sum));
        }
        return members.entrySet().stream()
                .filter(entry -> entry.getKey() >= 0 && entry.getValue() > 1)
                .mapToInt(Map.Entry::getKey)
                .sorted()
                .toArray();
    }

    private int[] members(List<List<ExactOption>> slots) {
        return IntStream.of(groups)
                .map(group -> (int) slots.stream()
                        .filter(slot -> slot.stream().anyMatch(option -> option.group() == group))
                        .count())
                .toArray();
    }

    private List<ExactOption> unlike(List<ExactOption> options) {
        Map<Likeness, ExactOption> best = new HashMap<>();
        for (ExactOption option : options) {
            best.merge(likeness(option), option, BagModel::cheaper);
        }
        List<ExactOption> kept = new ArrayList<>(best.values());
        kept.sort(java.util.Comparator.comparingInt(ExactOption::index));
        return kept;
    }

    private Likeness likeness(ExactOption option) {
        int group = group(option);
        return new Likeness(
                option.flies(),
                option.flies() ? option.carryM() : 0,
                option.flies() ? option.wishM() : 0,
                counts ? option.changes() : 0,
                IntStream.of(resources)
                        .map(resource -> BagLimits.use(option, resource))
                        .boxed()
                        .toList(),
                group,
                group < 0 ? 0 : option.matchMeasureUnits());
    }

    private static ExactOption cheaper(ExactOption one, ExactOption other) {
        int order = ChoiceValue.own(one).compareTo(ChoiceValue.own(other));
        return order < 0 || (order == 0 && one.index() <= other.index()) ? one : other;
    }

    /** The place of an option's group among the groups that can cost anything, or -1. */
    int group(ExactOption option) {
        for (int place = 0; place < groups.length; place++) {
            if (groups[place] == option.group()) {
                return place;
            }
        }
        return ExactOption.NO_GROUP;
    }

    /** How many counts of changes are told apart. */
    int changeCounts() {
        return counts ? limits.mostChanges() + 1 : 1;
    }

    int size() {
        int size = 0;
        for (SlotLayer layer : layers) {
            size += layer.size();
        }
        return size;
    }

    boolean possible() {
        for (SlotLayer layer : layers) {
            if (layer.size() == 0) {
                return false;
            }
        }
        return true;
    }

    /** The same bag with those options only that are marked. */
    BagModel keep(boolean[][] marked) {
        List<List<ExactOption>> kept = new ArrayList<>();
        for (int slot = 0; slot < layers.length; slot++) {
            ExactOption[] options = layers[slot].options;
            boolean[] marks = marked[slot];
            kept.add(IntStream.range(0, options.length)
                    .filter(option -> marks[option])
                    .mapToObj(option -> options[option])
                    .toList());
        }
        return new BagModel(bag, limits, kept, groups, tellsTakes);
    }

    /** The options at these places, one for each slot. */
    List<ExactOption> chosen(int[] places) {
        return IntStream.range(0, places.length)
                .mapToObj(slot -> layers[slot].options[places[slot]])
                .toList();
    }

    long work() {
        long work = 0;
        for (SlotLayer layer : layers) {
            work += layer.work();
        }
        return work * changeCounts();
    }
}
