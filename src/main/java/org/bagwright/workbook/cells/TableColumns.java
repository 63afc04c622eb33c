package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/** Which column of an input sheet is where, in which unit; finds the cells of a row by their column. */
final class TableColumns {
    private record Place(int index, Optional<Unit> unit) {}

    private final XSSFSheet sheet;
    private final SheetSchema schema;
    private final BookContext context;
    private final int headingRow;
    private final Map<Column, Place> places = new HashMap<>();
    /** The headings that are no column's and that the fitter has not marked as his own. */
    private final List<Heading> foreign = new ArrayList<>();

    /** Finds the columns; reports one that appears twice, and a unit that is unknown. */
    TableColumns(XSSFSheet sheet, SheetSchema schema, BookContext context, int headingRow) {
        this.sheet = sheet;
        this.schema = schema;
        this.context = context;
        this.headingRow = headingRow;
        for (Heading heading : Heading.allOf(sheet.getRow(headingRow), context.contents())) {
            if (!heading.isOwn()) {
                schema.column(heading.name())
                        .ifPresentOrElse(column -> place(column, heading), () -> foreign.add(heading));
            }
        }
    }

    private void place(Column column, Heading heading) {
        if (places.containsKey(column)) {
            String first = "first in " + cell(headingRow, column);
            context.findings()
                    .problem(
                            cell(heading),
                            heading.isCalled(column)
                                    ? "the column " + column.header() + " appears twice, " + first + "; expected once."
                                    : "\"" + heading.name() + "\" means the column " + column.header()
                                            + ", which appears twice, " + first
                                            + "; expected once. Put * before the heading that should not be read.");
        } else {
            places.put(column, new Place(heading.index(), unitOf(column, heading)));
        }
    }

    private Optional<Unit> unitOf(Column column, Heading heading) {
        if (column.quantity() == Quantity.PLAIN || heading.unit().isEmpty()) {
            return Optional.empty();
        }
        Optional<Unit> unit = column.quantity().unit(heading.unit().get());
        if (unit.isEmpty() && heading.squareBrackets()) {
            context.findings()
                    .problem(
                            cell(heading),
                            "the unit of " + column.header() + " must be one of "
                                    + column.quantity().labels() + ", found \""
                                    + heading.unit().get() + "\".");
        }
        return unit;
    }

    boolean has(Column column) {
        return places.containsKey(column);
    }

    /** A guess which heading is meant for a column that is missing, or nothing. */
    String maybeMeant(Column missing) {
        return foreign.stream()
                .filter(heading ->
                        schema.closest(heading.name(), List.of(missing)).isPresent())
                .findFirst()
                .map(heading -> " Maybe \"" + heading.name() + "\" in " + cell(heading) + " is meant as \""
                        + missing.header() + "\"?")
                .orElse("");
    }

    /** One warning with all headings that are not read; words for notes are the fitter's own. */
    void tellUnread() {
        List<Heading> unread =
                foreign.stream().filter(Predicate.not(Heading::isNote)).toList();
        if (!unread.isEmpty()) {
            context.findings()
                    .warning(
                            cell(unread.get(0)),
                            "not read: " + unread.stream().map(this::withGuess).collect(Collectors.joining(", "))
                                    + "; * before a heading marks it as your own.");
        }
    }

    private String withGuess(Heading heading) {
        List<Column> absent =
                schema.columns().stream().filter(column -> !has(column)).toList();
        return "\"" + CellContent.shortened(heading.name()) + "\""
                + schema.closest(heading.name(), absent)
                        .map(column -> " (Maybe " + column.header() + "?)")
                        .orElse("");
    }

    int headingRow() {
        return headingRow;
    }

    /** Where the columns are, from 0, but for one of notes. */
    IntStream placesWithoutNotes() {
        return places.entrySet().stream()
                .filter(place -> !place.getKey().header().equals("Note"))
                .mapToInt(place -> place.getValue().index());
    }

    /** The unit in which numbers of a column are written: that of its heading, or the usual one of the quantity. */
    Unit unit(Column column, Quantity quantity) {
        return Optional.ofNullable(places.get(column))
                .flatMap(Place::unit)
                .orElseGet(() -> quantity.usual(context.units()));
    }

    CellContent content(int row, Column column) {
        Place place = places.get(column);
        XSSFRow cells = sheet.getRow(row);
        return place == null || cells == null
                ? CellContent.blank()
                : context.contents().of(cells.getCell(place.index()));
    }

    /** The text of the note on a cell, if it has one. */
    Optional<String> note(int row, Column column) {
        return Optional.ofNullable(places.get(column))
                .map(place -> sheet.getCellComment(new CellAddress(row, place.index())))
                .map(XSSFComment::getString)
                .map(XSSFRichTextString::getString);
    }

    /** A cell to write into, made if need be; empty where the book lacks the column. */
    Optional<XSSFCell> cellToWrite(int row, Column column) {
        return Optional.ofNullable(places.get(column))
                .map(place -> sheet.getRow(row).getCell(place.index(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK));
    }

    /** The address of a column's cell in a row; where the book lacks the column, the row's first known column. */
    String cell(int row, Column column) {
        Place place = places.get(column);
        return BookContext.address(sheet, row, place == null ? firstIndex() : place.index());
    }

    String cell(Heading heading) {
        return BookContext.address(sheet, headingRow, heading.index());
    }

    String firstHeadingCell() {
        return BookContext.address(sheet, headingRow, firstIndex());
    }

    int firstIndex() {
        return places.values().stream().mapToInt(Place::index).min().orElse(0);
    }
}
