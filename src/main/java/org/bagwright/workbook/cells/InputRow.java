package org.bagwright.workbook.cells;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.NumberTypos;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/**
 * One row of an input sheet. Each getter gives the cell's value in the domain's unit, or empty when the cell is blank or
 * holds something wrong; what is wrong is reported and spoils the row, from which then no record is built.
 */
public final class InputRow {
    private static final int MOST_NAME_CHARS = 50;
    private static final Map<String, Boolean> YES_NO =
            Map.of("yes", true, "y", true, "true", true, "x", true, "no", false, "n", false, "false", false);

    private final InputTable table;
    private final BookContext context;
    private final int index;
    private boolean spoilt;

    InputRow(InputTable table, BookContext context, int index) {
        this.table = table;
        this.context = context;
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
        context.findings().problem(cell(column), text);
        spoil();
    }

    public void warning(Column column, String text) {
        context.findings().warning(cell(column), text);
    }

    public String cell(Column column) {
        return table.cell(index, column);
    }

    public CellContent content(Column column) {
        return table.content(index, column);
    }

    /** The text of the note on a cell, if it has one. */
    Optional<String> note(Column column) {
        return table.note(index, column);
    }

    /** The cell itself, made if need be; empty where the book lacks the column. */
    public Optional<XSSFCell> cellToWrite(Column column) {
        return table.cellToWrite(index, column);
    }

    /** The unit in which a number of this column is written. */
    public Unit unit(Column column) {
        return table.unit(column, column.quantity());
    }

    public boolean isGiven(Column column) {
        return !content(column).isBlank();
    }

    /** Reports each of these cells that is blank; where the whole column is missing the table has said so. */
    public void require(Column... columns) {
        for (Column column : columns) {
            if (!table.has(column)) {
                spoil();
            } else if (!isGiven(column)) {
                problem(column, column.subject() + " must be filled in, found nothing; expected " + expected(column));
            }
        }
    }

    private static String expected(Column column) {
        return Character.toLowerCase(column.help().charAt(0)) + column.help().substring(1);
    }

    /** Words, or a number as its text: 1 and 1.0 both give "1". */
    public Optional<String> text(Column column) {
        CellContent content = content(column);
        if (content instanceof CellContent.Words words) {
            return nameLike(column, words.text());
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return Optional.of(Numbers.trimmed(amount.valueMeasureUnits()));
        }
        if (!content.isBlank()) {
            problem(column, column.subject() + " must be text, found " + content.shown() + dateAdvice(content));
        }
        return Optional.empty();
    }

    /** Lookups of a spreadsheet program take at most 255 characters, and on the sheet Plan several names make up one. */
    private Optional<String> nameLike(Column column, String text) {
        if (column.kind() == Column.Kind.MARKS || text.length() <= MOST_NAME_CHARS) {
            return Optional.of(text);
        }
        problem(
                column,
                column.subject() + " must have at most " + MOST_NAME_CHARS + " characters, found " + text.length()
                        + "; expected a shorter name.");
        return Optional.empty();
    }

    private static String dateAdvice(CellContent content) {
        return content instanceof CellContent.Amount
                ? "; format the cell as text and type it again."
                : "; expected a name or a mark.";
    }

    public OptionalDouble number(Column column) {
        return number(column, column.quantity());
    }

    /** A number of a quantity that this row decides, inside the column's limit, in the domain's unit. */
    public OptionalDouble number(Column column, Quantity quantity) {
        CellContent content = content(column);
        Unit unit = table.unit(column, quantity);
        if (content.isBlank()) {
            return OptionalDouble.empty();
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return limited(column, amount.valueMeasureUnits(), unit, content.shown());
        }
        if (content instanceof CellContent.Words words) {
            Optional<NumberText> parsed = NumberText.parse(words.text(), quantity);
            if (parsed.isPresent()) {
                Unit written = parsed.get().unit().orElse(unit);
                return limited(column, parsed.get().valueMeasureUnits(), written, content.shown());
            }
        }
        notANumber(column, unit, quantity, content);
        return OptionalDouble.empty();
    }

