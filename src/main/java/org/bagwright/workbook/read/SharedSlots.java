package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.schema.ClubColumn;

/**
 * Rows of the sheet Clubs with the same slot that may be two clubs of the bag and not one club and another that might take
 * its place.
 *
 * @param rows all rows
 * @param shots all shots
 */
record SharedSlots(List<ClubSheet.Filled> rows, List<Shot> shots) {

    /** One warning a slot, where clubs that no row says are out of the bag differ in kind or all have shots. */
    void warn() {
        Map<String, List<ClubSheet.Filled>> bySlot = new LinkedHashMap<>();
        rows.stream()
                .filter(row -> row.row().yesNo(ClubColumn.IN_BAG).orElse(true))
                .forEach(row -> bySlot.computeIfAbsent(key(row.club()), key -> new ArrayList<>())
                        .add(row));
        bySlot.values().stream().filter(this::isDoubtful).forEach(SharedSlots::warn);
    }

    private static String key(Club club) {
        return ClubPlaces.slotKey(CloseNames.key(club.golfer()), club.slot());
    }

    private boolean isDoubtful(List<ClubSheet.Filled> slot) {
        List<Club> clubs = slot.stream().map(ClubSheet.Filled::club).toList();
        return clubs.size() > 1
                && clubs.stream().anyMatch(Club::inBag)
                && (clubs.stream().map(Club::kind).distinct().count() > 1
                        || clubs.stream().filter(this::hasShots).count() > 1);
    }

    private boolean hasShots(Club club) {
        return shots.stream()
                .anyMatch(shot -> shot.golfer().equalsIgnoreCase(club.golfer())
                        && shot.club().equalsIgnoreCase(club.name()));
    }

    private static void warn(List<ClubSheet.Filled> slot) {
        String inBag = slot.stream()
                .map(ClubSheet.Filled::club)
                .filter(Club::inBag)
                .map(club -> quoted(club.name()))
                .findFirst()
                .orElseThrow();
        List<ClubSheet.Filled> others =
                slot.stream().filter(row -> !row.club().inBag()).toList();
        String names = ListText.allOf(
                others.stream().map(row -> quoted(row.club().name())).toList());
        others.get(0)
                .row()
                .warning(
                        ClubColumn.SLOT,
                        names + (others.size() == 1 ? " is" : " are") + " taken for "
                                + (others.size() == 1 ? "another club that" : "other clubs that")
                                + " might fill slot " + others.get(0).club().slot() + ", where " + inBag
                                + " is in the bag. If both are in the bag, give each its own slot; if not, write no under"
                                + " In bag.");
    }

    private static String quoted(String name) {
        return '"' + name + '"';
    }
}
