package org.bagwright.domain.plan;

import java.util.List;
import java.util.Optional;

/**
 * One choice of options for a whole bag, with its score.
 *
 * @param chosen for each slot, in the order of the bag, the index of its option
 * @param score how good it is
 * @param gaps the gaps it gives, in slot order
 * @param spreads how its clubs differ from their groups, in slot order
 */
public record BagState(List<Integer> chosen, BagScore score, List<GapTerm> gaps, List<SpreadTerm> spreads) {

    public BagState {
        chosen = List.copyOf(chosen);
        gaps = List.copyOf(gaps);
        spreads = List.copyOf(spreads);
    }

    /** The gap from the club in the slot at this position of the bag to the next carrying one. */
    public Optional<GapTerm> gapAfter(int index) {
        return gaps.stream().filter(gap -> gap.fromIndex() == index).findFirst();
    }

    /** How the club in the slot at this position of the bag differs from its group. */
    public Optional<SpreadTerm> spreadAt(int index) {
        return spreads.stream().filter(spread -> spread.index() == index).findFirst();
    }
}
