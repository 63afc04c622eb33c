package org.bagwright.domain;

import java.util.List;
import java.util.OptionalInt;

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

    public OptionalInt mostChanges() {
        return golfer.mostChanges();
    }

    /** The gap wanted from a club to the next one that carries, metres. */
    public double wishAfterM(Option option) {
        return option.club().targets().gapWishM().orElse(gapWishM);
    }
}
