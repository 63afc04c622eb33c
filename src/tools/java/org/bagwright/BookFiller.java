package org.bagwright;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Fills rows of one sheet of the blank book under its headings, below the example row. */
public final class BookFiller {
    private final XSSFSheet sheet;
    private final Row headings;
    private final int lastMade;
    private List<String> columns = List.of();
    private int next;

    public BookFiller(XSSFWorkbook book, String name) {
        sheet = book.getSheet(name);
        headings = headingRow(sheet);
        lastMade = sheet.getLastRowNum();
        next = headings.getRowNum() + 1;
        while (sheet.getRow(next) != null && taken(sheet.getRow(next))) {
            next++;
        }
    }

    /** The blank book, to be filled. */
    public static XSSFWorkbook blank() throws IOException {
        try (InputStream input = Files.newInputStream(Path.of("templates", "bag.xlsx"))) {
            return new XSSFWorkbook(input);
        }
    }

    /** The headings, written {@code "Golfer, Slot, Club"}, under which the values of {@link #row(Object...)} stand. */
    public BookFiller under(String names) {
        columns = List.of(names.split(", ", -1));
        return this;
    }

    /** Adds a row; null and missing values at the end leave their cells blank. */
    public BookFiller row(Object... values) {
        Row row = nextRow();
        for (int index = 0; index < values.length; index++) {
            if (values[index] != null) {
                put(row, columns.get(index), values[index]);
            }
        }
        return this;
    }

    public BookFiller row(Map<String, Object> values) {
        Row row = nextRow();
        values.forEach((heading, value) -> put(row, heading, value));
        return this;
    }

    /** Changes a value of the last row whose first column has this text. */
    public BookFiller change(String first, String heading, Object value) {
        return change(0, first, heading, value);
    }

    /** Changes a value of the last row of the sheet Clubs with this club: the first can be the example. */
    public BookFiller changeClub(String name, String heading, Object value) {
        return change(column("Club"), name, heading, value);
    }

    private BookFiller change(int column, String text, String heading, Object value) {
        for (int index = sheet.getLastRowNum(); index > headings.getRowNum(); index--) {
            Row row = sheet.getRow(index);
            if (row.getCell(column) != null && row.getCell(column).toString().equals(text)) {
                put(row, heading, value);
                return this;
            }
        }
        throw new IllegalStateException("no row " + text + " on " + sheet.getSheetName());
    }

    /** Puts a value next to its label on the sheet Start. */
    public static void start(XSSFWorkbook book, String label, Object value) {
        for (Row row : book.getSheet("Start")) {
            for (Cell cell : row) {
                if (cell.toString().equals(label)) {
                    put(row.getCell(cell.getColumnIndex() + 1, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK), value);
                    return;
                }
            }
        }
        throw new IllegalStateException("no label " + label);
    }

    private static Row headingRow(XSSFSheet sheet) {
        for (Row row : sheet) {
            Cell second = row.getCell(1);
            if (second != null && !second.toString().isBlank() && taken(row)) {
                return row;
            }
        }
        throw new IllegalStateException("no headings on " + sheet.getSheetName());
    }

    private static boolean taken(Row row) {
        return row.getCell(0) != null && !row.getCell(0).toString().isBlank();
    }

    private Row nextRow() {
        Row row = sheet.getRow(next) == null ? another() : sheet.getRow(next);
        next++;
        return row;
    }

    /** A row below those that the blank book has, of the same look. */
    private Row another() {
        Row like = sheet.getRow(lastMade);
        Row row = sheet.createRow(next);
        row.setHeight(like.getHeight());
        like.forEach(cell -> row.createCell(cell.getColumnIndex()).setCellStyle(cell.getCellStyle()));
        return row;
    }

    private void put(Row row, String heading, Object value) {
        put(row.getCell(column(heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK), value);
    }

    private static void put(Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            cell.setCellValue((String) value);
        }
    }

    private int column(String heading) {
        for (Cell cell : headings) {
            if (cell.toString().replaceAll("\\s*\\[.*", "").equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new IllegalStateException("no heading " + heading + " on " + sheet.getSheetName());
    }
}
