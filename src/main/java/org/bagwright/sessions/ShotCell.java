package org.bagwright.sessions;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.text.CloseNames;

/**
 * A cell of a file that holds a number: {@code 231.5}, {@code 231,5 m}, {@code 12 L}, {@code 12.3R}.
 *
 * @param text its text
 * @param field what it holds
 */
record ShotCell(String text, ShotField field) {
    private static final Pattern SHAPE = Pattern.compile(
            "(?:(left|right|l|r)\\s*)?([+-]?)\\s*(" + NumberStyle.DIGITS + ")\\s*(\\D.*)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SIDE_BEHIND =
            Pattern.compile("(.*?)\\s*(left|right|l|r)\\.?", Pattern.CASE_INSENSITIVE);
    private static final Set<String> NOTHING =
            Set.of("", "-", "--", "---", "\u2013", "\u2014", "n/a", "na", "#n/a", "nan", "null", "none", "?");
    private static final int MOST_SHOWN_CHARS = 40;

    boolean isBlank() {
        return NOTHING.contains(CloseNames.key(text));
    }

    /**
     * The number in the domain's unit; empty where nothing was measured.
     *
     * @param told the unit of the column
     */
    OptionalDouble value(NumberStyle style, ColumnUnits.Told told) throws BadRowException {
        if (isBlank()) {
            return OptionalDouble.empty();
        }
        Matcher shape = SHAPE.matcher(text.strip().replace('\u2212', '-'));
        if (!shape.matches() || (shape.group(1) != null && field != ShotField.SIDE)) {
            throw bad("must be a number");
        }
        OptionalDouble size = style.value(shape.group(3), field);
        if (size.isEmpty()) {
            throw bad(
                    style.readsTwoWays(shape.group(3), field)
                            ? "can be read in two ways, with a separator of thousands or of decimals"
                            : "must be a number");
        }
        return OptionalDouble.of(signed(shape, size.getAsDouble(), told));
    }

    private double signed(Matcher shape, double size, ColumnUnits.Told told) throws BadRowException {
        String rest = shape.group(4) == null ? "" : shape.group(4).strip();
        String side = shape.group(1) == null ? "" : shape.group(1);
        Matcher behind = SIDE_BEHIND.matcher(rest);
        if (field == ShotField.SIDE && behind.matches()) {
            if (!side.isEmpty()) {
                throw bad("must be to one side");
            }
            side = behind.group(2);
            rest = behind.group(1);
        }
        if (!side.isEmpty() && !shape.group(2).isEmpty() && size != 0) {
            throw bad("must have a sign or a side, not both");
        }
        boolean negative =
                shape.group(2).equals("-") || side.toLowerCase(Locale.ROOT).startsWith("l");
        double value = negative && size != 0 ? -size : size;
        return told == null ? plain(value, rest) : unit(rest, told).toSi(value);
    }

    private double plain(double value, String rest) throws BadRowException {
        if (!rest.isEmpty()) {
            throw bad("must be a number");
        }
        return value;
    }

    private FileUnit unit(String rest, ColumnUnits.Told told) throws BadRowException {
        if (rest.isEmpty()) {
            return told.unit();
        }
        FileUnit own = FileUnit.called(rest, field.units())
                .orElseThrow(() -> bad("must be a number in one of " + field.unitLabels()));
        boolean byFile =
                told.from().equals(ColumnUnits.BY_HEADING) || told.from().equals(ColumnUnits.BY_ROW);
        if (byFile && own != told.unit()) {
            throw bad("must be in " + told.unit().label() + " as its heading says");
        }
        return own;
    }

    private BadRowException bad(String must) {
        return new BadRowException(field.column() + " " + must + ", found " + quoted(text) + ".");
    }

    /** A text of a file inside a sentence: short, and without what would move a terminal's cursor. */
    static String quoted(String text) {
        String plain = text.strip().replaceAll("\\p{Cntrl}+", " ");
        return '"'
                + (plain.codePointCount(0, plain.length()) <= MOST_SHOWN_CHARS
                        ? plain
                        : plain.substring(0, plain.offsetByCodePoints(0, MOST_SHOWN_CHARS)) + "...")
                + '"';
    }
}
