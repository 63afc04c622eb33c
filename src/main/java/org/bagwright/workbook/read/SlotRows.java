package org.bagwright.workbook.read;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumns;

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
            slot.defaultCell = row.cell(ClubColumns.SLOT);
        }
        if (inBag.orElse(false)) {
            slot.inBagCell.ifPresent(cell -> row.problem(
                    ClubColumns.IN_BAG,
                    "a slot must have one club in the bag today, found yes again, first in " + cell
                            + "; expected no in one of them."));
            slot.inBagCell = slot.inBagCell.or(() -> Optional.of(row.cell(ClubColumns.IN_BAG)));
        }
        if (pinned) {
            slot.pinnedCell.ifPresent(cell -> row.problem(
                    ClubColumns.PINNED,
                    "a slot must have at most one pinned club, found yes again, first in " + cell
                            + "; expected no in one of them."));
            slot.pinnedCell = slot.pinnedCell.or(() -> Optional.of(row.cell(ClubColumns.PINNED)));
        }
    }

    /** Whether a row is the club in the bag today; known once all rows are taken in. */
    boolean isInBag(InputRow row, String slotKey) {
        Slot slot = byKey.get(slotKey);
        return slot.inBagCell
                .map(cell -> cell.equals(row.cell(ClubColumns.IN_BAG)))
                .orElseGet(() -> slot.defaultCell.equals(row.cell(ClubColumns.SLOT)));
    }
}
