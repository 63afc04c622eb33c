package org.bagwright.workbook.cells;

import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.schema.ResultSheets;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** Whether the fitter's own formulas and names look at result sheets. */
public final class UserReferences {
    private UserReferences() {}

    /** Never says no where one does; a sheet whose name ends like that of a result sheet may make it say yes. */
    public static boolean toResults(XSSFWorkbook workbook) {
        return workbook.getAllNames().stream().anyMatch(UserReferences::isOwn)
                || StreamSupport.stream(workbook.spliterator(), false)
                        .filter(sheet -> !ResultSheets.NAMES.contains(sheet.getSheetName()))
                        .flatMap(sheet -> StreamSupport.stream(sheet.spliterator(), false))
                        .flatMap(row -> StreamSupport.stream(row.spliterator(), false))
                        .anyMatch(UserReferences::looksAtResults);
    }

    private static boolean isOwn(Name name) {
        return !ResultSheets.isTools(name)
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
                && (formula.contains(ResultSheets.NAME_PREFIX)
                        || ResultSheets.NAMES.stream()
                                .anyMatch(name -> formula.contains(name + "!") || formula.contains(name + "'!")));
    }
}
