package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/**
 * What there is to know about a column of an input sheet.
 *
 * @param header its heading
 * @param kind what its cells hold
 * @param quantity what a number in it measures
 * @param limit the values a number may have, in the domain's unit
 * @param words what a choice may be, as the template offers it
 * @param help what to enter
 * @param blank what a blank cell means
 * @param alsoCalled other words of the trade at large for it, understood as its heading
 */
public record ColumnSpec(
        String header,
        Kind kind,
        Quantity quantity,
        Optional<Limit> limit,
        List<String> words,
        String help,
        String blank,
        List<String> alsoCalled)
        implements Column {
    private static final String NOT_POSSIBLE = "not possible";

    public ColumnSpec {
        words = List.copyOf(words);
        alsoCalled = List.copyOf(alsoCalled);
    }

    public static ColumnSpec of(Kind kind, String header, String help) {
        return new ColumnSpec(header, kind, Quantity.PLAIN, Optional.empty(), List.of(), help, "nothing", List.of());
    }

    static ColumnSpec number(String header, Quantity quantity, Limit limit, String help) {
        return new ColumnSpec(header, Kind.NUMBER, quantity, Optional.of(limit), List.of(), help, "nothing", List.of());
    }

    static ColumnSpec angle(String header, Limit limit, String help) {
        return number(header, Quantity.ANGLE, limit, help);
    }

    static ColumnSpec whole(String header, Limit limit, String help) {
        return new ColumnSpec(
                header, Kind.WHOLE, Quantity.PLAIN, Optional.of(limit), List.of(), help, "nothing", List.of());
    }

    static ColumnSpec date(String header, String help) {
        return of(Kind.DATE, header, help);
    }

    public static ColumnSpec yesNo(String header, String help) {
        return of(Kind.YES_NO, header, help).offering("yes", "no");
    }

    ColumnSpec as(Kind other) {
        return new ColumnSpec(header, other, quantity, limit, words, help, blank, alsoCalled);
    }

    ColumnSpec offering(String... offered) {
        return new ColumnSpec(header, kind, quantity, limit, List.of(offered), help, blank, alsoCalled);
    }

    ColumnSpec ifBlank(String meaning) {
        return new ColumnSpec(header, kind, quantity, limit, words, help, meaning, alsoCalled);
    }

    ColumnSpec mustBeFilled() {
        return new ColumnSpec(header, kind, quantity, limit, words, help, NOT_POSSIBLE, alsoCalled);
    }

    ColumnSpec alsoCalled(String... others) {
        return new ColumnSpec(header, kind, quantity, limit, words, help, blank, List.of(others));
    }

    @Override
    public boolean needed() {
        return blank.equals(NOT_POSSIBLE);
    }
}
