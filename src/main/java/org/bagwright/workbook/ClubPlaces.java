package org.bagwright.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Which clubs a golfer has and which slots they fill, also from rows with something wrong in them. */
final class ClubPlaces {
    private record Placed(String club, String clubCell, String slotCell) {}

    private final Map<String, Placed> bySlot = new HashMap<>();
    private final Map<String, NameIndex> namesByGolfer = new HashMap<>();

    NameIndex namesOf(String golfer) {
        return namesByGolfer.getOrDefault(CloseNames.key(golfer), new NameIndex());
    }

    /** Takes a club in and reports a slot or a name that is taken already. */
    void take(InputRow row, String golferKey, OptionalInt slot, String club) {
        Placed here = new Placed(club, row.cell(ClubColumns.CLUB), row.cell(ClubColumns.SLOT));
        Optional<String> sameName =
                namesByGolfer.computeIfAbsent(golferKey, key -> new NameIndex()).add(club, here.clubCell());
        Placed earlier = slot.isEmpty() ? null : bySlot.putIfAbsent(golferKey + "\n" + slot.getAsInt(), here);
        if (earlier == null) {
            sameName.ifPresent(first -> row.warning(
                    ClubColumns.CLUB,
                    "the club \"" + club + "\" is also in another slot, see " + first
                            + "; shots of that name count for both."));
        } else if (CloseNames.key(earlier.club()).equals(CloseNames.key(club))) {
            row.problem(
                    ClubColumns.CLUB,
                    "slot and club must be unique for a golfer, found \"" + club + "\" in slot " + slot.getAsInt()
                            + " again, first in " + earlier.clubCell() + ".");
        } else {
            row.problem(
                    ClubColumns.SLOT,
                    "a slot must have one club, found slot " + slot.getAsInt() + " again, first in "
                            + earlier.slotCell() + "; several candidates for one slot cannot be planned yet.");
        }
    }
}
