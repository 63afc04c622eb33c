package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ReadingColumn;

/** Reads the sheet Readings. */
final class ReadingReader {
    private final InputTable table;
    private final ClubRows rows;
    private final Drafts<SleeveDraft> sleeves;
    private final List<Reading> readings = new ArrayList<>();

    private ReadingReader(InputTable table, NameIndex golfers, Optional<ClubSheet> clubs, Drafts<SleeveDraft> sleeves) {
        this.table = table;
        this.rows = new ClubRows(
                table,
                golfers,
                clubs,
                ReadingColumn.GOLFER,
                ReadingColumn.CLUB,
                List.of(ReadingColumn.LOFT, ReadingColumn.LIE));
        this.sleeves = sleeves;
    }

    /** The readings of a book; those of a club whose own row has something wrong are checked as far as can be. */
    static List<Reading> read(
            InputTable table, NameIndex golfers, Optional<ClubSheet> clubs, Drafts<SleeveDraft> sleeves) {
        ReadingReader reader = new ReadingReader(table, golfers, clubs, sleeves);
        reader.rows.read(reader::readRow);
        return reader.readings;
    }

    private void readRow(InputRow row) {
        row.require(ReadingColumn.CLUB);
        Optional<String> golfer = rows.golferOf(row);
        Optional<String> name = rows.clubOf(row, golfer);
        Optional<Club> club = name.flatMap(text -> rows.only(row, golfer.orElseThrow(), text, "a reading"));
        Optional<String> setting = row.text(ReadingColumn.SETTING);
        Optional<String> mark = club.flatMap(known -> markOf(row, known, setting));
        OptionalDouble loftDeg = row.number(ReadingColumn.LOFT);
        OptionalDouble lieDeg = row.number(ReadingColumn.LIE);
        OptionalDouble faceDeg = row.number(ReadingColumn.FACE);
        requireMeasured(row);
        if (!row.isSpoilt()) {
            String cell = row.cell(ReadingColumn.CLUB);
            readings.add(new Reading(golfer.orElseThrow(), name.orElseThrow(), mark, loftDeg, lieDeg, faceDeg, cell));
        }
    }

    private void requireMeasured(InputRow row) {
        rows.requireMeasured(
                row,
                table.has(ReadingColumn.LOFT) ? ReadingColumn.LOFT : ReadingColumn.LIE,
                "a reading must have a loft or a lie, found neither; expected degrees in at least one of Loft and"
                        + " Lie.");
    }

    private Optional<String> markOf(InputRow row, Club club, Optional<String> setting) {
        Optional<SleeveDraft> sleeve = club.sleeve().flatMap(sleeves::find);
        if (sleeve.isEmpty()) {
            setting.ifPresent(
                    found -> row.problem(ReadingColumn.SETTING, SleeveDraft.noSleeve(ReadingColumn.SETTING, found)));
        }
        return sleeve.flatMap(known -> known.neededMark(row, ReadingColumn.SETTING));
    }
}
