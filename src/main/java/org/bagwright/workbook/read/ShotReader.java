package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Shot;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.ShotColumns;

/** Reads the sheet Shots. */
final class ShotReader {
    private final InputTable table;
    private final NamedClub named;
    private final List<Shot> shots = new ArrayList<>();

    private ShotReader(InputTable table, NameIndex golfers, Optional<ClubReader> clubs) {
        this.table = table;
        this.named = new NamedClub(table, golfers, clubs, ShotColumns.GOLFER, ShotColumns.CLUB);
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
        Optional<String> golfer = named.golferOf(row);
        Optional<String> club = named.clubOf(row, golfer);
        requireSomething(row);
        Shot shot = new Shot(
                golfer.orElse("?"),
                club.orElse("?"),
                new Shot.Measured(
                        row.number(ShotColumns.HEAD_SPEED),
                        row.number(ShotColumns.BALL_SPEED),
                        row.number(ShotColumns.LAUNCH),
                        row.number(ShotColumns.SPIN),
                        row.number(ShotColumns.ATTACK),
                        row.number(ShotColumns.CARRY)),
                row.cell(ShotColumns.CLUB));
        if (!row.isSpoilt()) {
            shots.add(shot);
        }
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
