package org.bagwright.workbook.result;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.Miss;

/** The worst miss of a bag in one state; empty for a bag without a club. */
record WorstMiss(BagResult bag, BagState state, Optional<Miss> miss) {

    WorstMiss(BagResult bag, BagState state) {
        this(bag, state, bag.worstMiss(state));
    }

    /** How large it is, in tolerances. */
    OptionalDouble toleranceRatio() {
        return miss.stream().mapToDouble(Miss::toleranceRatio).findFirst();
    }

    /** Where it is, such as {@code gap after 7 wood} or {@code lie of 9 iron}. */
    String where() {
        return miss.map(this::where).orElse("");
    }

    private String where(Miss worst) {
        String club = bag.optionsOf(state).get(worst.index()).clubText();
        String of = worst.measure().scope() == Measure.Scope.NEIGHBOURS ? " after " : " of ";
        return worst.measure().label() + of + club;
    }
}
