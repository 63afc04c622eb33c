package org.bagwright.workbook.plan;

import java.util.Locale;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;

/** The states of a bag that the sheet Plan shows side by side. */
public enum PlanState {
    TODAY,
    PLANNED,
    LIVE;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The label with a capital, as a heading has it. */
    String heading() {
        return name().charAt(0) + label().substring(1);
    }

    /** The state of a bag with which the sheet starts: the live choice starts as the plan. */
    public BagState of(BagResult bag) {
        return this == TODAY ? bag.today() : bag.planned();
    }
}
