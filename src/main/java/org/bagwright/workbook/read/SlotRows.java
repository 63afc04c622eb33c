package org.bagwright.workbook.read;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/** Which of the rows of a slot is the club in the bag today, and which is pinned. */
final class SlotRows {
    private static final class Slot {
        private String defaultCell = "";
        private Optional<String> inBagCell = Optional.empty();
        private Optional<String> pinnedCell = Optional.empty();
    }

    private final Map<String, Slot> byKey = new HashMap<>();

    /** Takes a row in and reports a second one that is in the bag or pinned. */
    void take(InputRow row, String slotKey, Optional<Boolean> inBag, boolean pinned) {
        boolean first = !byKey.containsKey(slotKey);
        Slot slot = byKey.computeIfAbsent(slotKey, key -> new Slot());
        if (first && inBag.isEmpty()) {
            slot.defaultCell = row.cell(ClubColumn.SLOT);
        }
        if (inBag.orElse(false)) {
            slot.inBagCell = first(slot.inBagCell, row, ClubColumn.IN_BAG, "one club in the bag today");
        }
        if (pinned) {
            slot.pinnedCell = first(slot.pinnedCell, row, ClubColumn.PINNED, "at most one pinned club");
        }
    }

    private static Optional<String> first(Optional<String> earlier, InputRow row, Column column, String must) {
        earlier.ifPresent(cell -> row.problem(
                column,
                "a slot must have " + must + ", found yes again, first in " + cell + "; expected no in one of them."));
        return earlier.or(() -> Optional.of(row.cell(column)));
    }

    /** Whether a row is the club in the bag today; known once all rows are taken in. */
    boolean isInBag(InputRow row, String slotKey) {
        Slot slot = byKey.get(slotKey);
        return slot.inBagCell
                .map(cell -> cell.equals(row.cell(ClubColumn.IN_BAG)))
                .orElseGet(() -> slot.defaultCell.equals(row.cell(ClubColumn.SLOT)));
    }
}
