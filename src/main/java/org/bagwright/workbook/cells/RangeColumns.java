package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberText;

/**
 * Columns in any of which a range such as {@code 18-22} gives both limits.
 *
 * @param least the column of the least value
 * @param most the column of the most
 * @param wish the column of the value wanted, blank where it holds a range
 */
record RangeColumns(Column least, Column most, Optional<Column> wish) {
    private static final String LEAST = " least";
    private static final Pattern RANGE = Pattern.compile(
            "(\\d[\\d.,]*)\\s*([^\\d\\s\\-\u2013\u2014.]*)\\s*(?:-|\u2013|\u2014|\\bto\\b|\\.\\.+)\\s*(\\d[\\d.,]*)\\s*(\\D*)");

    /** Those of a sheet: every pair such as Gap least and Gap most, with Gap wish where there is one. */
    static List<RangeColumns> of(SheetSchema schema) {
        List<RangeColumns> all = new ArrayList<>();
        for (Column column : schema.columns()) {
            if (column.header().endsWith(LEAST)) {
                String what = column.header().substring(0, column.header().length() - LEAST.length());
                called(schema, what + " most")
                        .ifPresent(most -> all.add(new RangeColumns(column, most, called(schema, what + " wish"))));
            }
        }
        return all;
    }

    private static Optional<Column> called(SheetSchema schema, String header) {
        return schema.columns().stream()
                .filter(column -> column.header().equals(header))
                .findFirst();
    }

    /** Reads a range in one of these cells of a row as if its ends were in the cells for least and most. */
    void spread(InputRow row) {
        List<Column> columns = new ArrayList<>(List.of(least, most));
        wish.ifPresent(columns::add);
        for (Column column : columns) {
            if (row.content(column) instanceof CellContent.Words words) {
                Matcher range = RANGE.matcher(words.text().strip());
                if (range.matches()) {
                    spread(row, column, range);
                    return;
                }
            }
        }
    }

    private void spread(InputRow row, Column given, Matcher range) {
        for (Column other : List.of(least, most)) {
            if (!other.equals(given) && row.isGiven(other)) {
                row.problem(
                        given,
                        given.subject() + " must be one number where " + other.subject() + " is given too, found \""
                                + range.group() + "\".");
            }
        }
        String unit = range.group(4);
        String first = range.group(1) + " " + (range.group(2).isEmpty() ? unit : range.group(2));
        String second = range.group(3) + " " + unit;
        boolean rising = value(first, given) <= value(second, given);
        row.put(given, CellContent.blank(), given);
        row.put(least, CellContent.words((rising ? first : second).strip()), given);
        row.put(most, CellContent.words((rising ? second : first).strip()), given);
    }

    private static double value(String text, Column column) {
        return NumberText.parse(text, column.quantity())
                .map(NumberText::valueMeasureUnits)
                .orElse(0.0);
    }
}
