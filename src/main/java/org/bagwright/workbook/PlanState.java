package org.bagwright.workbook;

import java.util.Locale;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;

/** The states of a bag that the sheet Plan shows beside each other. */
enum PlanState {
    TODAY,
    PLANNED,
    LIVE;

    String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The state of a bag with which the sheet starts: the live choice starts as the plan. */
    BagState of(BagResult bag) {
        return this == TODAY ? bag.today() : bag.planned();
    }
}
