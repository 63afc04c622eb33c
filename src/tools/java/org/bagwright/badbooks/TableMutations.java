package org.bagwright.badbooks;

import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Spoils rows, columns, headings and whole sheets of a book at random. */
final class TableMutations {
    private static final String[] UNITS = {" [in]", " [mm]", " [m]", " [kg]", " [furlong]", " (x)", " [", "]", " [F]"};

    private final XSSFWorkbook book;
    private final Random random;
    private final List<String> done;

    TableMutations(XSSFWorkbook book, Random random, List<String> done) {
        this.book = book;
        this.random = random;
        this.done = done;
    }

    void apply() {
        XSSFSheet sheet = CellMutations.sheet(book, random);
        switch (random.nextInt(8)) {
            case 0, 1 -> duplicateRow(sheet);
            case 2 -> deleteRow(sheet);
            case 3 -> deleteColumn(sheet);
            case 4, 5 -> heading(sheet);
            case 6 -> copyColumn(sheet);
            default -> sheet(sheet);
        }
    }

    private void tell(XSSFSheet sheet, String what) {
        done.add(sheet.getSheetName() + ": " + what);
    }

    private void duplicateRow(XSSFSheet sheet) {
        int from = random.nextInt(sheet.getLastRowNum() + 1);
        int to = random.nextInt(sheet.getLastRowNum() + 3);
        tell(sheet, "row " + (from + 1) + " copied to row " + (to + 1));
        if (sheet.getRow(from) != null && from != to) {
            copy(sheet.getRow(from), sheet.createRow(to));
        }
    }

    /** The library copies no further than to a number that an earlier change has spoilt. */
    private void copy(XSSFRow from, XSSFRow made) {
        try {
            made.copyRowFrom(
                    from, new CellCopyPolicy.Builder().mergedRegions(false).build());
        } catch (IllegalStateException spoilt) {
            done.add("copied in part");
        }
    }

    private void deleteRow(XSSFSheet sheet) {
        int row = random.nextInt(sheet.getLastRowNum() + 1);
        tell(sheet, "row " + (row + 1) + " deleted");
        if (sheet.getRow(row) != null) {
            sheet.removeRow(sheet.getRow(row));
        }
    }

    private void deleteColumn(XSSFSheet sheet) {
        int column = random.nextInt(28);
        tell(sheet, "column " + (column + 1) + " deleted");
        for (Row row : sheet) {
            Cell cell = row.getCell(column);
            if (cell != null) {
                row.removeCell(cell);
            }
        }
    }

    private void copyColumn(XSSFSheet sheet) {
        int from = random.nextInt(28);
        int to = random.nextInt(28);
        tell(sheet, "column " + (from + 1) + " copied to column " + (to + 1));
        for (Row row : sheet) {
            Cell cell = row.getCell(from);
            if (cell != null) {
                row.createCell(to).setCellValue(CellMutations.shown((XSSFCell) cell));
            }
        }
    }

    private void heading(XSSFSheet sheet) {
        int at = random.nextInt(4);
        XSSFRow row = sheet.getRow(at);
        if (row == null || row.getLastCellNum() < 1) {
            return;
        }
        Cell cell = row.getCell(random.nextInt(row.getLastCellNum()), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        String old = CellMutations.shown((XSSFCell) cell);
        String text =
                switch (random.nextInt(4)) {
                    case 0 -> "";
                    case 1 -> old + UNITS[random.nextInt(UNITS.length)];
                    case 2 -> old.isEmpty() ? "Loft" : old.substring(1) + old.charAt(0);
                    default -> row.getCell(0) == null ? "Note" : CellMutations.shown(row.getCell(0));
                };
        tell(sheet, cell.getAddress() + " heading \"" + old + "\" now \"" + text + "\"");
        cell.setCellValue(text);
    }

    private void sheet(XSSFSheet sheet) {
        int index = book.getSheetIndex(sheet);
        switch (random.nextInt(4)) {
            case 0 -> {
                tell(sheet, "sheet hidden");
                book.setSheetVisibility(index, SheetVisibility.VERY_HIDDEN);
            }
            case 1 -> {
                tell(sheet, "sheet removed");
                if (book.getNumberOfSheets() > 1) {
                    book.removeSheetAt(index);
                }
            }
            case 2 -> {
                String name = sheet.getSheetName().toUpperCase(java.util.Locale.ROOT);
                tell(sheet, "sheet renamed " + name);
                book.setSheetName(index, name);
            }
            default -> {
                tell(sheet, "columns A to D of the first row merged");
                sheet.addMergedRegionUnsafe(new org.apache.poi.ss.util.CellRangeAddress(0, 0, 0, 3));
            }
        }
    }
}
