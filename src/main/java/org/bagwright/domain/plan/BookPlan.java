package org.bagwright.domain.plan;

import java.util.List;

/**
 * What the search found for a book.
 *
 * @param bags a plan for each bag, in the order of the golfers
 * @param bounds what no choice is below
 * @param proven whether no choice at all is better
 */
public record BookPlan(List<BagPlan> bags, PlanBounds bounds, boolean proven) {

    public BookPlan {
        bags = List.copyOf(bags);
    }
}
