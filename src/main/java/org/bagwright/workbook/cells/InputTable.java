package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** An input sheet with its headings found: which column is where, in which unit, and the rows below. */
public final class InputTable {
    private static final int HEADING_ROWS = 10;
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*([\\[(])([^\\])]*)[\\])]\\s*");

    private record Place(int index, Optional<Unit> unit) {}

    private record Heading(String name, Optional<String> unit, boolean squareBrackets, int index) {}

    private final XSSFSheet sheet;
    private final SheetSchema schema;
    private final BookContext context;
    private final int headingRow;
    private final Map<Column, Place> places = new HashMap<>();
    private final List<Heading> foreign = new ArrayList<>();

    private InputTable(XSSFSheet sheet, SheetSchema schema, BookContext context, int headingRow) {
        this.sheet = sheet;
        this.schema = schema;
        this.context = context;
        this.headingRow = headingRow;
    }

    /** The table on a sheet, or nothing when no row among the first ten has a heading that is known. */
    public static Optional<InputTable> on(XSSFSheet sheet, SheetSchema schema, BookContext context) {
        int best = -1;
        long most = 0;
        for (int row = 0; row < HEADING_ROWS; row++) {
            long known = headings(sheet.getRow(row), context).stream()
                    .filter(heading -> schema.column(heading.name()).isPresent())
                    .count();
            if (known > most) {
                most = known;
                best = row;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        InputTable table = new InputTable(sheet, schema, context, best);
        table.placeColumns();
        return Optional.of(table);
    }

    /** The table of a sheet in a book, or nothing when the book has no such sheet or no headings on it. */
    public static Optional<InputTable> in(XSSFWorkbook workbook, SheetSchema schema, BookContext context) {
        for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
            if (schema.isCalled(workbook.getSheetName(index))) {
                return on(workbook.getSheetAt(index), schema, context);
            }
        }
        return Optional.empty();
    }

    private static List<Heading> headings(XSSFRow row, BookContext context) {
        List<Heading> headings = new ArrayList<>();
        if (row != null) {
            for (Cell cell : row) {
                if (context.contents().of(cell) instanceof CellContent.Words words) {
                    headings.add(heading(words.text(), cell.getColumnIndex()));
                }
            }
        }
        return headings;
    }

    /** A unit stands in square brackets; in round ones anything may stand, and counts only when it is a unit. */
    private static Heading heading(String text, int index) {
        Matcher withUnit = WITH_UNIT.matcher(text);
        return withUnit.matches()
                ? new Heading(
                        withUnit.group(1),
                        Optional.of(withUnit.group(3)),
                        withUnit.group(2).equals("["),
                        index)
                : new Heading(text, Optional.empty(), false, index);
    }

    private void placeColumns() {
        for (Heading heading : headings(sheet.getRow(headingRow), context)) {
            Optional<Column> column = schema.column(heading.name());
            if (column.isEmpty()) {
                foreign.add(heading);
            } else if (places.containsKey(column.get())) {
                context.findings()
                        .problem(
                                address(headingRow, heading.index()),
                                "the column " + column.get().header() + " appears twice, first in "
                                        + address(
                                                headingRow,
                                                places.get(column.get()).index()) + "; expected once.");
            } else {
                places.put(column.get(), new Place(heading.index(), unitOf(column.get(), heading)));
            }
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
                            address(headingRow, heading.index()),
                            "the unit of " + column.header() + " must be one of "
                                    + column.quantity().labels() + ", found \""
                                    + heading.unit().get() + "\".");
        }
        return unit;
    }

    public boolean has(Column column) {
        return places.containsKey(column);
    }

    /** The unit in which numbers of a column are written, the quantity's own where the row says so. */
    Unit unit(Column column, Quantity quantity) {
        Units units = context.units();
        return Optional.ofNullable(places.get(column)).flatMap(Place::unit).orElseGet(() -> quantity.usual(units));
    }

    /** One problem, at the first known heading, for all columns that must be there and are not. */
    public boolean requireColumns(List<Column> columns) {
        List<Column> missing = columns.stream().filter(column -> !has(column)).toList();
        if (missing.isEmpty()) {
            return true;
        }
        String names = missing.stream().map(Column::header).collect(Collectors.joining(", "));
        String text = (missing.size() == 1 ? "the column " : "the columns ") + names
                + (missing.size() == 1 ? " is" : " are") + " missing; expected among the headings of this row."
                + missing.stream().map(this::maybeMeant).collect(Collectors.joining());
        context.findings().problem(firstHeadingCell(), text);
        return false;
    }

    private String maybeMeant(Column missing) {
        return foreign.stream()
                .filter(heading -> CloseNames.closest(heading.name(), List.of(missing.header()))
                        .isPresent())
                .findFirst()
                .map(heading -> " Maybe \"" + heading.name() + "\" in " + address(headingRow, heading.index())
                        + " is meant as \"" + missing.header() + "\"?")
                .orElse("");
    }

    /** Says of each foreign heading that looks like a slip of a column that is not there, that it is not read. */
    public void warnOfCloseHeadings(List<Column> alreadyReported) {
        for (Heading heading : foreign) {
            List<String> absent = schema.columns().stream()
                    .filter(column -> !has(column) && !alreadyReported.contains(column))
                    .map(Column::header)
                    .toList();
            CloseNames.closest(heading.name(), absent).ifPresent(name -> context.findings()
                    .warning(
                            address(headingRow, heading.index()),
                            "no column is called \"" + heading.name() + "\", so it is not read. Maybe \"" + name
                                    + "\"?"));
        }
    }

    /** The rows below the headings that hold something other than a note and are no example. */
    public List<InputRow> rows() {
        List<InputRow> rows = new ArrayList<>();
        int[] telling = places.entrySet().stream()
                .filter(place -> !place.getKey().header().equals("Note"))
                .mapToInt(place -> place.getValue().index())
                .toArray();
        for (Row row : sheet) {
            if (row.getRowNum() > headingRow && isFilled((XSSFRow) row) && counts(row, telling)) {
                InputRow input = new InputRow(this, context, row.getRowNum());
                if (!isExample(input)) {
                    rows.add(input);
                }
            }
        }
        return rows;
    }

    /** A quick look, since a book may have many thousand rows with a look and nothing in them. */
    private static boolean isFilled(XSSFRow row) {
        for (Cell cell : row) {
            CTCell held = ((XSSFCell) cell).getCTCell();
            if (held.isSetV() || held.isSetF() || held.isSetIs()) {
                return true;
            }
        }
        return false;
    }

    private boolean counts(Row row, int[] columns) {
        return IntStream.of(columns)
                .anyMatch(column -> !context.contents().of(row.getCell(column)).isBlank());
    }

    private boolean isExample(InputRow row) {
        return schema.nameColumns().stream().filter(row::isGiven).findFirst().stream()
                .anyMatch(column -> row.content(column) instanceof CellContent.Words words
                        && CloseNames.key(words.text()).startsWith("example"));
    }

    CellContent content(int row, Column column) {
        Place place = places.get(column);
        XSSFRow cells = sheet.getRow(row);
        return place == null || cells == null
                ? CellContent.blank()
                : context.contents().of(cells.getCell(place.index()));
    }

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
        return address(row, place == null ? firstIndex() : place.index());
    }

    public String firstHeadingCell() {
        return address(headingRow, firstIndex());
    }

    public String cellUnder(Column column) {
        return cell(headingRow + 1, column);
    }

    SheetSchema schema() {
        return schema;
    }

    private int firstIndex() {
        return places.values().stream().mapToInt(Place::index).min().orElse(0);
    }

    private String address(int row, int index) {
        return BookContext.address(sheet, row, index);
    }
}
