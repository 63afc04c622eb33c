package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.bagwright.domain.book.Aim;
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
        int changes = slots.stream()
                .mapToInt(slot ->
                        slot.stream().mapToInt(ExactOption::changes).max().orElseThrow())
                .sum();
        if (changes >= LexCost.WEIGHT_PER_MICROPOINT) {
            throw new IllegalArgumentException("too many changes to count: " + changes);
        }
    }

    private static boolean repeats(List<ExactOption> slot) {
        return slot.stream().mapToInt(ExactOption::index).distinct().count() < slot.size();
    }

    /** Whether spread costs anything at all. */
    boolean matches() {
        return spreadAim.importancePoints() > 0 || spreadAim.must();
    }

    public ExactBag withSlots(List<List<ExactOption>> other) {
        return new ExactBag(other, mostChanges, gapAim, spreadAim);
    }

    public ExactBag withMostChanges(int most) {
        return new ExactBag(slots, OptionalInt.of(most), gapAim, spreadAim);
    }

    /**
     * The bag without the options that a test refuses.
     *
     * @throws IllegalArgumentException if a slot is left without an option
     */
    public ExactBag only(Allowed allowed) {
        List<List<ExactOption>> left = new ArrayList<>();
        for (int slot = 0; slot < slots.size(); slot++) {
            int place = slot;
            left.add(slots.get(slot).stream()
                    .filter(option -> allowed.allows(place, option))
                    .toList());
        }
        return withSlots(left);
    }

    /** Whether a plan may take an option. */
    @FunctionalInterface
    public interface Allowed {
        /** Whether a plan may take this option in the slot at this place. */
        boolean allows(int slot, ExactOption option);
    }
}
