package org.bagwright.workbook.cells;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.units.Units;

/** What every reader of a sheet needs: how cells are read, in which units, and where findings go. */
public record BookContext(CellContents contents, Units units, Findings findings) {
    /** {@code Sheet!C7}, with quotes around a sheet's name that has spaces. */
    public static String address(XSSFSheet sheet, int row, int column) {
        String name = sheet.getSheetName();
        String quoted = name.matches("[\\p{L}\\p{N}_.]+") ? name : "'" + name + "'";
        return quoted + "!" + new CellReference(row, column).formatAsString();
    }

    public BookContext in(Units other) {
        return new BookContext(contents, other, findings);
    }
}
