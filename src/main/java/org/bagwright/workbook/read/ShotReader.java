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
    private final ClubRows rows;
    private final List<Shot> shots = new ArrayList<>();

    private ShotReader(InputTable table, NameIndex golfers, Optional<ClubSheet> clubs) {
        this.rows = new ClubRows(
                table, golfers, clubs, ShotColumns.GOLFER, ShotColumns.CLUB, ShotColumns.TELLING);
    }

    /** The shots of a book; without a readable sheet Clubs their clubs are not checked. */
    static List<Shot> read(InputTable table, NameIndex golfers, Optional<ClubSheet> clubs) {
        ShotReader reader = new ShotReader(table, golfers, clubs);
        reader.rows.read(reader::readRow);
        return reader.shots;
    }

    private void readRow(InputRow row) {
        row.require(ShotColumns.CLUB);
        Optional<String> golfer = rows.golferOf(row);
        Optional<String> club = rows.clubOf(row, golfer);
        rows.requireMeasured(
                row,
                ShotColumns.CLUB,
                "the shot has no measured value; expected at least one of "
                        + ShotColumns.TELLING.stream().map(Column::header).collect(Collectors.joining(", "))
                        + ".");
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

}
