package org.bagwright.planning.sureness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.SlotOptions;

/**
 * The options of one slot that can be best: of those that carry alike, the cheapest. Where many are left, carries count as
 * alike that are farther apart, until few enough are. The planned option is always among them, and today's where a plan may
 * take it.
 *
 * @param bag the bag
 * @param slot the slot
 * @param planned the place of the planned option in the slot
 */
record ThinnedSlot(BagOptions bag, SlotOptions slot, int planned) {
    private static final double SAME_M = 1e-6;
    private static final double FIRST_WIDTH_M = 0.05;

    /** What an option has in common with those from which it differs by its own cost alone. */
    private record Likeness(
            Optional<Club> club, Optional<ClubWishes> wishes, long place, int changes, CarryDoubt doubt) {}

    /** The options, at most so many but for the planned one and today's, in the order of the book. */
    List<ChainOption> options(int most) {
        List<ChainOption> possible = possible();
        List<ChainOption> kept = cheapest(possible, SAME_M, true);
        for (double widthM = FIRST_WIDTH_M; kept.size() > most && widthM < 1e3; widthM *= 2) {
            kept = cheapest(possible, widthM, false);
        }
        Set<ChainOption> all = new LinkedHashSet<>(kept);
        possible.stream()
                .filter(option -> option.index() == planned || option.index() == slot.todayIndex())
                .forEach(all::add);
        return all.stream().sorted(Comparator.comparingInt(ChainOption::index)).toList();
    }

    /** Those that a plan may take; of closed ones only where there are no others. */
    private List<ChainOption> possible() {
        boolean held = bag.slots().size() > BagOptions.MOST_CLUBS;
        boolean plannedEmpty = slot.options().get(planned).isEmpty();
        boolean anyOpen = slot.openIndexes().stream()
                .anyMatch(index -> slot.options().get(index).open());
        return Stream.concat(slot.openIndexes().stream(), Stream.of(planned))
                .distinct()
                .map(index -> new ChainOption(bag, index, slot.options().get(index)))
                .filter(option -> !anyOpen || option.option().open() || option.index() == planned)
                .filter(option -> !held || option.option().isEmpty() == plannedEmpty)
                .toList();
    }

    private List<ChainOption> cheapest(List<ChainOption> options, double widthM, boolean sameDoubt) {
        Map<Likeness, ChainOption> cheapest = new LinkedHashMap<>();
        for (ChainOption option : options) {
            cheapest.merge(likeness(option, widthM, sameDoubt), option, this::better);
        }
        return new ArrayList<>(cheapest.values());
    }

    private Likeness likeness(ChainOption option, double widthM, boolean sameDoubt) {
        return new Likeness(
                option.option().setup().map(ClubSetup::club),
                option.option().setup().map(ClubSetup::wishes),
                option.flies() ? (long) Math.floor(option.carryM() / widthM) : 0,
                bag.mostChanges().isPresent() ? option.changes() : 0,
                sameDoubt ? option.doubt() : CarryDoubt.NONE);
    }

    /** The one that breaks less, then costs less; of equals the planned one, then the first. */
    private ChainOption better(ChainOption one, ChainOption other) {
        int breaks = Double.compare(one.breakThousandths(), other.breakThousandths());
        if (breaks != 0) {
            return breaks < 0 ? one : other;
        }
        if (Math.abs(one.points() - other.points()) > 1e-9) {
            return one.points() < other.points() ? one : other;
        }
        return other.index() == planned ? other : one;
    }
}
