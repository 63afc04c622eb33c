package org.bagwright.domain.plan;

import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.units.Checks;

/**
 * How far the longest club flies short of today's longest club, and what that costs. The longest club is the first in
 * slot order that flies, of the plan as of today's bag, whatever carries the others have.
 *
 * @param index position of its slot in the bag
 * @param carryM its carry, metres
 * @param todayM the carry of today's longest club, metres
 * @param shortM how much less far it flies than that, metres, 0 or more
 * @param terms what it costs
 */
public record ReachTerm(int index, double carryM, double todayM, double shortM, Terms terms) {
    public ReachTerm {
        Checks.notNegative(shortM, "what the longest club lacks");
    }

    /** The term of a longest club. */
    public static ReachTerm of(int index, Aim aim, double carryM, double todayM) {
        double shortM = Math.max(0, todayM - carryM);
        return new ReachTerm(index, carryM, todayM, shortM, Terms.of(aim, shortM));
    }
}
