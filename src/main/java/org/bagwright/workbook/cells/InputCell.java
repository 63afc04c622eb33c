package org.bagwright.workbook.cells;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.DateUtil;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.LookText;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.NumberTypos;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/**
 * One cell of an input sheet. Each reading gives its value, or empty when it is blank or holds something wrong, which is
 * then reported.
 *
 * @param column its column
 * @param content what it holds
 * @param problem where to report what is wrong
 */
public record InputCell(Column column, CellContent content, Consumer<String> problem) {
    private static final int MOST_NAME_CHARS = 50;
    private static final LocalDate FIRST_DAY = LocalDate.of(1990, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2099, 12, 31);
    private static final Map<String, Boolean> YES_NO =
            Map.of("yes", true, "y", true, "true", true, "x", true, "no", false, "n", false, "false", false);

    /** Words, or a number as its text: 1 and 1.0 both give "1". */
    public Optional<String> text() {
        if (content instanceof CellContent.Words words) {
            return nameLike(words.text());
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return Optional.of(Numbers.trimmed(amount.valueMeasureUnits()));
        }
        if (!content.isBlank()) {
            problem.accept(column.subject() + " must be text, found " + content.shown() + dateAdvice());
        }
        return Optional.empty();
    }

    /** Lookups of a spreadsheet program take at most 255 characters, and on the sheet Plan several names make up one. */
    private Optional<String> nameLike(String text) {
        if (column.kind() == Column.Kind.MARKS || text.length() <= MOST_NAME_CHARS) {
            return Optional.of(text);
        }
        problem.accept(column.subject() + " must have at most " + MOST_NAME_CHARS + " characters, found "
                + text.length() + "; expected a shorter name.");
        return Optional.empty();
    }

    private String dateAdvice() {
        return content instanceof CellContent.Amount
                ? "; format the cell as text and type it again."
                : "; expected a name or a mark.";
    }

    /** A number inside the column's limit, in the domain's unit; {@code unit} where the cell writes none. */
    public OptionalDouble number(Quantity quantity, Unit unit) {
        if (content.isBlank()) {
            return OptionalDouble.empty();
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return limited(amount.valueMeasureUnits(), quantity, unit);
        }
        Optional<NumberText> parsed = content instanceof CellContent.Words words
                ? NumberText.parse(words.text(), quantity)
                : Optional.empty();
        if (parsed.isPresent()) {
            return limited(
                    parsed.get().valueMeasureUnits(),
                    quantity,
                    parsed.get().unit().orElse(unit));
        }
        notANumber(quantity, unit);
        return OptionalDouble.empty();
    }

    private void notANumber(Quantity quantity, Unit unit) {
        String ambiguous = content instanceof CellContent.Words words && NumberText.readsTwoWays(words.text(), quantity)
                ? ", which can be read two ways; write it without a thousands separator."
                : ".";
        String in = unit.label().isEmpty() ? "" : " in " + unit.spoken();
        String orWord = column.words().isEmpty() || column.kind() != Column.Kind.NUMBER_OR_WORD
                ? ""
                : " or the word " + ListText.oneOf(column.words());
        problem.accept(column.subject() + " must be a number" + in + orWord + ", found " + content.shown() + ambiguous);
    }

    private OptionalDouble limited(double value, Quantity quantity, Unit unit) {
        Optional<Limit> limit = column.limit();
        double inDomain = unit.toDomain(value);
        if (limit.isEmpty() || limit.get().holds(inDomain)) {
            return OptionalDouble.of(inDomain);
        }
        String maybe = new NumberTypos(limit.get(), unit).maybe(value, quantity);
        problem.accept(column.subject() + " must be " + unit.inWords(limit.get()) + ", found " + content.shown() + "."
                + maybe);
        return OptionalDouble.empty();
    }

    /** A look at address, degrees closed; a bare number means the side of the column, whatever its sign. */
    public OptionalDouble look(boolean open, Unit unit) {
        Optional<LookText> worded =
                content instanceof CellContent.Words words ? LookText.parse(words.text()) : Optional.empty();
        if (worded.isPresent()) {
            return limited(worded.get().closedDeg(), column.quantity(), unit);
        }
        OptionalDouble number = number(column.quantity(), unit);
        if (number.isEmpty()) {
            return number;
        }
        double sizeDeg = Math.abs(number.getAsDouble());
        return OptionalDouble.of(open && sizeDeg > 0 ? -sizeDeg : sizeDeg);
    }

