package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/**
 * One column of an input sheet.
 *
 * @param header its heading
 * @param kind what its cells hold
 * @param quantity what a number in it measures
 * @param limit the values a number may have, in the domain's unit
 * @param words what a choice may be, as the template offers it
 * @param help what to enter
 * @param blank what a blank cell means
 * @param needed whether every row must fill it in
 */
public record Column(
        String header,
        Kind kind,
        Quantity quantity,
        Optional<Limit> limit,
        List<String> words,
        String help,
        String blank,
        boolean needed) {
    /** What a cell holds. */
    public enum Kind {
        TEXT,
        GOLFER,
        SLEEVE,
        KIT,
        MARK,
        MARKS,
        CHOICE,
        YES_NO,
        CLOCK,
        WHOLE,
        NUMBER,
        NUMBER_OR_WORD
    }

    public Column {
        words = List.copyOf(words);
    }

    public static Column of(Kind kind, String header, String help) {
        return new Column(header, kind, Quantity.PLAIN, Optional.empty(), List.of(), help, "nothing", false);
    }

    static Column number(String header, Quantity quantity, Limit limit, String help) {
        return new Column(header, Kind.NUMBER, quantity, Optional.of(limit), List.of(), help, "nothing", false);
    }

    static Column whole(String header, Limit limit, String help) {
        return new Column(header, Kind.WHOLE, Quantity.PLAIN, Optional.of(limit), List.of(), help, "nothing", false);
    }

    public static Column yesNo(String header, String help) {
        return of(Kind.YES_NO, header, help).offering("yes", "no");
    }

    Column as(Kind other) {
        return new Column(header, other, quantity, limit, words, help, blank, needed);
    }

    Column offering(String... offered) {
        return new Column(header, kind, quantity, limit, List.of(offered), help, blank, needed);
    }

    Column ifBlank(String meaning) {
        return new Column(header, kind, quantity, limit, words, help, meaning, needed);
    }

    Column mustBeFilled() {
        return new Column(header, kind, quantity, limit, words, help, "not possible", true);
    }

    /** The heading inside a sentence: {@code loft target}, but {@code CG height} and {@code X}; Must is quoted. */
    public String subject() {
        if (header.equals("Must")) {
            return "\"Must\"";
        }
        boolean initials = header.length() == 1 || Character.isUpperCase(header.charAt(1));
        return initials ? header : Character.toLowerCase(header.charAt(0)) + header.substring(1);
    }

    /** The note for people: what to enter and what a blank cell means. */
    public String note() {
        return help + "\n" + (needed ? "Must be filled in." : "Blank: " + blank + ".");
    }
}
