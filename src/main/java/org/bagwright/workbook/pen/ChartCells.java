package org.bagwright.workbook.pen;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Columns of cells as charts take them, with the values that the cells hold. POI's own sources calculate every formula
 * again, and everything it leans on, for each chart: minutes for a team.
 */
final class ChartCells {
    private ChartCells() {}

    /** Numbers; a cell that holds none is left out of the chart. */
    static XDDFNumericalDataSource<Double> numbers(XSSFSheet sheet, CellRangeAddress range) {
        Double[] values = new Double[range.getNumberOfCells()];
        for (int index = 0; index < values.length; index++) {
            XSSFCell cell = cell(sheet, range, index);
            values[index] = type(cell) == CellType.NUMERIC ? Double.valueOf(cell.getNumericCellValue()) : null;
        }
        return XDDFDataSourcesFactory.fromArray(values, address(sheet, range));
    }

    /** Texts; a cell that holds none is left out of the chart. */
    static XDDFCategoryDataSource texts(XSSFSheet sheet, CellRangeAddress range) {
        String[] values = new String[range.getNumberOfCells()];
        for (int index = 0; index < values.length; index++) {
            XSSFCell cell = cell(sheet, range, index);
            values[index] = type(cell) == CellType.STRING ? cell.getStringCellValue() : null;
        }
        return XDDFDataSourcesFactory.fromArray(values, address(sheet, range));
    }

    private static XSSFCell cell(XSSFSheet sheet, CellRangeAddress range, int index) {
        XSSFRow row = sheet.getRow(range.getFirstRow() + index);
        return row == null ? null : row.getCell(range.getFirstColumn());
    }

    private static CellType type(XSSFCell cell) {
        if (cell == null) {
            return CellType.BLANK;
        }
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    private static String address(XSSFSheet sheet, CellRangeAddress range) {
        return range.formatAsString(sheet.getSheetName(), true);
    }
}
