package org.bagwright.workbook.shots;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTAutoFilter;

/** Lets the tables and filters of a sheet that ended at its last row reach down to the rows that were added below. */
final class TableRange {
    private final XSSFSheet sheet;
    private final int lastRow;

    /** To be made before rows are added below {@code lastRow}, from 0. */
    TableRange(XSSFSheet sheet, int lastRow) {
        this.sheet = sheet;
        this.lastRow = lastRow;
    }

    /** To be called when all rows are added, the last of them {@code newLastRow}. */
    void reach(int newLastRow) {
        for (XSSFTable table : sheet.getTables()) {
            if (table.getEndRowIndex() == lastRow && table.getTotalsRowCount() == 0) {
                String range = to(table.getCTTable().getRef(), newLastRow);
                table.getCTTable().setRef(range);
                if (table.getCTTable().isSetAutoFilter()) {
                    table.getCTTable().getAutoFilter().setRef(range);
                }
                table.updateReferences();
            }
        }
        if (sheet.getCTWorksheet().isSetAutoFilter()) {
            CTAutoFilter filter = sheet.getCTWorksheet().getAutoFilter();
            if (CellRangeAddress.valueOf(filter.getRef()).getLastRow() == lastRow) {
                filter.setRef(to(filter.getRef(), newLastRow));
            }
        }
    }

    private static String to(String range, int row) {
        CellRangeAddress address = CellRangeAddress.valueOf(range);
        address.setLastRow(row);
        return address.formatAsString();
    }
}
