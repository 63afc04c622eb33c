package org.bagwright.sessions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;

/**
 * Headings whose meaning a person has given, as the book remembers them: {@code Flight = Carry (m); Zone = none}.
 *
 * @param byKey what each heading means, by its key
 */
public record LearntHeadings(Map<String, Meaning> byKey) {
    public static final LearntHeadings NONE = new LearntHeadings(Map.of());

    private static final String NOTHING = "none";

    /**
     * What a heading means.
     *
     * @param heading the heading as the person typed it
     * @param field what its column holds; empty where it is to be left out
     * @param unit the unit of its numbers, where the person gave it
     */
    record Meaning(String heading, Optional<ShotField> field, Optional<FileUnit> unit) {
        String text() {
            return heading + " = " + field.map(ShotField::column).orElse(NOTHING)
                    + unit.map(given -> " (" + given.label() + ")").orElse("");
        }
    }

    public LearntHeadings {
        byKey = new LinkedHashMap<>(byKey);
    }

    /**
     * What a book remembers.
     *
     * @throws WrongOptionException if an entry cannot be read
     */
    public static LearntHeadings of(String remembered) throws WrongOptionException {
        List<String> entries = new ArrayList<>();
        for (String entry : remembered.split(";")) {
            if (!entry.isBlank()) {
                entries.add(entry);
            }
        }
        return NONE.with(entries);
    }

    /**
     * These headings and others, each {@code HEADING=COLUMN}; of two meanings of one heading the later counts.
     *
     * @throws WrongOptionException if one has another form, or its column is unknown
     */
    public LearntHeadings with(List<String> entries) throws WrongOptionException {
        Map<String, Meaning> all = new LinkedHashMap<>(byKey);
        for (String entry : entries) {
            Meaning meaning = meaning(entry);
            all.put(new HeadingText(meaning.heading()).key(), meaning);
        }
        return new LearntHeadings(all);
    }

    private static Meaning meaning(String entry) throws WrongOptionException {
        int equals = entry.lastIndexOf('=');
        String heading = equals < 0 ? "" : entry.substring(0, equals).strip();
        if (heading.isEmpty() || entry.substring(equals + 1).isBlank()) {
            throw new WrongOptionException("A heading of a file is given as \"HEADING=COLUMN\", such as"
                    + " \"Flight=Carry\" or \"Zone=none\"; found \"" + entry.strip() + "\".");
        }
        HeadingText column = new HeadingText(entry.substring(equals + 1).strip());
        String name = column.text().replaceAll("\\s*[\\[(].*", "");
        String plain = heading.replaceAll("[;=]", " ");
        if (CloseNames.key(name).equals(NOTHING)) {
            return new Meaning(plain, Optional.empty(), Optional.empty());
        }
        Optional<ShotField> field = ShotField.ofColumn(name);
        if (field.isEmpty()) {
            throw new WrongOptionException("\"" + heading + "\" must be one of "
                    + ListText.allOf(ShotField.columns()) + ", or none; found \"" + name + "\"."
                    + CloseNames.maybe(name, ShotField.columns()));
        }
        return new Meaning(plain, field, unit(column, field.get()));
    }

    private static Optional<FileUnit> unit(HeadingText column, ShotField field) throws WrongOptionException {
        if (column.inBrackets().isEmpty()) {
            return Optional.empty();
        }
        String found = column.inBrackets().get(0);
        Optional<FileUnit> unit = FileUnit.called(found, field.units());
        if (unit.isEmpty()) {
            throw new WrongOptionException("The unit of " + field.column() + " must be one of "
                    + field.units().stream().map(FileUnit::label).collect(Collectors.joining(", ")) + "; found \""
                    + found + "\".");
        }
        return unit;
    }

    Optional<Meaning> of(HeadingText heading) {
        return Optional.ofNullable(byKey.get(heading.key()));
    }

    /** As a book remembers them. */
    public String text() {
        return byKey.values().stream().map(Meaning::text).collect(Collectors.joining("; "));
    }
}
