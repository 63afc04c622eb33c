package org.bagwright.workbook.read;

import java.util.Optional;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;

/** Finds the golfer and the club that a row of another sheet names. */
final class NamedClub {
    private final InputTable table;
    private final NameIndex golfers;
    private final Optional<ClubReader> clubs;
    private final Column golferColumn;
    private final Column clubColumn;

    NamedClub(InputTable table, NameIndex golfers, Optional<ClubReader> clubs, Column golferColumn, Column clubColumn) {
        this.table = table;
        this.golfers = golfers;
        this.clubs = clubs;
        this.golferColumn = golferColumn;
        this.clubColumn = clubColumn;
    }

    /** The golfer's name as the sheet Golfers has it; the only golfer of a book need not be named. */
    Optional<String> golferOf(InputRow row) {
        if (!table.has(golferColumn) && golfers.names().size() != 1) {
            row.spoil();
            return Optional.empty();
        }
        return golfers.golferOf(row, golferColumn);
    }

    /** The club's name as the sheet Clubs has it for this golfer. */
    Optional<String> clubOf(InputRow row, Optional<String> golfer) {
        Optional<String> text = row.text(clubColumn);
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
                    clubColumn,
                    "club must be one of \"" + golfer.get() + "\" on the sheet Clubs, found \"" + text.get() + "\"."
                            + CloseNames.maybe(text.get(), names.names()));
        }
        return known;
    }
}
