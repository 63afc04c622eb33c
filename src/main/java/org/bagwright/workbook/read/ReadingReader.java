package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ReadingColumn;

/** Reads the sheet Readings. */
final class ReadingReader {
    private final InputTable table;
    private final ClubRows rows;
    private final Optional<ClubSheet> clubs;
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
        this.clubs = clubs;
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
        Optional<Club> club = name.flatMap(text -> clubOf(row, golfer.orElseThrow(), text));
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

    /** The club, if its own row is sound; a reading must not belong to two clubs. */
    private Optional<Club> clubOf(InputRow row, String golfer, String name) {
        List<Club> found = clubs.orElseThrow().clubs().stream()
                .filter(club -> CloseNames.key(club.golfer()).equals(CloseNames.key(golfer)))
                .filter(club -> CloseNames.key(club.name()).equals(CloseNames.key(name)))
                .toList();
        if (found.size() > 1) {
            row.problem(
                    ReadingColumn.CLUB,
                    "a reading must belong to one club, found two called \"" + name + "\", in "
                            + found.get(0).cell() + " and " + found.get(1).cell()
                            + "; expected clubs with different names.");
        } else if (found.isEmpty()) {
            row.spoil();
        }
        return found.stream().findFirst();
    }

    private Optional<String> markOf(InputRow row, Club club, Optional<String> setting) {
        Optional<SleeveDraft> sleeve = club.sleeve().flatMap(sleeves::find);
        if (sleeve.isEmpty()) {
            setting.ifPresent(found -> row.problem(
                    ReadingColumn.SETTING,
                    "setting must be blank for a club without a sleeve, found \"" + found + "\"."));
        }
        return sleeve.flatMap(known -> known.neededMark(row, ReadingColumn.SETTING));
    }
}
