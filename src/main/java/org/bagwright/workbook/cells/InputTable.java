package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Unit;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** An input sheet with its headings found, and the rows below. */
public final class InputTable {
    private static final int HEADING_ROWS = 10;

    private final XSSFSheet sheet;
    private final SheetSchema schema;
    private final BookContext context;
    private final TableColumns columns;
    private final List<RangeColumns> ranges;
    private boolean isHeaded = true;
    private int nextRow = -1;

    private InputTable(XSSFSheet sheet, SheetSchema schema, BookContext context, int headingRow) {
        this.sheet = sheet;
        this.schema = schema;
        this.context = context;
        this.columns = new TableColumns(sheet, schema, context, headingRow);
        this.ranges = RangeColumns.of(schema);
    }

    /** The table on a sheet, or nothing when no row among the first ten has a heading that is known. */
    public static Optional<InputTable> on(XSSFSheet sheet, SheetSchema schema, BookContext context) {
        int best = -1;
        long most = 0;
        for (int row = 0; row < HEADING_ROWS; row++) {
            long known = Heading.allOf(sheet.getRow(row), context.contents()).stream()
                    .filter(heading -> !heading.isOwn())
                    .filter(heading -> schema.column(heading.name()).isPresent())
                    .count();
            if (known > most) {
                most = known;
                best = row;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(new InputTable(sheet, schema, context, best));
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

    /**
     * Adds the heading of a column that the sheet lacks, to the right of everything on it, in the look of the others; not
     * where a sheet is full to its last column.
     */
    public InputTable with(Column column) {
        if (has(column)) {
            return this;
        }
        int last = 0;
        for (Row row : sheet) {
            last = Math.max(last, row.getLastCellNum());
        }
        if (last > SpreadsheetVersion.EXCEL2007.getLastColumnIndex()) {
            return this;
        }
        Row headings = sheet.getRow(columns.headingRow());
        Cell heading = headings.createCell(last);
        heading.setCellValue(column.header());
        heading.setCellStyle(headings.getCell(columns.firstIndex()).getCellStyle());
        return new InputTable(sheet, schema, context, columns.headingRow());
    }

    /** A new row below all that the sheet holds. */
    public InputRow newRow() {
        int index = Math.max(sheet.getLastRowNum(), columns.headingRow()) + 1;
        sheet.createRow(index);
        return new InputRow(columns, context.findings(), index);
    }

    /**
     * The row below the last one that holds anything, with the look of the row above it where it has none; empty where the
     * sheet is full.
     */
    public Optional<InputRow> nextRow() {
        nextRow = Math.max(nextRow, lastFilled()) + 1;
        if (nextRow > SpreadsheetVersion.EXCEL2007.getLastRowIndex()) {
            return Optional.empty();
        }
        if (sheet.getRow(nextRow) == null) {
            sheet.createRow(nextRow);
        }
        return Optional.of(new InputRow(columns, context.findings(), nextRow));
    }

    /** The last row that holds anything, from 0; that of the headings where none is below. */
    public int lastFilled() {
        if (nextRow >= 0) {
            return nextRow;
        }
        int last = columns.headingRow();
        for (Row row : sheet) {
            if (row.getRowNum() > last && isFilled((XSSFRow) row)) {
                last = row.getRowNum();
            }
        }
        return last;
    }

    public XSSFSheet sheet() {
        return sheet;
    }

    /** Whether a row, from 0, is the one of the headings. */
    public boolean isHeadings(int row) {
        return row == columns.headingRow();
    }

    /** The unit in which numbers of a column are written. */
    public Unit unit(Column column) {
        return columns.unit(column, column.quantity());
    }

    public boolean has(Column column) {
        return columns.has(column);
    }

    /** Reads every row. Reports needed columns that are missing, once there is any row, and headings that are not read. */
    public void read(List<Column> needed, Consumer<InputRow> reader) {
        List<InputRow> rows = rows();
        if (!rows.isEmpty()) {
            requireColumns(needed);
        }
        rows.forEach(reader);
        tellUnread();
    }

    /** One problem, at the first known heading, for all columns that must be there and are not. */
    public boolean requireColumns(List<Column> needed) {
        List<Column> missing = needed.stream().filter(column -> !has(column)).toList();
        if (missing.isEmpty()) {
            return true;
        }
        String names = missing.stream().map(Column::header).collect(Collectors.joining(", "));
        String text = (missing.size() == 1 ? "the column " : "the columns ") + names
                + (missing.size() == 1 ? " is" : " are") + " missing; expected among the headings of this row."
                + missing.stream().map(columns::maybeMeant).collect(Collectors.joining());
        context.findings().problem(firstHeadingCell(), text);
        isHeaded = 2 * missing.size() <= needed.size();
        return false;
    }

    /**
     * One warning with all headings that are not read; words for notes are the fitter's own. Where most needed columns are
     * missing, the row is more likely one without headings, and no message mentions its cells.
     */
    public void tellUnread() {
        if (isHeaded) {
            columns.tellUnread();
        }
    }

    /** The rows below the headings that hold something other than a note and are no example. */
    public List<InputRow> rows() {
        List<InputRow> rows = new ArrayList<>();
        int[] counting = columns.placesWithoutNotes().toArray();
        for (Row row : sheet) {
            if (row.getRowNum() > columns.headingRow() && isFilled((XSSFRow) row) && isAnyGiven(row, counting)) {
                InputRow input = new InputRow(columns, context.findings(), row.getRowNum());
                if (!isExample(input)) {
                    ranges.forEach(range -> range.spread(input));
                    rows.add(input);
                }
            }
        }
        return rows;
    }

    /** A quick check, since a book may have many thousand rows with formats and nothing in them. */
    private static boolean isFilled(XSSFRow row) {
        for (Cell cell : row) {
            CTCell held = ((XSSFCell) cell).getCTCell();
            if (held.isSetV() || held.isSetF() || held.isSetIs()) {
                return true;
            }
        }
        return false;
    }

    private boolean isAnyGiven(Row row, int[] places) {
        return IntStream.of(places)
                .anyMatch(place -> !context.contents().of(row.getCell(place)).isBlank());
    }

    private boolean isExample(InputRow row) {
        return schema.nameColumns().stream().filter(row::isGiven).findFirst().stream()
                .anyMatch(column -> row.content(column) instanceof CellContent.Words words
                        && CloseNames.key(words.text()).startsWith("example"));
    }

    public String firstHeadingCell() {
        return columns.firstHeadingCell();
    }

    public String cellUnder(Column column) {
        return columns.cell(columns.headingRow() + 1, column);
    }
}
