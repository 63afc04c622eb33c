package org.bagwright.domain;

import java.util.List;

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
}
