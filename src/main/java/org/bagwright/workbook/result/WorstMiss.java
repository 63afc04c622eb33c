package org.bagwright.workbook.result;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagFigures;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;

/** The worst miss of a bag in one state; empty for a bag without a club. */
record WorstMiss(BagResult bag, BagState state, Optional<BagFigures.Miss> miss) {

    WorstMiss(BagResult bag, BagState state, Aims aims) {
        this(bag, state, BagFigures.worstMiss(bag, state, aims));
    }

    /** How large it is, in tolerances. */
    OptionalDouble toleranceRatio() {
        return miss.stream().mapToDouble(BagFigures.Miss::toleranceRatio).findFirst();
    }

    /** Where it is, such as {@code gap after 7 wood} or {@code lie of 9 iron}. */
    String where() {
        return miss.map(this::where).orElse("");
    }

    private String where(BagFigures.Miss worst) {
        String club = bag.optionsOf(state).get(worst.index()).clubText();
        return worst.measure() == Measure.GAP
                ? "gap after " + club
                : worst.measure().label() + " of " + club;
    }
}
