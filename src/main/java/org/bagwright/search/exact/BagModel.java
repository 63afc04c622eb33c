package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * A bag prepared for the passes of the exact search: only the limits that can bind, only the groups that can cost
 * anything, and of equivalent options only the cheapest. Built again whenever options are ruled out, since with fewer
 * options fewer limits bind.
 */
final class BagModel {
    final ExactBag bag;
    final SlotLayer[] layers;

    /** The resources whose limits can bind. */
    final int[] resources;

    /** How much of each of them there is. */
    final int[] available;

    /** The groups that could cost anything at the start, with the clubs left in each. */
    final MatchGroups groups;

    /** Whether what a choice takes of the stock matters even where this bag's limits cannot bind: for a team. */
    final boolean stockMatters;

    private final BagLimits limits;

    /** All options that do not break a limit whatever the other slots hold. */
    private final List<List<ExactOption>> possible;

    /** Whether the changes are counted: only where the limit can bind. */
    private final boolean countsChanges;

    /** What makes a difference between options apart from their cost. */
    private record Traits(
            Optional<ExactOption.Flight> flight, int changes, List<Integer> uses, Optional<ExactOption.Match> match) {}

    BagModel(ExactBag bag, BagLimits limits, boolean stockMatters) {
        this(bag, limits, bag.slots(), MatchGroups.of(bag), stockMatters);
    }

    private BagModel(
            ExactBag bag, BagLimits limits, List<List<ExactOption>> slots, MatchGroups before, boolean stockMatters) {
        this.bag = bag;
        this.limits = limits;
        this.stockMatters = stockMatters;
        possible = limits.possible(slots);
        countsChanges = most(possible, ExactOption::changes) > limits.mostChanges();
        resources = IntStream.range(0, limits.resources())
                .filter(resource -> most(possible, option -> option.needs().of(resource)) > mostIgnored(resource))
                .toArray();
        available = IntStream.of(resources).map(limits::limit).toArray();
        groups = before.in(possible);
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
                option.match().filter(match -> groups.of(option) >= 0));
    }

    private static ExactOption cheaper(ExactOption one, ExactOption other) {
        int order = one.own().compareTo(other.own());
        return order < 0 || (order == 0 && one.index() <= other.index()) ? one : other;
    }

    /** What no choice weighs less than, whatever it breaks: each club by itself and the gaps. */
    long leastWeight() {
        long[] rest = new long[layers[layers.length - 1].frontsAfter()];
        for (int slot = layers.length - 1; slot >= 0; slot--) {
            rest = layers[slot].leastWeights(possible.get(slot), rest);
        }
        return rest[0];
    }

    /** How many different counts of changes there are. */
    int changeCounts() {
        return countsChanges ? limits.mostChanges() + 1 : 1;
    }

    /** Whether clubs can break a must together by their groups. */
    boolean hasSpreadMust() {
        return groups.count() > 0 && bag.spreadAim().isHard();
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
