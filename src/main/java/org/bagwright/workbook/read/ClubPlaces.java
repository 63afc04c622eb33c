package org.bagwright.workbook.read;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ClubColumn;

/** Which clubs a golfer has and which slots they fill, also from rows with something wrong in them. */
final class ClubPlaces {
    private static final String RESERVED = "left out";

    private final Map<String, String> cellBySlotAndName = new HashMap<>();
    private final Map<String, NameIndex> namesByGolfer = new HashMap<>();
    private final NameIndex allNames = new NameIndex();

    NameIndex namesOf(String golfer) {
        return namesByGolfer.getOrDefault(CloseNames.key(golfer), new NameIndex());
    }

    /** The names of all golfers' clubs. */
    NameIndex allNames() {
        return allNames;
    }

    static String slotKey(String golferKey, int slot) {
        return golferKey + "\n" + slot;
    }

    /** Takes a club in and reports a name that cannot be, is in its slot already, or is in another slot too. */
    void take(InputRow row, String golferKey, OptionalInt slot, String club) {
        String cell = row.cell(ClubColumn.CLUB);
        allNames.add(club, cell);
        Optional<String> sameName =
                namesByGolfer.computeIfAbsent(golferKey, key -> new NameIndex()).add(club, cell);
        Optional<String> inSlot = slot.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(cellBySlotAndName.putIfAbsent(
                        slotKey(golferKey, slot.getAsInt()) + "\n" + CloseNames.key(club), cell));
        if (CloseNames.key(club).equals(RESERVED)) {
            row.problem(
                    ClubColumn.CLUB,
                    "club must not be called \"" + club + "\", the words for a slot without a club; expected another"
                            + " name.");
        }
        inSlot.ifPresentOrElse(
                first -> row.problem(
                        ClubColumn.CLUB,
                        "slot and club must be unique for a golfer, found \"" + club + "\" in slot " + slot.getAsInt()
                                + " again, first in " + first + "."),
                () -> sameName.ifPresent(first -> warnOfSecond(row, club, first)));
    }

    private static void warnOfSecond(InputRow row, String club, String first) {
        row.warning(
                ClubColumn.CLUB,
                "the club \"" + club + "\" is also in another slot, see " + first
                        + "; shots of that name count for both.");
    }
}
