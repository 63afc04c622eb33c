package org.bagwright.workbook.text;

import org.bagwright.domain.text.Numbers;

/** What a cell holds, a formula by its value. */
public sealed interface CellContent {
    int MOST_SHOWN_CHARS = 60;

    static CellContent blank() {
        return new Blank();
    }

    /** Nothing, or nothing but space. */
    record Blank() implements CellContent {}

    /** Words, stripped of surrounding space. */
    record Words(String text) implements CellContent {}

    /**
     * A number.
     *
     * @param valueMeasureUnits the number in the cell, days for a date or a time
     * @param dated whether the cell shows it as a date or a time
     */
    record Amount(double valueMeasureUnits, boolean dated) implements CellContent {}

    /** TRUE or FALSE. */
    record Truth(boolean value) implements CellContent {}

    /** An error, or a formula that gives one. */
    record Broken(String why) implements CellContent {}

    static CellContent words(String text) {
        String plain = text.replace('\u00a0', ' ').strip();
        return plain.isEmpty() ? blank() : new Words(plain);
    }

    default boolean isBlank() {
        return this instanceof Blank;
    }

    /** The content inside a sentence that begins with "found". */
    default String shown() {
        if (this instanceof Words words) {
            return '"' + shortened(words.text()) + '"';
        }
        if (this instanceof Amount amount) {
            return amount.dated() ? "a date or a time of day" : Numbers.brief(amount.valueMeasureUnits());
        }
        if (this instanceof Truth truth) {
            return truth.value() ? "TRUE" : "FALSE";
        }
        return this instanceof Broken broken ? broken.why() : "nothing";
    }

    static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= MOST_SHOWN_CHARS
                ? text
                : text.substring(0, text.offsetByCodePoints(0, MOST_SHOWN_CHARS)) + "...";
    }
}
