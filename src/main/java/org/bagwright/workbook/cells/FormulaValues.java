package org.bagwright.workbook.cells;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.schema.ResultSheet;

/**
 * Keeps the saved values of the fitter's formulas true while cells are written: a formula whose result moves gets the
 * new one saved, all others keep theirs as they are. A formula that cannot be calculated here keeps its value too.
 */
public final class FormulaValues {
    /** How the library's own errors begin, such as that of a formula that goes round in circles. */
    private static final String NO_VALUE = "~";

    private final XSSFWorkbook workbook;
    private final Map<Cell, String> before;

    private FormulaValues(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.before = results();
    }

    /** To be called before a cell is written. */
    public static FormulaValues of(XSSFWorkbook workbook) {
        return new FormulaValues(workbook);
    }

    /** To be called when all cells are written. */
    public void refresh() {
        Calculator calculator = new Calculator(workbook);
        results().forEach((cell, now) -> {
            if (!now.equals(before.get(cell)) && !now.startsWith(NO_VALUE)) {
                calculator.save(cell);
            }
        });
    }

    private Map<Cell, String> results() {
        Calculator calculator = new Calculator(workbook);
        Map<Cell, String> results = new LinkedHashMap<>();
        for (Sheet sheet : workbook) {
            if (!ResultSheet.NAMES.contains(sheet.getSheetName())) {
                for (Row row : sheet) {
                    row.forEach(cell -> result(calculator, cell).ifPresent(text -> results.put(cell, text)));
                }
            }
        }
        return results;
    }

    private static Optional<String> result(Calculator calculator, Cell cell) {
        return ((XSSFCell) cell).getCTCell().isSetF()
                ? calculator.value(cell).map(CellValue::formatAsString)
                : Optional.empty();
    }
}
