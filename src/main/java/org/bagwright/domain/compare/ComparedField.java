package org.bagwright.domain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;

/**
 * One thing that several books say of a golfer or of a club of his.
 *
 * @param what what it is, such as {@code length}
 * @param unit its unit, or nothing
 * @param values what each book says, in their order; empty where a book says nothing
 */
public record ComparedField(String what, String unit, List<String> values) {

    private static final String ABSENT = "-";

    public ComparedField {
        Checks.named(what, "field");
        values = List.copyOf(values);
    }

    /** A value with its unit. */
    record Value(String text, String unit) {}

    /** The fields of several books next to each other, in the order in which they come up first. */
    static List<ComparedField> of(List<Map<String, Value>> books) {
        Set<String> names = new LinkedHashSet<>();
        books.forEach(book -> names.addAll(book.keySet()));
        List<ComparedField> fields = new ArrayList<>();
        for (String name : names) {
            String unit = books.stream()
                    .filter(book -> book.containsKey(name))
                    .map(book -> book.get(name).unit())
                    .findFirst()
                    .orElse("");
            List<String> values = books.stream()
                    .map(book -> book.containsKey(name) ? book.get(name).text() : "")
                    .toList();
            fields.add(new ComparedField(name, unit, values));
        }
        return fields;
    }

    /** A number to a tenth, under its name. */
    static void put(Map<String, Value> fields, String what, String unit, OptionalDouble value) {
        fields.put(what, new Value(value.isPresent() ? Numbers.fixed(value.getAsDouble(), 1) : "", unit));
    }

    /** The same fields, each named as one of a club. */
    static Map<String, Value> of(String club, Map<String, Value> fields) {
        Map<String, Value> named = new LinkedHashMap<>();
        fields.forEach((what, value) -> named.put(club + " " + what, value));
        return named;
    }

    /** Whether not all books say the same. */
    public boolean differs() {
        return values.stream().distinct().count() > 1;
    }

    /** The field as people say it, such as {@code length 45 -> 44 in}. */
    public String inWords() {
        String all =
                values.stream().map(value -> value.isEmpty() ? ABSENT : value).collect(Collectors.joining(" -> "));
        return what + " " + all + (unit.isEmpty() ? "" : " " + unit);
    }

    /** Whether every book says something. */
    public boolean isInAllBooks() {
        return values.stream().noneMatch(String::isEmpty);
    }

    /** By how much the last book is above the first, in the field's unit; empty unless both give numbers. */
    public OptionalDouble rise() {
        OptionalDouble first = number(values.get(0));
        OptionalDouble last = number(values.get(values.size() - 1));
        return first.isPresent() && last.isPresent()
                ? OptionalDouble.of(last.getAsDouble() - first.getAsDouble())
                : OptionalDouble.empty();
    }

    /** By how much the last book is above the first, percent; empty unless both give numbers. */
    public OptionalDouble risePercent() {
        OptionalDouble first = number(values.get(0));
        OptionalDouble last = number(values.get(values.size() - 1));
        return first.isPresent() && last.isPresent() && first.getAsDouble() > 0
                ? OptionalDouble.of(100 * (last.getAsDouble() / first.getAsDouble() - 1))
                : OptionalDouble.empty();
    }

    /** A value as a number; empty where it is none. */
    public static OptionalDouble number(String value) {
        return value.matches("-?\\d+(\\.\\d+)?")
                ? OptionalDouble.of(Double.parseDouble(value))
                : OptionalDouble.empty();
    }
}
