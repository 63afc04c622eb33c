package org.bagwright.domain.option;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.units.Checks;

/**
 * One golfer's bag with all options, ready to be searched.
 *
 * @param golfer whose bag
 * @param slots the slots in order
 * @param gapWishM the gap he wants where a club's row asks for no other, metres
 * @param gapAim how much a gap counts
 * @param spreadAim how much it counts when a club differs from the mean of its group
 */
public record BagOptions(Golfer golfer, List<SlotOptions> slots, double gapWishM, Aim gapAim, Aim spreadAim) {

    public BagOptions {
        slots = List.copyOf(slots);
        Checks.that(!slots.isEmpty(), "a bag needs a slot");
        Checks.finite(gapWishM, "gap wish");
        Checks.that(gapAim.measure() == Measure.GAP, "the gap aim must be of gaps");
        Checks.that(spreadAim.measure() == Measure.SPREAD, "the spread aim must be of spread");
    }

    /**
     * The options of a choice, in the order of the slots.
     *
     * @param chosen for each slot the index of its option
     */
    public List<Option> chosen(List<Integer> chosen) {
        Checks.that(chosen.size() == slots.size(), "a choice needs one option for each slot of the bag");
        return IntStream.range(0, slots.size())
                .mapToObj(slot -> slots.get(slot).options().get(chosen.get(slot)))
                .toList();
    }

    /** How many of an item, by its place in the stock, a choice takes. */
    public int taken(int item, List<Integer> chosen) {
        return chosen(chosen).stream()
                .mapToInt(option -> option.takes().get(item))
                .sum();
    }

    public OptionalInt mostChanges() {
        return golfer.mostChanges();
    }

    /** The gap wanted from a club to the next one that carries, metres. */
    public double wishAfterM(Option option) {
        return option.club().targets().gapWishM().orElse(gapWishM);
    }
}
