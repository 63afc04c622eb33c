package org.bagwright;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Makes the invented books of demo-data from the blank book. Run {@link #main} after the blank book has changed; a test
 * holds the committed books to what this class makes.
 */
public final class DemoBooks {
    private DemoBooks() {}

    public static void main(String[] args) throws IOException {
        Files.createDirectories(Path.of("demo-data"));
        write("trio", TrioDemo.book());
        write("full", FullDemo.book());
        write("team", TeamDemo.book());
    }

    /** The demo of that name, made again. */
    public static XSSFWorkbook made(String name) throws IOException {
        return switch (name) {
            case "trio" -> TrioDemo.book();
            case "full" -> FullDemo.book();
            case "team" -> TeamDemo.book();
            default -> throw new IllegalArgumentException("no demo " + name);
        };
    }

    /** The committed demo of that name. */
    public static Path kept(String name) {
        return Path.of("demo-data", name + ".xlsx");
    }

    /** The cells of the committed demo of that name and nothing else of it: it is read and written many times as fast. */
    public static byte[] plain(String name) throws IOException {
        try (InputStream input = Files.newInputStream(kept(name));
                XSSFWorkbook book = new XSSFWorkbook(input);
                XSSFWorkbook plain = new XSSFWorkbook();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            for (Sheet sheet : book) {
                if (!book.isSheetHidden(book.getSheetIndex(sheet))) {
                    copyCells(sheet, plain.createSheet(sheet.getSheetName()));
                }
            }
            plain.write(bytes);
            return bytes.toByteArray();
        }
    }

    private static void copyCells(Sheet from, Sheet to) {
        for (Row row : from) {
            Row made = to.createRow(row.getRowNum());
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.NUMERIC) {
                    made.createCell(cell.getColumnIndex()).setCellValue(cell.getNumericCellValue());
                } else if (cell.getCellType() == CellType.STRING) {
                    made.createCell(cell.getColumnIndex()).setCellValue(cell.getStringCellValue());
                }
            }
        }
    }

    private static void write(String name, XSSFWorkbook made) throws IOException {
        try (made;
                OutputStream output = Files.newOutputStream(kept(name))) {
            made.write(output);
        }
    }

    /** Says on the sheet Start what the book is, and that it is invented. */
    static void introduce(XSSFWorkbook book, String title, String shows) {
        BookFiller.start(book, "Title", title);
        book.getProperties().getCoreProperties().setTitle(title);
        XSSFSheet start = book.getSheet("Start");
        start.getRow(0).getCell(0).setCellValue("Demo: " + title);
        start.getRow(1)
                .getCell(0)
                .setCellValue("Invented: these golfers, clubs, shots and pieces do not exist. " + shows);
    }

    /** A sleeve of one ring with eight settings, an hour and a half apart, bonded to the shaft. */
    static void eightMarks(BookFiller sleeves, String name, double bendDeg) {
        sleeves.under("Sleeve, Setting, Clock, Bend, Turns shaft");
        for (int mark = 1; mark <= 8; mark++) {
            sleeves.row(name, mark, mark == 1 ? 12 : (mark - 1) * 1.5, bendDeg, "yes");
        }
    }

    /** A sleeve of one loose ring with four settings, which leaves the shaft as it is. */
    static void fourMarks(BookFiller sleeves, String name, double bendDeg) {
        sleeves.under("Sleeve, Setting, Clock, Bend, Turns shaft")
                .row(name, "A", 12, bendDeg, "no")
                .row(name, "B", 3, bendDeg, "no")
                .row(name, "C", 6, bendDeg, "no")
                .row(name, "D", 9, bendDeg, "no");
    }
}
