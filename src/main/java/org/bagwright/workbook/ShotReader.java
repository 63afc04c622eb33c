package org.bagwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.Shot;

/** Reads the sheet Shots. */
final class ShotReader {
    private final InputTable table;
    private final NameIndex golfers;
    private final Optional<ClubReader> clubs;
    private final List<Shot> shots = new ArrayList<>();

    private ShotReader(InputTable table, NameIndex golfers, Optional<ClubReader> clubs) {
        this.table = table;
        this.golfers = golfers;
        this.clubs = clubs;
    }

    /** The shots of a book; without a readable sheet Clubs their clubs are not checked. */
    static List<Shot> read(InputTable table, NameIndex golfers, Optional<ClubReader> clubs) {
        ShotReader reader = new ShotReader(table, golfers, clubs);
        List<InputRow> rows = table.rows();
        List<Column> needed = new ArrayList<>();
        if (golfers.names().size() > 1) {
            needed.add(ShotColumns.GOLFER);
        }
        needed.add(ShotColumns.CLUB);
        if (ShotColumns.TELLING.stream().noneMatch(table::has)) {
            needed.addAll(ShotColumns.TELLING);
        }
        if (!rows.isEmpty()) {
            table.requireColumns(needed);
        }
        rows.forEach(reader::readRow);
        table.warnOfCloseHeadings(needed);
        return reader.shots;
    }

    private void readRow(InputRow row) {
        row.require(ShotColumns.CLUB);
        Optional<String> golfer = golferOf(row);
        Optional<String> club = clubOf(row, golfer);
        requireSomething(row);
        Shot shot = new Shot(
                golfer.orElse("?"),
                club.orElse("?"),
                row.number(ShotColumns.HEAD_SPEED),
                row.number(ShotColumns.BALL_SPEED),
                row.number(ShotColumns.LAUNCH),
                row.number(ShotColumns.SPIN),
                row.number(ShotColumns.ATTACK),
                row.number(ShotColumns.CARRY),
                row.cell(ShotColumns.CLUB));
        if (!row.isSpoilt()) {
            shots.add(shot);
        }
    }

    private Optional<String> golferOf(InputRow row) {
        if (!table.has(ShotColumns.GOLFER) && golfers.names().size() != 1) {
            row.spoil();
            return Optional.empty();
        }
        return golfers.golferOf(row, ShotColumns.GOLFER);
    }

    private Optional<String> clubOf(InputRow row, Optional<String> golfer) {
        Optional<String> text = row.text(ShotColumns.CLUB);
        if (text.isEmpty() || golfer.isEmpty() || clubs.isEmpty()) {
            row.spoil();
            return Optional.empty();
        }
        NameIndex names = clubs.get().namesOf(golfer.get());
        Optional<String> known = names.find(text.get());
        if (known.isEmpty()) {
            row.spoil();
        }
        if (known.isEmpty() && clubs.get().allNamesRead()) {
            row.problem(
                    ShotColumns.CLUB,
                    "club must be one of \"" + golfer.get() + "\" on the sheet Clubs, found \"" + text.get() + "\"."
                            + CloseNames.maybe(text.get(), names.names()));
        }
        return known;
    }

    private void requireSomething(InputRow row) {
        boolean something = ShotColumns.TELLING.stream().anyMatch(row::isGiven);
        boolean askable = ShotColumns.TELLING.stream().anyMatch(table::has);
        if (!something && askable) {
            row.problem(
                    ShotColumns.CLUB,
                    "a shot must say something, found nothing measured; expected at least one of "
                            + ShotColumns.TELLING.stream().map(Column::header).collect(Collectors.joining(", "))
                            + ".");
        }
    }
}
