package org.bagwright.workbook.read;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Club;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/**
 * Warns of cells of the sheet Clubs that are filled in but change nothing.
 *
 * @param rows all rows
 * @param aims how much each measure counts
 */
record IdleCells(List<ClubSheet.Filled> rows, Aims aims) {

    void warn() {
        rows.forEach(this::row);
        target(ClubColumn.LOFT_TARGET, Measure.LOFT, row -> true);
        target(ClubColumn.LIE_TARGET, Measure.LIE, row -> row.row().isGiven(ClubColumn.GOLFER_LIE));
        target(ClubColumn.CARRY_TARGET, Measure.CARRY, row -> row.club().kind().carries());
        target(ClubColumn.GAP_WISH, Measure.GAP, row -> hasNext(row.club()));
        target(ClubColumn.SWINGWEIGHT_TARGET, Measure.SWINGWEIGHT, row -> true);
    }

    private void row(ClubSheet.Filled filled) {
        Club club = filled.club();
        for (Column column : ClubColumn.SHEET.columns()) {
            if (isOf(column, "Gap ") && !hasNext(club)) {
                idle(filled, column, "no club that flies comes after " + club.name());
            } else if ((isOf(column, "Carry ") || isOf(column, "Landing "))
                    && !club.kind().carries()) {
                idle(filled, column, "a " + club.kind().label() + " has no carry");
            }
        }
        bends(filled);
        if (club.pinned() && isOnlyOption(club)) {
            idle(filled, ClubColumn.PINNED, "there is nothing to change on " + club.name());
        }
    }

    private static boolean isOf(Column column, String what) {
        return column.header().startsWith(what);
    }

    /** Whether a club that flies can come after this one. */
    private boolean hasNext(Club club) {
        return club.kind().carries()
                && rows.stream()
                        .map(ClubSheet.Filled::club)
                        .filter(other -> other.golfer().equals(club.golfer()))
                        .anyMatch(other ->
                                other.slot() > club.slot() && other.kind().carries());
    }

    private static void bends(ClubSheet.Filled filled) {
        BendRange range = filled.club().freedom().bendRange();
        if (range.limitDeg() == 0) {
            idle(
                    filled,
                    ClubColumn.BEND_STEP,
                    "without a bend limit " + filled.club().name() + " is not bent");
        } else if (range.limitDeg() < range.stepDeg()) {
            idle(filled, ClubColumn.BEND_LIMIT, "it is less than one bend step");
        }
    }

    /** Whether its slot has no other club, and the club nothing that can be set in another way. */
    private boolean isOnlyOption(Club club) {
        boolean alone = rows.stream()
                        .map(ClubSheet.Filled::club)
                        .filter(other -> other.golfer().equals(club.golfer()) && other.slot() == club.slot())
                        .count()
                == 1;
        return alone
                && club.inBag()
                && club.sleeve().isEmpty()
                && club.kit().isEmpty()
                && club.freedom().bendRange().limitDeg() == 0
                && !club.freedom().optional();
    }

    private static void idle(ClubSheet.Filled filled, Column column, String why) {
        if (filled.row().isGiven(column)) {
            filled.row().warning(column, column.subject() + " has no effect: " + why + ".");
        }
    }

    /** One warning for all targets of a measure that does not count. */
    private void target(Column column, Measure measure, Predicate<ClubSheet.Filled> wouldCount) {
        Aim aim = aims.of(measure);
        List<ClubSheet.Filled> given = rows.stream()
                .filter(filled -> filled.row().isGiven(column))
                .filter(wouldCount)
                .toList();
        if (aim.importancePoints() > 0 || aim.isHard() || given.isEmpty()) {
            return;
        }
        String others = given.stream()
                .skip(1)
                .map(filled -> filled.row().cell(column).replaceAll(".*!", ""))
                .collect(Collectors.joining(", "));
        given.get(0)
                .row()
                .warning(
                        column,
                        column.subject() + " has no effect on the plan: " + measure.label()
                                + " has importance 0 on the sheet Aims and is no must."
                                + (others.isEmpty() ? "" : " The same in " + others + "."));
    }
}
