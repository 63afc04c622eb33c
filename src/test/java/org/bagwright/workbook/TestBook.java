package org.bagwright.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.read.BookReader;

/** Builds small books for tests. */
public final class TestBook {
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private XSSFSheet sheet;

    /** A formula saved without its value. */
    record Formula(String text) {}

    /** A number shown in a format. */
    public record Shown(double valueMeasureUnits, String format) {}

    /** Nothing in it at all. */
    static TestBook empty() {
        return new TestBook();
    }

    /** One right-handed golfer, Ann, with a driver and a 3 wood in a one-ring sleeve and a 7 iron. */
    public static TestBook sound() {
        return empty().sheet("Start")
                .row("Distance", "yd")
                .sheet("Golfers")
                .row("Golfer", "Hand", "Driver speed", "Iron speed", "Most open", "Most closed", "Gap wish")
                .row("Ann", "R", 95, 78, -1, 1, "even")
                .sheet("Clubs")
                .row("Golfer", "Slot", "Club", "Kind", "Loft", "Lie", "Length", "Sleeve", "Setting", "Bend limit")
                .row("Ann", 1, "Driver", "driver", 10.5, 58, 45.5, "Two degree", "N")
                .row("Ann", 2, "3 wood", "wood", 15, 57.5, 43, "Two degree", "N")
                .row("Ann", 3, "7 iron", "iron", 31, 62.5, 37, null, null, 2)
                .sheet("Sleeves")
                .row("Sleeve", "Setting", "Clock", "Bend")
                .row("Two degree", "N", 12, 1.7)
                .row("Two degree", "H", 3, 1.7)
                .row("Two degree", "L", 9, 1.7)
                .sheet("Shots")
                .row("Golfer", "Club", "Head speed", "Ball speed", "Launch", "Spin", "Attack", "Carry")
                .row("Ann", "Driver", 95, 140, 12, 2700, 1, 225)
                .sheet("Aims")
                .row("Measure", "Tolerance", "Importance", "Must")
                .row("gap", 6, 2, "no");
    }

    public TestBook sheet(String name) {
        sheet = workbook.createSheet(name);
        return this;
    }

    /** The next row of the sheet last begun. */
    public TestBook row(Object... values) {
        return rowAt(sheet.getPhysicalNumberOfRows() == 0 ? 0 : sheet.getLastRowNum() + 1, 0, values);
    }

    public TestBook rowAt(int index, int firstColumn, Object... values) {
        XSSFRow row = sheet.createRow(index);
        for (int column = 0; column < values.length; column++) {
            put(row.createCell(firstColumn + column), values[column]);
        }
        return this;
    }

    /** Changes one cell, named as {@code Clubs!F2}. */
    public TestBook set(String address, Object value) {
        CellReference cell = new CellReference(address);
        XSSFSheet target = workbook.getSheet(cell.getSheetName());
        XSSFRow row = target.getRow(cell.getRow());
        row = row == null ? target.createRow(cell.getRow()) : row;
        put(row.createCell(cell.getCol()), value);
        return this;
    }

    public TestBook without(String sheetName) {
        workbook.removeSheetAt(workbook.getSheetIndex(sheetName));
        return this;
    }

    public TestBook rename(String sheetName, String other) {
        workbook.setSheetName(workbook.getSheetIndex(sheetName), other);
        return this;
    }

    private void put(Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof Boolean truth) {
            cell.setCellValue(truth);
        } else if (value instanceof Formula formula) {
            cell.setCellFormula(formula.text());
        } else if (value instanceof Shown shown) {
            CellStyle style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat(shown.format()));
            cell.setCellValue(shown.valueMeasureUnits());
            cell.setCellStyle(style);
        } else if (value != null) {
            cell.setCellValue(value.toString());
        } else {
            cell.setBlank();
        }
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    XSSFCell cell(String address) {
        CellReference at = new CellReference(address);
        return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    }

    public BookReader.Result read() {
        try {
            Path file = Files.createTempFile("book", ".xlsx");
            try {
                save(file);
                return BookReader.read(file);
            } finally {
                Files.delete(file);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    void save(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
    }

    /** The book, which must have no problem. */
    public Book book() {
        BookReader.Result result = read();
        return result.book().orElseThrow(() -> new AssertionError("problems: " + result.messages()));
    }

    /** All problems as {@code cell: text}. */
    public List<String> problems() {
        return lines(Message.Severity.PROBLEM);
    }

    public List<String> lines(Message.Severity severity) {
        return read().messages().stream()
                .filter(message -> message.severity() == severity)
                .map(message -> message.cell() + ": " + message.text())
                .toList();
    }

    /** The cells that have a problem. */
    public List<String> problemCells() {
        return read().messages().stream()
                .filter(message -> message.severity() == Message.Severity.PROBLEM)
                .map(Message::cell)
                .toList();
    }
}
