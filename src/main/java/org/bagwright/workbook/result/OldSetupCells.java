package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.plan.OldSetups;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.ShotColumn;
import org.bagwright.workbook.shots.ShotCells;

/** Writes the set-up that shots were hit with into the blank cells of their rows, before another one is today's. */
final class OldSetupCells {
    private final Book book;
    private final Optional<InputTable> table;
    private final List<Message> notWritten = new ArrayList<>();
    private int rows;

    OldSetupCells(XSSFWorkbook workbook, Book book) {
        this.book = book;
        BookContext context =
                new BookContext(new CellContents(workbook), book.settings().units(), new Findings());
        this.table = InputTable.in(workbook, ShotColumn.SHEET, context);
    }

    /** Writes them; also into rows that are kept unread. A column that the sheet lacks is added behind all others. */
    OldSetupCells write(OldSetups before) {
        table.ifPresent(found -> {
            InputTable complete = found;
            for (ShotColumn column : needed(found.rows(), before)) {
                complete = complete.with(column);
            }
            complete.rows().forEach(row -> setup(row, before).ifPresent(setup -> write(row, setup)));
        });
        return this;
    }

    private Set<ShotColumn> needed(List<InputRow> all, OldSetups before) {
        Set<ShotColumn> needed = new TreeSet<>();
        all.forEach(row -> setup(row, before)
                .ifPresent(setup -> needed.addAll(values(row, setup).keySet())));
        return needed;
    }

    /** In how many rows something was written. */
    int rows() {
        return rows;
    }

    /** What could not be written, and why. */
    List<Message> notWritten() {
        return notWritten;
    }

    private Optional<Shot.Setup> setup(InputRow row, OldSetups before) {
        Optional<String> only =
                book.golfers().size() == 1 ? Optional.of(book.golfers().get(0).name()) : Optional.empty();
        Optional<String> golfer = row.isGiven(ShotColumn.GOLFER) ? row.text(ShotColumn.GOLFER) : only;
        return golfer.flatMap(name -> row.text(ShotColumn.CLUB).flatMap(club -> before.of(name, club)));
    }

    /** What the blank cells of a row take. */
    private static Map<ShotColumn, Object> values(InputRow row, Shot.Setup setup) {
        Map<ShotColumn, Object> values = new ShotCells(row::unit).setup(setup);
        values.keySet().removeIf(row::isGiven);
        return values;
    }

    private void write(InputRow row, Shot.Setup setup) {
        boolean any = false;
        for (Map.Entry<ShotColumn, Object> value : values(row, setup).entrySet()) {
            any |= put(row, value.getKey(), value.getValue());
        }
        rows += any ? 1 : 0;
    }

    private boolean put(InputRow row, ShotColumn column, Object value) {
        Optional<XSSFCell> cell = row.cellToWrite(column);
        if (cell.isEmpty()
                || cell.get().getCellType() == CellType.FORMULA
                || cell.get().isPartOfArrayFormulaGroup()) {
            skip(row, column, value, cell.isEmpty() ? "the sheet has no room for it" : "the cell holds a formula");
            return false;
        }
        ShotCells.put(cell.get(), value);
        return true;
    }

    private void skip(InputRow row, ShotColumn column, Object value, String why) {
        String shown = value instanceof Double number ? Numbers.trimmed(number) : String.valueOf(value);
        notWritten.add(Message.warning(
                row.cell(column),
                column.subject() + " " + shown + ", with which the shot was hit, is not written: " + why
                        + "; enter it by hand."));
    }
}
