package org.bagwright.domain.plan;

import java.util.List;

/**
 * What is known of how good the plan of a book is.
 *
 * @param bounds what no choice is below
 * @param proven whether no choice at all is better
 * @param broken what the plan breaks, rule by rule and place by place, as the score has found it
 */
public record PlanProof(PlanBounds bounds, boolean proven, List<BrokenRule> broken) {
    public PlanProof {
        broken = List.copyOf(broken);
    }

    /** What it breaks in the bag at a place in the book; not the stock, which all bags share. */
    public List<BrokenRule> brokenIn(int bag) {
        return broken.stream().filter(rule -> rule.bags().equals(List.of(bag))).toList();
    }
}
