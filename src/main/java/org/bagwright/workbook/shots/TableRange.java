package org.bagwright.workbook.shots;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTAutoFilter;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/**
 * Lets the tables and filters of a sheet that ended at its last row reach down to the rows that were added below, and what it
 * checks and colours in its prepared rows.
 */
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
        CTWorksheet parts = sheet.getCTWorksheet();
        if (parts.isSetDataValidations()) {
            parts.getDataValidations()
                    .getDataValidationList()
                    .forEach(rule -> rule.setSqref(prepared(rule.getSqref(), newLastRow)));
        }
        parts.getConditionalFormattingList().forEach(rule -> rule.setSqref(prepared(rule.getSqref(), newLastRow)));
    }

    /** Ranges that held the last row and end above the new one, with as many rows to spare as they had. */
    private List<String> prepared(List<?> ranges, int newLastRow) {
        return ranges.stream()
                .map(range -> {
                    CellRangeAddress address = CellRangeAddress.valueOf(String.valueOf(range));
                    boolean reached = address.getFirstRow() <= lastRow + 1
                            && address.getLastRow() >= lastRow
                            && address.getFirstRow() < address.getLastRow()
                            && address.getLastRow() < newLastRow;
                    int spare = address.getLastRow() - lastRow;
                    int end = Math.min(SpreadsheetVersion.EXCEL2007.getLastRowIndex(), newLastRow + spare);
                    return reached ? to(String.valueOf(range), end) : String.valueOf(range);
                })
                .toList();
    }

    private static String to(String range, int row) {
        CellRangeAddress address = CellRangeAddress.valueOf(range);
        address.setLastRow(row);
        return address.formatAsString();
    }
}
