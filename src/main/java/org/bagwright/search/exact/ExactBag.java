package org.bagwright.search.exact;

import java.util.List;
import java.util.OptionalInt;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;

/**
 * One golfer's bag for the exact search.
 *
 * @param slots for each slot, in slot order, what may fill it
 * @param mostChanges the most items that may change; empty for no limit
 * @param gapAim how much gaps count
 * @param spreadAim how much it counts that matched clubs differ from their mean
 */
public record ExactBag(List<List<ExactOption>> slots, OptionalInt mostChanges, Aim gapAim, Aim spreadAim) {
    public ExactBag {
        slots = slots.stream().map(List::copyOf).toList();
        if (slots.isEmpty() || slots.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("every slot needs an option");
        }
        if (slots.stream().anyMatch(ExactBag::repeats)) {
            throw new IllegalArgumentException("the options of a slot need different indexes");
        }
        int changes = slots.stream().mapToInt(ExactBag::mostChanges).sum();
        if (changes >= LexCost.WEIGHT_PER_MICROPOINT) {
            throw new IllegalArgumentException("too many changes to count: " + changes);
        }
    }

    private static boolean repeats(List<ExactOption> slot) {
        return slot.stream().mapToInt(ExactOption::index).distinct().count() < slot.size();
    }

    /** The most changes of any option of a slot. */
    public static int mostChanges(List<ExactOption> slot) {
        return slot.stream().mapToInt(ExactOption::changes).max().orElseThrow();
    }

    /** The most items that may change; the largest whole number if there is no limit. */
    public int changesLimit() {
        return mostChanges.orElse(Integer.MAX_VALUE);
    }

    /** Whether spread costs anything at all. */
    boolean matches() {
        return spreadAim.importancePoints() > 0 || spreadAim.must();
    }

    /** The option of a slot that has an index. */
    public ExactOption option(int slot, int index) {
        return slots.get(slot).stream()
                .filter(option -> option.index() == index)
                .findFirst()
                .orElseThrow();
    }

    ExactBag withSlots(List<List<ExactOption>> other) {
        return new ExactBag(other, mostChanges, gapAim, spreadAim);
    }

    public ExactBag withMostChanges(int most) {
        return new ExactBag(slots, OptionalInt.of(most), gapAim, spreadAim);
    }

    /** What a choice of one option for each slot costs, summed term by term. */
    public LexCost cost(List<ExactOption> chosen) {
        LexCost cost = LexCost.NONE;
        ExactOption.Flight before = null;
        for (ExactOption option : chosen) {
            cost = cost.plus(option.own());
            if (option.flies()) {
                ExactOption.Flight flight = option.flight().orElseThrow();
                cost = cost.plus(before == null ? flight.first() : before.gap(gapAim, flight));
                before = flight;
            }
        }
        return matches() ? cost.plus(spread(chosen)) : cost;
    }

    private LexCost spread(List<ExactOption> chosen) {
        return chosen.stream()
                .mapToInt(ExactOption::group)
                .filter(group -> group >= 0)
                .distinct()
                .mapToObj(group -> spread(chosen, group))
                .reduce(LexCost.NONE, LexCost::plus);
    }

    private LexCost spread(List<ExactOption> chosen, int group) {
        return spreadOf(chosen.stream()
                .filter(option -> option.group() == group)
                .map(ExactOption::matchMeasureUnits)
                .toList());
    }

    /** What it costs that the clubs of one group differ from their mean. */
    LexCost spreadOf(List<Double> members) {
        Cost cost = Cost.spread(spreadAim, members);
        return new LexCost(cost.breaks(), LexCost.weight(cost.micropoints(), 0));
    }
}
