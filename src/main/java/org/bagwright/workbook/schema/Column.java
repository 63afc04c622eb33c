package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** One column of an input sheet. */
public interface Column {
    /** What a cell holds. */
    enum Kind {
        TEXT,
        GOLFER,
        SLEEVE,
        KIT,
        MARK,
        MARKS,
        CHOICE,
        YES_NO,
        CLOCK,
        DATE,
        WHOLE,
        NUMBER,
        NUMBER_OR_WORD
    }

    /** Its heading. */
    String header();

    /** What its cells hold. */
    Kind kind();

    /** Other words of the trade for its heading, which are understood too. */
    List<String> alsoCalled();

    /** What a number in it measures. */
    Quantity quantity();

    /** The values that a number may have, in the domain's unit. */
    Optional<Limit> limit();

    /** What a choice may be, as the template offers it. */
    List<String> words();

    /** What to enter. */
    String help();

    /** What a blank cell means. */
    String blank();

    /** Whether every row must fill it in. */
    boolean needed();

    /** The heading inside a sentence: {@code loft target}, but {@code CG height} and {@code X}; Must is quoted. */
    default String subject() {
        String header = header();
        if (header.equals("Must")) {
            return "\"Must\"";
        }
        boolean initials = header.length() == 1 || Character.isUpperCase(header.charAt(1));
        return initials ? header : Character.toLowerCase(header.charAt(0)) + header.substring(1);
    }

    /** The note for people: what to enter and what a blank cell means. */
    default String note() {
        return help() + "\n" + (needed() ? "Must be filled in." : "Blank: " + blank() + ".");
    }
}
