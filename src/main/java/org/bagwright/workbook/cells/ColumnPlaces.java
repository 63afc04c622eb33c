package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.InputSheet;

/**
 * Where the columns of a book's input sheets are, for messages that mean a column of a row.
 *
 * @param byHeading the letters of each column, by {@code Sheet!} and heading
 */
public record ColumnPlaces(Map<String, String> byHeading) {
    private static final String ROW = "\\d+$";

    public ColumnPlaces {
        byHeading = Map.copyOf(byHeading);
    }

    /** The places of a book that is read; what is wrong with its headings is reported elsewhere. */
    public static ColumnPlaces of(XSSFWorkbook workbook, BookContext context) {
        Map<String, String> places = new HashMap<>();
        BookContext silent = new BookContext(context.contents(), context.units(), new Findings());
        for (InputSheet sheet : InputSheet.values()) {
            InputTable.in(workbook, sheet.schema(), silent).ifPresent(table -> sheet.schema().columns().stream()
                    .filter(table::has)
                    .forEach(column -> put(places, table, column)));
        }
        return new ColumnPlaces(places);
    }

    private static void put(Map<String, String> places, InputTable table, Column column) {
        String cell = table.cellUnder(column);
        String sheet = cell.substring(0, cell.lastIndexOf('!') + 1);
        places.put(sheet + column.header(), cell.substring(sheet.length()).replaceAll(ROW, ""));
    }

    /** The messages, each at the cells of its column where it means one and the book has it. */
    public List<Message> located(List<Message> messages) {
        List<Message> located = new ArrayList<>();
        for (Message message : messages) {
            located.add(message.heading()
                    .map(heading -> message.at(message.cells().stream()
                            .map(cell -> cell(cell, heading))
                            .toList()))
                    .orElse(message));
        }
        return located;
    }

    private String cell(String cellOfRow, String heading) {
        int sheetEnd = cellOfRow.lastIndexOf('!') + 1;
        String letters = byHeading.get(cellOfRow.substring(0, sheetEnd) + heading);
        return letters == null
                ? cellOfRow
                : cellOfRow.substring(0, sheetEnd)
                        + letters
                        + (new CellReference(cellOfRow.substring(sheetEnd)).getRow() + 1);
    }
}
