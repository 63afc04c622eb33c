package org.bagwright.domain;

import java.util.List;
import java.util.OptionalInt;

/**
 * One golfer's bag with all options, ready to be searched.
 *
 * @param golfer whose bag
 * @param clubs the clubs by slot
 * @param gapWishesM for each carrying club but the last the gap wanted to the next carrying club, metres, in slot order
 * @param gapAim how much a gap counts
 */
public record BagOptions(Golfer golfer, List<ClubOptions> clubs, List<Double> gapWishesM, Aim gapAim) {
    public BagOptions {
        clubs = List.copyOf(clubs);
        gapWishesM = List.copyOf(gapWishesM);
        Checks.that(!clubs.isEmpty(), "a bag needs a club");
        Checks.that(gapAim.measure() == Measure.GAP, "the gap aim must be of gaps");
        Checks.that(gapWishesM.size() == Math.max(0, carrying(clubs).size() - 1), "one wish for every gap");
    }

    /** The positions in {@link #clubs} of the clubs that carry, in slot order. */
    public List<Integer> carryingIndexes() {
        return carrying(clubs);
    }

    public OptionalInt mostChanges() {
        return golfer.mostChanges();
    }

    private static List<Integer> carrying(List<ClubOptions> clubs) {
        return java.util.stream.IntStream.range(0, clubs.size())
                .filter(index -> clubs.get(index).club().kind().carries())
                .boxed()
                .toList();
    }
}