    OptionalInt whole(Unit unit) {
        OptionalDouble number = number(column.quantity(), unit);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        double value = number.getAsDouble();
        if (value != Math.rint(value)) {
            problem.accept(column.subject() + " must be a whole number, found " + content.shown() + ".");
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) value);
    }

    public Optional<Boolean> yesNo() {
        return content instanceof CellContent.Truth truth
                ? Optional.of(truth.value())
                : choice(YES_NO, List.of("yes", "no"));
    }

    /** One of some words, each known by its {@link CloseNames#key}. */
    <T> Optional<T> choice(Map<String, T> words, Collection<String> offered) {
        if (content.isBlank()) {
            return Optional.empty();
        }
        String found = content instanceof CellContent.Words text ? text.text() : "";
        T meant = Optional.ofNullable(words.get(CloseNames.key(found))).orElseGet(() -> words.get(plain(found)));
        if (meant == null) {
            problem.accept(column.subject() + " must be " + ListText.oneOf(offered) + ", found " + content.shown() + "."
                    + CloseNames.maybe(found, words.keySet()));
        }
        return Optional.ofNullable(meant);
    }

    /** A word without hyphens and the like, and without the s of the plural. */
    private static String plain(String word) {
        return CloseNames.key(word.replaceAll("[^\\p{L}\\p{N}]+", " ")).replaceAll("(?<=..)s$", "");
    }

    /** A day: a date of the spreadsheet program, or text such as 2026-05-31. */
    Optional<LocalDate> date() {
        if (content.isBlank()) {
            return Optional.empty();
        }
        Optional<LocalDate> day = writtenDay().filter(found -> !found.isBefore(FIRST_DAY) && !found.isAfter(LAST_DAY));
        if (day.isEmpty()) {
            problem.accept(column.subject() + " must be a date from " + FIRST_DAY + " to " + LAST_DAY + ", such as "
                    + "2026-05-31, found "
                    + writtenDay().map(LocalDate::toString).orElseGet(content::shown)
                    + (content instanceof CellContent.Amount amount && !amount.dated()
                            ? "; format the cell as a date."
                            : "."));
        }
        return day;
    }

    private Optional<LocalDate> writtenDay() {
        if (content instanceof CellContent.Amount amount && amount.dated() && amount.valueMeasureUnits() >= 1) {
            return Optional.ofNullable(DateUtil.getLocalDateTime(amount.valueMeasureUnits()))
                    .map(LocalDateTime::toLocalDate);
        }
        try {
            return content instanceof CellContent.Words words
                    ? Optional.of(LocalDate.parse(words.text().replaceFirst("(?<=^.{10})[ T].*", "")))
                    : Optional.empty();
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    /** An hour of the clock, 0 to less than 12: a number, {@code 1:30}, or a time of day. */
    OptionalDouble clock() {
        if (content.isBlank()) {
            return OptionalDouble.empty();
        }
        OptionalDouble hour = writtenHour();
        if (hour.isEmpty() || !Limit.CLOCK_H.holds(hour.getAsDouble())) {
            problem.accept(column.subject() + " must be an hour from 0 to 12 such as 1.5 or 1:30, found "
                    + content.shown() + ".");
            return OptionalDouble.empty();
        }
        return hour.getAsDouble() == 12 ? OptionalDouble.of(0) : hour;
    }

    private OptionalDouble writtenHour() {
        if (content instanceof CellContent.Amount amount) {
            double value = amount.valueMeasureUnits();
            if (!amount.dated()) {
                return OptionalDouble.of(value);
            }
            return value < 1 ? OptionalDouble.of(Math.rint(value * 24 * 3600) / 3600) : OptionalDouble.empty();
        }
        Optional<NumberText> parsed = content instanceof CellContent.Words words
                ? NumberText.parse(words.text(), Quantity.HOURS)
                : Optional.empty();
        return parsed.isPresent() ? OptionalDouble.of(parsed.get().valueMeasureUnits()) : OptionalDouble.empty();
    }
}
