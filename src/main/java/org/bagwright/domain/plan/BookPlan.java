package org.bagwright.domain.plan;

import java.util.List;
import org.bagwright.domain.units.Checks;

/**
 * What the search found for a book.
 *
 * @param bags a plan for each bag, in the order of the golfers
 * @param boundPoints no choice with as few hard breaks has a penalty below this, points
 * @param proven whether no choice at all is better
 */
public record BookPlan(List<BagPlan> bags, double boundPoints, boolean proven) {

    public BookPlan {
        bags = List.copyOf(bags);
        Checks.finite(boundPoints, "bound");
    }
}
