package org.bagwright.workbook.cells;

import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.schema.ResultSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;

/**
 * The fitter's own cells and names in a book.
 *
 * @param workbook the book
 */
public record UserCells(XSSFWorkbook workbook) {
    /**
     * Keeps them as they look. A cell that names no format has the plain one, also in a column that has a format. When it
     * writes a book the library would give such a cell the column's.
     */
    public void keepFormats() {
        for (Sheet sheet : workbook) {
            if (hasColumnFormats((XSSFSheet) sheet)) {
                for (Row row : sheet) {
                    row.forEach(UserCells::keepFormat);
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

    /**
     * Whether a formula or a name looks at result sheets. Never no where one does; a sheet whose name ends like that of a
     * result sheet may make it yes.
     */
    public boolean lookAtResults() {
        return workbook.getAllNames().stream().anyMatch(UserCells::looksAtResults)
                || StreamSupport.stream(workbook.spliterator(), false)
                        .filter(sheet -> !ResultSheet.NAMES.contains(sheet.getSheetName()))
                        .flatMap(sheet -> StreamSupport.stream(sheet.spliterator(), false))
                        .flatMap(row -> StreamSupport.stream(row.spliterator(), false))
                        .anyMatch(UserCells::looksAtResults);
    }

    private static boolean looksAtResults(Name name) {
        return !ResultSheet.isToolsName(name.getNameName())
                && !name.getNameName().startsWith("_xlnm")
                && namesResult(name.getRefersToFormula());
    }

    /** From the formula as it is saved: the library knows fewer kinds of cells and of formulas than the fitter may have. */
    private static boolean looksAtResults(Cell cell) {
        CTCell saved = ((XSSFCell) cell).getCTCell();
        return saved.isSetF() && namesResult(saved.getF().getStringValue());
    }

    private static boolean namesResult(String formula) {
        return formula != null
                && (formula.contains(ResultSheet.NAME_PREFIX)
                        || ResultSheet.NAMES.stream()
                                .anyMatch(name -> formula.contains(name + "!") || formula.contains(name + "'!")));
    }
}
