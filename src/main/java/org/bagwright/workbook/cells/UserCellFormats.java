package org.bagwright.workbook.cells;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;

/** Keeps the fitter's cells as they look. */
public final class UserCellFormats {
    private UserCellFormats() {}

    /**
     * A cell that names no format has the plain one, also in a column that has a format. When it writes a book the library
     * would give such a cell the column's.
     */
    public static void keepFormats(XSSFWorkbook workbook) {
        for (Sheet sheet : workbook) {
            if (hasColumnFormats((XSSFSheet) sheet)) {
                for (Row row : sheet) {
                    row.forEach(UserCellFormats::keepFormat);
                }
            }
        }
    }

    private static boolean hasColumnFormats(XSSFSheet sheet) {
        return sheet.getCTWorksheet().getColsList().stream()
                .map(CTCols::getColList)
                .anyMatch(columns -> columns.stream().anyMatch(column -> column.getStyle() > 0));
    }

    private static void keepFormat(Cell cell) {
        CTCell xml = ((XSSFCell) cell).getCTCell();
        if (!xml.isSetS()) {
            xml.setS(0);
        }
    }
}
