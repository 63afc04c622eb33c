package org.bagwright.domain.plan;

import java.util.List;

/**
 * What the search found for one bag.
 *
 * @param chosen for each slot, in the order of the bag, the index of its option
 * @param score how good it is
 */
public record BagPlan(List<Integer> chosen, BagScore score) {

    public BagPlan {
        chosen = List.copyOf(chosen);
    }
}
