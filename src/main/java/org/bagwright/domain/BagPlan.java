package org.bagwright.domain;

import java.util.List;

/**
 * What the search found for one bag.
 *
 * @param chosen for each club, in the order of the bag, the index of its option
 * @param score how good it is
 * @param boundPoints no choice with as few hard breaks has a penalty below this, points
 * @param proven whether no choice at all is better
 */
public record BagPlan(List<Integer> chosen, BagScore score, double boundPoints, boolean proven) {
    public BagPlan {
        chosen = List.copyOf(chosen);
        Checks.finite(boundPoints, "bound");
    }
}
