package org.bagwright.domain.plan;

import java.util.List;
import java.util.OptionalInt;

/**
 * What one rule of the score breaks in one place of a plan, as the score itself has found it.
 *
 * @param rule the name of the rule, such as {@code gap must}
 * @param bags the places of the bags in the book that it is about; all that take of an item for the stock
 * @param slots the places of the slots in their bag; none where it is about a bag as a whole
 * @param hard pieces, changes or clubs beyond what there is or may be
 * @param mustThousandths thousandths of a tolerance
 */
public record BrokenRule(String rule, List<Integer> bags, List<Integer> slots, long hard, long mustThousandths) {
    public BrokenRule {
        bags = List.copyOf(bags);
        slots = List.copyOf(slots);
    }

    /** Whether it is about the slot at this position of its bag; a rule of a whole bag is about all of them. */
    public boolean isAt(OptionalInt slot) {
        return slots.isEmpty() || (slot.isPresent() && slots.contains(slot.getAsInt()));
    }
}
