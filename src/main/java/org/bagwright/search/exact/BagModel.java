package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * A bag prepared for the passes of the exact search: only the limits that can bite, only the groups that can cost
 * anything, and of equivalent options only the cheapest. Built again whenever options are ruled out, since with fewer
 * options fewer limits bite.
 */
final class BagModel {
    final ExactBag bag;
    final SlotLayer[] layers;

    /** The resources whose limits can bite. */
    final int[] resources;

    /** How much of each of them there is. */
    final int[] available;

    /** The groups that could cost anything at the start; the search knows a group by its place here. */
    final int[] groups;

    /** In how many slots a club of each group can be. */
    final int[] members;

    /** Whether what a choice takes of the stock matters even where this bag's limits cannot bite: for a team. */
    final boolean stockMatters;

    private final BagLimits limits;

    /** Whether the changes are counted: only where the limit can bite. */
    private final boolean countsChanges;

    /** What makes a difference between options besides their cost. */
    private record Traits(
            Optional<ExactOption.Flight> flight, int changes, List<Integer> uses, Optional<ExactOption.Match> match) {}

    BagModel(ExactBag bag, BagLimits limits, boolean stockMatters) {
        this(bag, limits, bag.slots(), bag.matches() ? groups(bag.slots()) : new int[0], stockMatters);
    }

    private BagModel(
            ExactBag bag, BagLimits limits, List<List<ExactOption>> slots, int[] groups, boolean stockMatters) {
        this.bag = bag;
        this.limits = limits;
        this.stockMatters = stockMatters;
        this.groups = groups;
        List<List<ExactOption>> possible = limits.possible(slots);
        countsChanges = most(possible, ExactOption::changes) > limits.mostChanges();
        resources = IntStream.range(0, limits.resources())
                .filter(resource -> most(possible, option -> option.needs().of(resource)) > mostIgnored(resource))
                .toArray();
        available = IntStream.of(resources).map(limits::limit).toArray();
        members = members(possible);
        layers = new SlotLayer[slots.size()];
        List<Optional<ExactOption.Flight>> flights = SlotLayer.NONE_FLIES;
        for (int slot = 0; slot < layers.length; slot++) {
            List<ExactOption> filled = cheapest(possible.get(slot));
            layers[slot] = new SlotLayer(flights, filled, countsChanges, resources, bag.gapAim());
            flights = layers[slot].flightsAfter();
        }
    }

    private int mostIgnored(int resource) {
        return stockMatters && resource < limits.stock().size() ? 0 : limits.limit(resource);
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

    /** The cheapest of the options with the same traits. */
    private List<ExactOption> cheapest(List<ExactOption> options) {
        Map<Traits, ExactOption> best = new HashMap<>();
        for (ExactOption option : options) {
            best.merge(traits(option), option, BagModel::cheaper);
        }
        List<ExactOption> kept = new ArrayList<>(best.values());
        kept.sort(Comparator.comparingInt(ExactOption::index));
        return kept;
    }

    private Traits traits(ExactOption option) {
        List<Integer> uses = IntStream.of(resources)
                .map(resource -> option.needs().of(resource))
                .boxed()
                .toList();
        return new Traits(
                option.flight(),
                countsChanges ? option.changes() : 0,
                uses,
                option.match().filter(match -> group(option) >= 0));
    }

    private static ExactOption cheaper(ExactOption one, ExactOption other) {
        int order = one.own().compareTo(other.own());
        return order < 0 || (order == 0 && one.index() <= other.index()) ? one : other;
    }

    /** The place of an option's group among the groups that can cost anything, or {@link ExactOption#NO_GROUP}. */
    int group(ExactOption option) {
        for (int place = 0; place < groups.length; place++) {
            if (groups[place] == option.group()) {
                return place;
            }
        }
        return ExactOption.NO_GROUP;
    }

    /** The place of an option's group if the option can differ from the mean there. */
    int matched(ExactOption option) {
        int group = group(option);
        return group >= 0 && members[group] > 1 ? group : ExactOption.NO_GROUP;
    }

    /** How many different counts of changes there are. */
    int changeCounts() {
        return countsChanges ? limits.mostChanges() + 1 : 1;
    }

    int size() {
        int size = 0;
        for (SlotLayer layer : layers) {
            size += layer.size();
        }
        return size;
    }

    /** Whether every slot has an option left. */
    boolean isPossible() {
        for (SlotLayer layer : layers) {
            if (layer.size() == 0) {
                return false;
            }
        }
        return true;
    }

    /** The same bag with only those options that are marked. */
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
        return new BagModel(bag, limits, kept, groups, stockMatters);
    }

    /** The options at these places, one for each slot. */
    List<ExactOption> chosen(int[] places) {
        return IntStream.range(0, places.length)
                .mapToObj(slot -> layers[slot].options[places[slot]])
                .toList();
    }
}
