package org.bagwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What a sheet shows, as a person reads it. */
public final class Cells {
    private static final DataFormatter FORMATTER = new DataFormatter(Locale.ROOT);

    private Cells() {}

    /** Every row that shows something: its texts from the left, cells without a text left out. */
    public static List<List<String>> shown(XSSFSheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (Row row : sheet) {
            List<String> texts = new ArrayList<>();
            for (Cell cell : row) {
                String text = text(cell);
                if (!text.isBlank()) {
                    texts.add(text);
                }
            }
            if (!texts.isEmpty()) {
                rows.add(texts);
            }
        }
        return rows;
    }

    /** The first row, from 0, whose first text is this one. */
    public static int row(XSSFSheet sheet, String first) {
        for (Row row : sheet) {
            if (row.getCell(0) != null && text(row.getCell(0)).equals(first)) {
                return row.getRowNum();
            }
        }
        throw new AssertionError("no row " + first + " on " + sheet.getSheetName() + ": " + shown(sheet));
    }

    public static String text(XSSFSheet sheet, int row, int column) {
        Cell cell = sheet.getRow(row).getCell(column);
        return cell == null ? "" : text(cell);
    }

    /** One at a time, since the formats of the library are not for two threads. */
    private static synchronized String text(Cell cell) {
        return FORMATTER.formatCellValue(cell);
    }
}
