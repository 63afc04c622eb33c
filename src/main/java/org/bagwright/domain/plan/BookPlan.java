package org.bagwright.domain.plan;

import java.util.List;

/**
 * What the search found for a book.
 *
 * @param bags a plan for each bag, in the order of the golfers
 * @param proof how good they are together
 */
public record BookPlan(List<BagPlan> bags, PlanProof proof) {

    public BookPlan {
        bags = List.copyOf(bags);
    }

    /** What no choice is below. */
    public PlanBounds bounds() {
        return proof.bounds();
    }

    /** Whether no choice at all is better. */
    public boolean proven() {
        return proof.proven();
    }
}
