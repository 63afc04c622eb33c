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
import org.bagwright.workbook.schema.ShotColumn;

/** Reads the sheet Shots. */
final class ShotReader {
    private final ClubRows rows;
    private final List<Shot> shots = new ArrayList<>();

    private ShotReader(InputTable table, NameIndex golfers, Optional<ClubSheet> clubs) {
        this.rows = new ClubRows(table, golfers, clubs, ShotColumn.GOLFER, ShotColumn.CLUB, ShotColumn.MEASURED);
    }

    /** The shots of a book; without a readable sheet Clubs their clubs are not checked. */
    static List<Shot> read(InputTable table, NameIndex golfers, Optional<ClubSheet> clubs) {
        ShotReader reader = new ShotReader(table, golfers, clubs);
        reader.rows.read(reader::readRow);
        return reader.shots;
    }

    /** A row that the fitter sets aside is not read, so nothing in it is a problem. */
    private void readRow(InputRow row) {
        if (!row.yesNo(ShotColumn.USE).orElse(true)) {
            return;
        }
        row.require(ShotColumn.CLUB);
        Optional<String> golfer = rows.golferOf(row);
        Optional<String> club = rows.clubOf(row, golfer);
        rows.requireMeasured(
                row,
                ShotColumn.CLUB,
                "the shot has no measured value; expected at least one of "
                        + ShotColumn.MEASURED.stream().map(Column::header).collect(Collectors.joining(", "))
                        + ".");
        Shot.Measured measured = measured(row);
        if (!row.isSpoilt()) {
            shots.add(new Shot(golfer.orElseThrow(), club.orElseThrow(), measured, row.cell(ShotColumn.CLUB)));
        }
    }

    private static Shot.Measured measured(InputRow row) {
        return new Shot.Measured(
                row.number(ShotColumn.HEAD_SPEED),
                row.number(ShotColumn.BALL_SPEED),
                row.number(ShotColumn.LAUNCH),
                row.number(ShotColumn.SPIN),
                row.number(ShotColumn.ATTACK),
                row.number(ShotColumn.CARRY));
    }
}
