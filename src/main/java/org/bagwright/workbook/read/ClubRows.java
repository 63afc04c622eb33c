package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;

/** The rows of a sheet on which something is measured with a golfer's club. */
final class ClubRows {
    private final InputTable table;
    private final NameIndex golfers;
    private final Optional<ClubSheet> clubs;
    private final Column golferColumn;
    private final Column clubColumn;
    private final List<Column> measured;

    /** @param measured columns of which every row fills in at least one */
    ClubRows(
            InputTable table,
            NameIndex golfers,
            Optional<ClubSheet> clubs,
            Column golferColumn,
            Column clubColumn,
            List<Column> measured) {
        this.table = table;
        this.golfers = golfers;
        this.clubs = clubs;
        this.golferColumn = golferColumn;
        this.clubColumn = clubColumn;
        this.measured = measured;
    }

    /** Reads every row; with several golfers it must name one. */
    void read(Consumer<InputRow> reader) {
        List<Column> needed = new ArrayList<>();
        if (golfers.names().size() > 1) {
            needed.add(golferColumn);
        }
        needed.add(clubColumn);
        if (measured.stream().noneMatch(table::has)) {
            needed.addAll(measured);
        }
        table.read(needed, reader);
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

    /** The club of a name that {@link #clubOf(InputRow, Optional)} gives, if its own row is sound; two are a problem. */
    Optional<Club> only(InputRow row, String golfer, String name, String what) {
        List<Club> found = clubs.orElseThrow().called(golfer, name);
        if (found.size() > 1) {
            row.problem(
                    clubColumn,
                    what + " must belong to one club, found two called \"" + name + "\", in "
                            + found.get(0).cell() + " and " + found.get(1).cell()
                            + "; expected clubs with different names.");
        } else if (found.isEmpty()) {
            row.spoil();
        }
        return found.stream().findFirst();
    }

    /** Reports a row in which nothing is measured; where no column for it is there, the table has reported that. */
    void requireMeasured(InputRow row, Column place, String problem) {
        if (measured.stream().noneMatch(table::has)) {
            row.spoil();
        } else if (measured.stream().noneMatch(row::isGiven)) {
            row.problem(place, problem);
        }
    }
}
