package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** On the sheet Compare: what differs between the books, a row for each slot and two columns for each book. */
final class DifferenceTable {
    private static final double CHOICE_CHARS = 18;

    private final SheetPen pen;
    private final Comparison comparison;

    DifferenceTable(SheetPen pen, Comparison comparison) {
        this.pen = pen;
        this.comparison = comparison;
    }

    /** Writes one golfer from a row on and gives the first free row. */
    int write(String golfer, int first) {
        List<Comparison.Difference> differences = comparison.differences(golfer);
        if (differences.isEmpty()) {
            String wholly = comparison.golfer(golfer).isSame()
                    ? "The same clubs in the same set-up, with the same wishes and figures."
                    : "The same choices, today and as planned. What differs is on the sheet " + ComparedClubsSheet.NAME
                            + ".";
            pen.text(first, 0, Role.FAINT, wholly);
            return first + 1;
        }
        int row = first;
        pen.text(row, 0, Role.GROUP, "What differs");
        pen.text(row, 1, Role.GROUP, "");
        choices(
                row++,
                Role.GROUP,
                comparison.books().stream().map(ComparedBook::name).toList());
        for (Comparison.Difference difference : differences) {
            pen.text(row, 0, Role.TEXT, "Slot " + difference.slot());
            pen.text(row, 1, Role.COUNT, difference.state());
            choices(row++, Role.CELL, difference.choices());
        }
        return row;
    }

    private void choices(int row, Role role, List<String> choices) {
        double heightPoints = 0;
        for (int book = 0; book < choices.size(); book++) {
            int column = 2 + 2 * book;
            pen.text(row, column, role, choices.get(book));
            pen.blank(row, column + 1, role);
            pen.merge(row, row, column, column + 1);
            heightPoints = Math.max(heightPoints, TablePen.heightPoints(choices.get(book), CHOICE_CHARS));
        }
        pen.height(row, heightPoints);
    }
}
