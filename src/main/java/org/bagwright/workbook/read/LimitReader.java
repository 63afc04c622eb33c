package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;

/**
 * Reads the limits of a row of the sheet Golfers or Clubs.
 *
 * @param row the row
 */
record LimitReader(InputRow row) {
    private static final Map<LimitKind, Column> OF_GOLFERS = Map.of(
            LimitKind.MOST_OPEN, GolferColumn.MOST_OPEN,
            LimitKind.MOST_CLOSED, GolferColumn.MOST_CLOSED,
            LimitKind.GAP_LEAST, GolferColumn.GAP_LEAST,
            LimitKind.GAP_MOST, GolferColumn.GAP_MOST);

    private static final Map<LimitKind, Column> OF_CLUBS = Map.of(
            LimitKind.GAP_LEAST, ClubColumn.GAP_LEAST,
            LimitKind.GAP_MOST, ClubColumn.GAP_MOST,
            LimitKind.CARRY_LEAST, ClubColumn.CARRY_LEAST,
            LimitKind.CARRY_MOST, ClubColumn.CARRY_MOST,
            LimitKind.LANDING_LEAST, ClubColumn.LANDING_LEAST);

    Limits ofGolfer() {
        return read(OF_GOLFERS);
    }

    Limits ofClub() {
        return read(OF_CLUBS);
    }

    private Limits read(Map<LimitKind, Column> columns) {
        List<StatedLimit> stated = new ArrayList<>();
        for (LimitKind kind : LimitKind.values()) {
            if (columns.containsKey(kind)) {
                Column column = columns.get(kind);
                value(kind, column).ifPresent(value -> stated.add(new StatedLimit(kind, value, row.cell(column))));
            }
        }
        Limits limits = Limits.of(stated);
        limits.contradictions().forEach(both -> problem(columns, both.get(0).kind(), both.get(1).kind()));
        return limits;
    }

    private OptionalDouble value(LimitKind kind, Column column) {
        return kind.quantity() == LimitKind.Quantity.SITS
                ? row.look(column, kind == LimitKind.MOST_OPEN)
                : row.number(column);
    }

    private void problem(Map<LimitKind, Column> columns, LimitKind least, LimitKind most) {
        Column column = columns.get(least);
        String wrong = least == LimitKind.MOST_OPEN ? "more closed than" : "above";
        row.problem(
                column,
                column.subject() + " must not be " + wrong + " "
                        + columns.get(most).subject() + ", found "
                        + row.content(column).shown() + " against "
                        + row.content(columns.get(most)).shown() + ".");
    }
}
