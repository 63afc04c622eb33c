package org.bagwright.workbook.read;

import java.util.List;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;

/**
 * Warns of cells of a row of the sheet Golfers that are filled in but change nothing.
 *
 * @param filled the row and its golfer
 * @param clubs his clubs
 * @param sleeves the sleeves of the book
 */
record IdleGolferCells(GolferReader.Filled filled, List<Club> clubs, List<Sleeve> sleeves) {

    void warn() {
        int lastSlot = clubs.stream()
                .filter(club -> club.kind().carries())
                .mapToInt(Club::slot)
                .max()
                .orElse(0);
        List<Club> withGap = clubs.stream()
                .filter(club -> club.kind().carries() && club.slot() < lastSlot)
                .toList();
        if (withGap.isEmpty()) {
            for (Column column : GolferColumn.SHEET.columns()) {
                if (column.header().startsWith("Gap ")) {
                    idle(column, "fewer than two clubs fly");
                }
            }
        } else if (withGap.stream().allMatch(club -> club.targets().gapWishM().isPresent())) {
            idle(GolferColumn.GAP_WISH, "every club that has a gap has a Gap wish of its own on the sheet Clubs");
        }
        if (filled.golfer().address().keepsShaftAligned() && clubs.stream().noneMatch(this::turnsShaft)) {
            idle(GolferColumn.KEEP_SHAFT_TURNED, "no club has a sleeve that turns the shaft");
        }
    }

    private boolean turnsShaft(Club club) {
        return sleeves.stream()
                .filter(sleeve ->
                        club.sleeve().filter(sleeve.name()::equalsIgnoreCase).isPresent())
                .flatMap(sleeve -> sleeve.settings().stream())
                .anyMatch(SleeveSetting::turnsShaft);
    }

    private void idle(Column column, String why) {
        boolean usual =
                column == GolferColumn.GAP_WISH && filled.golfer().gapWish().kind() == GapWish.Kind.EVEN;
        if (filled.row().isGiven(column) && !usual) {
            filled.row().warning(column, column.subject() + " has no effect: " + why + ".");
        }
    }
}
