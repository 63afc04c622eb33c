package org.bagwright.workbook.plan;

/** Where the sheet Plan finds a number of a slot. */
@FunctionalInterface
interface ValueFormula {
    /** The cell or formula with the number of a state. */
    String of(PlanState state, PlanPlace place);
}
