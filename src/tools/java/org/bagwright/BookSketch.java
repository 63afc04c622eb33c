package org.bagwright;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A small book written down in a few lines of a test. */
public final class BookSketch {
    private final XSSFWorkbook workbook = new XSSFWorkbook();

    /** Adds a sheet with its headings, written {@code "Golfer, Slot, Club"}. */
    public BookSketch sheet(String name, String headings) {
        XSSFSheet sheet = workbook.createSheet(name);
        Row row = sheet.createRow(0);
        String[] texts = headings.split(", ", -1);
        for (int column = 0; column < texts.length; column++) {
            row.createCell(column).setCellValue(texts[column]);
        }
        return this;
    }

    /** Adds a row to the sheet added last; null leaves a cell out. */
    public BookSketch row(Object... values) {
        XSSFSheet sheet = workbook.getSheetAt(workbook.getNumberOfSheets() - 1);
        Row row = sheet.createRow(sheet.getLastRowNum() + 1);
        for (int column = 0; column < values.length; column++) {
            if (values[column] instanceof Number number) {
                row.createCell(column).setCellValue(number.doubleValue());
            } else if (values[column] != null) {
                row.createCell(column).setCellValue((String) values[column]);
            }
        }
        return this;
    }

    /** Adds the sheet Weights with its headings; its rows follow. */
    public BookSketch weights() {
        return sheet("Weights", "Kit, Weighting, Port, Mass, X, Y, Z");
    }

    /** Adds the sheet Stock with its headings; its rows follow. */
    public BookSketch stock() {
        return sheet("Stock", "Item, Count");
    }

    /** Puts a value under a heading of a sheet, in the row of that number from 1; the heading is added if need be. */
    public BookSketch put(String name, int number, String heading, Object value) {
        XSSFSheet sheet = workbook.getSheet(name);
        Row headings = sheet.getRow(0);
        int column = 0;
        while (headings.getCell(column) != null
                && !headings.getCell(column).getStringCellValue().equals(heading)) {
            column++;
        }
        headings.createCell(column).setCellValue(heading);
        if (value instanceof Number amount) {
            sheet.getRow(number).createCell(column).setCellValue(amount.doubleValue());
        } else {
            sheet.getRow(number).createCell(column).setCellValue((String) value);
        }
        return this;
    }

    public XSSFWorkbook workbook() {
        return workbook;
    }

    public Path write(Path file) throws IOException {
        try (OutputStream output = Files.newOutputStream(file)) {
            workbook.write(output);
        }
        return file;
    }
}
