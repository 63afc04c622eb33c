package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Cells of result books, as tests read, change and compare them. */
public final class ResultCells {
    private static final int HEADING_ROW = 6;
    private static final String[] CALCULATED = {"Plan", "Settings", "Ladder"};

    private ResultCells() {}

    public static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    /** Writes a book without cached values, so that none of the program's own numbers can pass for a calculated one. */
    public static Path writeBare(XSSFWorkbook book, Path file) throws IOException {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    forget((XSSFCell) cell);
                }
            }
        }
        try (OutputStream output = Files.newOutputStream(file)) {
            book.write(output);
        }
        return file;
    }

    /** Takes the cached value away; an error first shows if the formula is then not calculated. */
    private static void forget(XSSFCell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            cell.setCellErrorValue(FormulaError.NUM);
            cell.getCTCell().unsetV();
            cell.getCTCell().unsetT();
        }
    }

    /** The cell of the sheet Plan under a heading in the row of a slot, counted from 0 through all golfers. */
    public static Cell plan(XSSFWorkbook book, int slot, String heading) {
        return slot(book.getSheet("Plan"), slot).getCell(column(book.getSheet("Plan"), heading));
    }

    /** What a formula of the sheet Plan gives now, whatever the file remembers of it. */
    public static CellValue live(XSSFWorkbook book, int slot, String heading) {
        return book.getCreationHelper().createFormulaEvaluator().evaluate(plan(book, slot, heading));
    }

    /** The column of a sheet Plan with a heading. */
    public static int column(Sheet plan, String heading) {
        for (Cell cell : plan.getRow(HEADING_ROW)) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no heading " + heading);
    }

    /** All rows of a sheet as they are shown, each as wide as the widest. */
    public static List<List<String>> texts(XSSFSheet sheet) {
        DataFormatter formatter = new DataFormatter(Locale.ROOT);
        int width = 0;
        for (Row row : sheet) {
            width = Math.max(width, row.getLastCellNum());
        }
        List<List<String>> rows = new ArrayList<>();
        for (Row row : sheet) {
            List<String> texts = new ArrayList<>();
            for (int column = 0; column < width; column++) {
                texts.add(formatter.formatCellValue(row.getCell(column)));
            }
            rows.add(texts);
        }
        return rows;
    }

    /** The row of a slot, counted from 0 through all golfers: other rows have no number of a slot. */
    public static Row slot(Sheet plan, int slot) {
        int column = column(plan, "Slot");
        int seen = 0;
        for (int row = HEADING_ROW + 1; row <= plan.getLastRowNum(); row++) {
            Cell number = plan.getRow(row) == null ? null : plan.getRow(row).getCell(column);
            if (number != null && number.getCellType() == CellType.NUMERIC && seen++ == slot) {
                return plan.getRow(row);
            }
        }
        throw new AssertionError("no slot " + slot);
    }

    /** The address of a cell of the sheet Plan as messages write it. */
    public static String address(XSSFWorkbook book, int slot, String heading) {
        return "Plan!" + plan(book, slot, heading).getAddress();
    }

    public static void set(XSSFWorkbook book, int slot, String heading, Object value) {
        Cell cell = plan(book, slot, heading);
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            cell.setCellValue((String) value);
        }
    }

    /** Compares every formula of the calculated sheets; gives how many there are. */
    public static int compare(XSSFWorkbook own, XSSFWorkbook other) {
        int compared = 0;
        for (String name : CALCULATED) {
            XSSFSheet sheet = own.getSheet(name);
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        Row otherRow = other.getSheet(name).getRow(row.getRowNum());
                        compare((XSSFCell) cell, (XSSFCell) otherRow.getCell(cell.getColumnIndex()));
                        compared++;
                    }
                }
            }
        }
        return compared;
    }

    private static void compare(XSSFCell own, XSSFCell other) {
        String where = own.getSheet().getSheetName() + "!" + own.getReference() + " =" + own.getCellFormula();
        assertNotEquals(CellType.ERROR, other.getCachedFormulaResultType(), where);
        if (own.getCachedFormulaResultType() == CellType.NUMERIC) {
            assertEquals(CellType.NUMERIC, other.getCachedFormulaResultType(), where);
            assertEquals(
                    own.getNumericCellValue(),
                    other.getNumericCellValue(),
                    1e-9 * Math.max(1, Math.abs(own.getNumericCellValue())),
                    where);
        } else {
            assertEquals(own.getStringCellValue(), other.getStringCellValue(), where);
        }
    }
}