    private void notANumber(Column column, Unit unit, Quantity quantity, CellContent content) {
        String ambiguous = content instanceof CellContent.Words words && NumberText.readsTwoWays(words.text(), quantity)
                ? ", which can be read two ways; write it without a thousands separator."
                : ".";
        String in = unit.label().isEmpty() ? "" : " in " + unit.spoken();
        String orWord = column.words().isEmpty() || column.kind() != Column.Kind.NUMBER_OR_WORD
                ? ""
                : " or the word " + String.join(", ", column.words());
        problem(
                column,
                column.subject() + " must be a number" + in + orWord + ", found " + content.shown() + ambiguous);
    }

    private OptionalDouble limited(Column column, double value, Unit unit, String shown) {
        Optional<Limit> limit = column.limit();
        double inDomain = unit.toDomain(value);
        if (limit.isEmpty() || limit.get().holds(inDomain)) {
            return OptionalDouble.of(inDomain);
        }
        String maybe = new NumberTypos(limit.get(), unit).maybe(value);
        problem(column, column.subject() + " must be " + unit.inWords(limit.get()) + ", found " + shown + "." + maybe);
        return OptionalDouble.empty();
    }

    public OptionalInt whole(Column column) {
        OptionalDouble number = number(column);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        double value = number.getAsDouble();
        if (value != Math.rint(value)) {
            problem(
                    column,
                    column.subject() + " must be a whole number, found "
                            + content(column).shown() + ".");
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) value);
    }

    public Optional<Boolean> yesNo(Column column) {
        if (content(column) instanceof CellContent.Truth truth) {
            return Optional.of(truth.value());
        }
        return choice(column, YES_NO, java.util.List.of("yes", "no"));
    }

    /** One of some words, each known by its {@link CloseNames#key}. */
    public <T> Optional<T> choice(Column column, Map<String, T> words, Collection<String> offered) {
        CellContent content = content(column);
        if (content.isBlank()) {
            return Optional.empty();
        }
        String found = content instanceof CellContent.Words text ? text.text() : "";
        T meant = words.get(CloseNames.key(found));
        if (meant == null) {
            problem(
                    column,
                    column.subject() + " must be " + ListText.oneOf(offered) + ", found " + content.shown() + "."
                            + CloseNames.maybe(found, words.keySet()));
        }
        return Optional.ofNullable(meant);
    }

    /** An hour of the clock, 0 to less than 12: a number, {@code 1:30}, or a time of day. */
    public OptionalDouble clock(Column column) {
        CellContent content = content(column);
        if (content instanceof CellContent.Amount amount && amount.dated() && amount.valueMeasureUnits() < 1) {
            return hour(column, Math.rint(amount.valueMeasureUnits() * 24 * 3600) / 3600, content);
        }
        if (content instanceof CellContent.Words words) {
            Optional<NumberText> hour = NumberText.parse(words.text(), Quantity.HOURS);
            if (hour.isPresent()) {
                return hour(column, hour.get().valueMeasureUnits(), content);
            }
            problem(column, clockExpected(column, content));
            return OptionalDouble.empty();
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return hour(column, amount.valueMeasureUnits(), content);
        }
        if (!content.isBlank()) {
            problem(column, clockExpected(column, content));
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble hour(Column column, double hour, CellContent content) {
        if (!Limit.CLOCK_H.holds(hour)) {
            problem(column, clockExpected(column, content));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(hour == 12 ? 0 : hour);
    }

    private static String clockExpected(Column column, CellContent content) {
        return column.subject() + " must be an hour from 0 to 12 such as 1.5 or 1:30, found " + content.shown() + ".";
    }

    /** A value, or a word instead of it, worked out by {@code ofNumber}; empty when blank or wrong. */
    public <T> Optional<T> numberOr(Column column, String word, T ofWord, DoubleFunction<T> ofNumber) {
        boolean isWord = content(column) instanceof CellContent.Words words
                && CloseNames.key(words.text()).equals(word);
        if (isWord) {
            return Optional.of(ofWord);
        }
        OptionalDouble number = number(column);
        return number.isPresent() ? Optional.of(ofNumber.apply(number.getAsDouble())) : Optional.empty();
    }
}
