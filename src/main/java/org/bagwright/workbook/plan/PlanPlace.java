package org.bagwright.workbook.plan;

import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.workbook.settings.SheetColumn;

/**
 * Where a slot is on the sheet Plan, and the bag around it.
 *
 * @param row its row, counted from 0
 * @param firstRow the first row of its golfer
 * @param lastRow the last row of its golfer
 * @param slot the slot
 */
record PlanPlace(int row, int firstRow, int lastRow, SlotOptions slot) {

    /** Whether one club has this slot for itself, so that a formula need not ask which one it is. */
    boolean fixed() {
        return !slot.hasCandidates();
    }

    boolean mayBeEmpty() {
        return slot.options().stream().anyMatch(Option::isEmpty);
    }

    /** The cells of a column for the golfer's whole bag. */
    String bag(SheetColumn column) {
        return column.from(firstRow, lastRow);
    }

    String at(SheetColumn column) {
        return column.at(row);
    }

    String at(PlanState state, PlanQuantity quantity) {
        return PlanColumn.of(state, quantity).at(row);
    }
}
