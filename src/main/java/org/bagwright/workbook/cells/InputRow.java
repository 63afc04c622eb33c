package org.bagwright.workbook.cells;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/**
 * One row of an input sheet. Each getter gives the cell's value in the domain's unit, or empty when the cell is blank or
 * holds something wrong; what is wrong is reported and spoils the row, from which then no record is built.
 */
public final class InputRow {
    private final TableColumns columns;
    private final Findings findings;
    private final int index;
    private final Map<Column, Put> put = new HashMap<>();
    private boolean spoilt;

    /** What is read for a cell, and the column of the cell that gives it. */
    private record Put(CellContent content, Column givenIn) {}

    InputRow(TableColumns columns, Findings findings, int index) {
        this.columns = columns;
        this.findings = findings;
        this.index = index;
    }

    public boolean isSpoilt() {
        return spoilt;
    }

    /** No record can be built from this row, for a reason already reported elsewhere. */
    public void spoil() {
        spoilt = true;
    }

    public void problem(Column column, String text) {
        findings.problem(cell(column), text);
        spoil();
    }

    public void warning(Column column, String text) {
        findings.warning(cell(column), text);
    }

    public String cell(Column column) {
        return columns.cell(index, put.containsKey(column) ? put.get(column).givenIn() : column);
    }

    public CellContent content(Column column) {
        return put.containsKey(column) ? put.get(column).content() : columns.content(index, column);
    }

    /** Reads something else for a cell, which another cell of the row gives. */
    void put(Column column, CellContent content, Column givenIn) {
        put.put(column, new Put(content, givenIn));
    }

    /** Whether the cell holds a range, which is read from other cells. */
    public boolean isSpread(Column column) {
        return put.containsKey(column);
    }

    /** The text of the note on a cell, if it has one. */
    Optional<String> note(Column column) {
        return columns.note(index, column);
    }

    /** The cell itself, made if need be; empty where the book lacks the column. */
    public Optional<XSSFCell> cellToWrite(Column column) {
        return columns.cellToWrite(index, column);
    }

    /** The unit in which a number of this column is written. */
    public Unit unit(Column column) {
        return columns.unit(column, column.quantity());
    }

    public boolean isGiven(Column column) {
        return !content(column).isBlank();
    }

    /** Reports each of these cells that is blank; where the whole column is missing the table has reported that. */
    public void require(Column... needed) {
        for (Column column : needed) {
            if (!columns.has(column)) {
                spoil();
            } else if (!isGiven(column)) {
                problem(column, column.subject() + " must be filled in, found nothing; expected " + expected(column));
            }
        }
    }

    private static String expected(Column column) {
        return Character.toLowerCase(column.help().charAt(0)) + column.help().substring(1);
    }

    private InputCell at(Column column) {
        return new InputCell(column, content(column), text -> problem(column, text));
    }

    /** Words, or a number as its text: 1 and 1.0 both give "1". */
    public Optional<String> text(Column column) {
        return at(column).text();
    }

    public OptionalDouble number(Column column) {
        return number(column, column.quantity());
    }

    /** A number of a quantity that this row decides, inside the column's limit, in the domain's unit. */
    public OptionalDouble number(Column column, Quantity quantity) {
        return at(column).number(quantity, columns.unit(column, quantity));
    }

    /**
     * A look at address, degrees closed: {@code 1}, {@code 1 deg}, {@code 1 open}, {@code 2 closed} or {@code square}. A
     * bare number means the side of the column, whatever its sign.
     *
     * @param open whether that side is the open one
     */
    public OptionalDouble look(Column column, boolean open) {
        return at(column).look(open, unit(column));
    }

    public OptionalInt whole(Column column) {
        return at(column).whole(unit(column));
    }

    public Optional<Boolean> yesNo(Column column) {
        return at(column).yesNo();
    }

    /** One of some words, each known by its {@link CloseNames#key}. */
    public <T> Optional<T> choice(Column column, Map<String, T> words, Collection<String> offered) {
        return at(column).choice(words, offered);
    }

    /** A day: a date of the spreadsheet program, or text such as 2026-05-31. */
    public Optional<LocalDate> date(Column column) {
        return at(column).date();
    }

    /** An hour of the clock, 0 to less than 12: a number, {@code 1:30}, or a time of day. */
    public OptionalDouble clock(Column column) {
        return at(column).clock();
    }

    /**
     * One of some words, each known by its {@link CloseNames#key}, or a number, of which {@code ofNumber} makes the value;
     * empty when blank or wrong.
     */
    public <T> Optional<T> numberOr(Column column, Map<String, T> words, DoubleFunction<T> ofNumber) {
        if (content(column) instanceof CellContent.Words found && words.containsKey(CloseNames.key(found.text()))) {
            return Optional.of(words.get(CloseNames.key(found.text())));
        }
        OptionalDouble number = number(column);
        return number.isPresent() ? Optional.of(ofNumber.apply(number.getAsDouble())) : Optional.empty();
    }
}
