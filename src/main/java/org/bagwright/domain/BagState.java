package org.bagwright.domain;

import java.util.List;
import java.util.Optional;

/**
 * One choice of options for a whole bag, with its score.
 *
 * @param chosen for each club, in the order of the bag, the index of its option
 * @param score how good it is
 * @param gaps the gaps it gives, in slot order
 */
public record BagState(List<Integer> chosen, BagScore score, List<GapTerm> gaps) {
    public BagState {
        chosen = List.copyOf(chosen);
        gaps = List.copyOf(gaps);
    }

    /** The gap from the club at this position of the bag to the next carrying one. */
    public Optional<GapTerm> gapAfter(int index) {
        return gaps.stream().filter(gap -> gap.fromIndex() == index).findFirst();
    }
}
