package org.bagwright.workbook.schema;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;

/** One input sheet, and the columns that its headings mean. */
public final class SheetSchema {
    private static final double ALIKE = 0.5;

    private final String name;
    private final String about;
    private final List<Column> columns;
    private final List<Column> nameColumns;
    private final Map<String, Column> byLetters = new HashMap<>();
    private final Map<HeadingWords, Column> byWords = new HashMap<>();

    /**
     * A sheet.
     *
     * @param name its name
     * @param about what a row of it is, for people
     * @param columns its columns in the template's order
     * @param nameColumns the columns that name a row; a row whose name starts with "Example" is not read
     */
    public SheetSchema(String name, String about, List<Column> columns, List<Column> nameColumns) {
        this.name = name;
        this.about = about;
        this.columns = List.copyOf(columns);
        this.nameColumns = List.copyOf(nameColumns);
        this.columns.forEach(column -> know(column.header(), column));
        this.columns.forEach(column -> column.alsoCalled().forEach(other -> know(other, column)));
    }

    /** A column's own heading goes before a word for another one. */
    private void know(String heading, Column column) {
        byLetters.putIfAbsent(letters(heading), column);
        byWords.putIfAbsent(HeadingWords.of(heading), column);
    }

    public String name() {
        return name;
    }

    public String about() {
        return about;
    }

    public List<Column> columns() {
        return columns;
    }

    public List<Column> nameColumns() {
        return nameColumns;
    }

    /** The column that a heading means: by its own name, or by another word of the trade, in any order and spelling. */
    public Optional<Column> column(String heading) {
        return Optional.ofNullable(byLetters.get(letters(heading)))
                .or(() -> Optional.ofNullable(byWords.get(HeadingWords.of(heading))))
                .filter(column -> !isNumberOfRow(heading, column));
    }

    /** Whether a heading such as {@code Shot} numbers the rows, and does not count as {@code Shots} does. */
    private static boolean isNumberOfRow(String heading, Column column) {
        String singular = singular(column.header());
        return column.kind() == Column.Kind.WHOLE
                && !singular.equals(column.header())
                && heading.replaceAll("[^\\p{L}]", "").equalsIgnoreCase(singular);
    }

    /** The column among some that a heading, which means none, is probably a slip of, or has words in common with. */
    public Optional<Column> closest(String heading, Collection<Column> among) {
        List<String> names = new ArrayList<>();
        among.forEach(column -> names.add(column.header()));
        among.forEach(column -> names.addAll(column.alsoCalled()));
        return CloseNames.closest(heading, names).flatMap(this::column).or(() -> alike(heading, among));
    }

    private static Optional<Column> alike(String heading, Collection<Column> among) {
        HeadingWords words = HeadingWords.of(heading);
        Comparator<Column> likeness = Comparator.comparingDouble(
                column -> HeadingWords.of(column.header()).likeness(words));
        return among.stream()
                .max(likeness)
                .filter(column -> HeadingWords.of(column.header()).likeness(words) >= ALIKE);
    }

    public boolean isCalled(String sheetName) {
        return squeezed(sheetName).equals(squeezed(name));
    }

    private static String squeezed(String sheetName) {
        return CloseNames.key(sheetName).replace(" ", "");
    }

    /** The letters and digits of a heading alone. */
    static String letters(String heading) {
        return singular(heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", ""));
    }

    /** A word without the s of the plural; both sides of a comparison lose it. */
    static String singular(String word) {
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }
}
