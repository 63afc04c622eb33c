package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Computed cells are locked without a password, cells to choose are open, the fitter's own sheets are left alone. */
@Tag("regression")
class ProtectionTest {
    private static final List<String> INPUT = List.of("Start", "Golfers", "Clubs", "Sleeves", "Weights");

    @TempDir
    static Path folder;

    private static XSSFWorkbook book;

    @BeforeAll
    static void plan() throws Exception {
        Path bag = ChoiceBook.sketch().write(folder.resolve("bag.xlsx"));
        book = ResultCells.open(ChoiceBook.planned(bag, folder.resolve("one.xlsx"), workbook -> {}));
    }

    @Test
    void resultSheets_areProtectedWithoutAPassword() {
        int results = 0;
        for (Sheet sheet : book) {
            boolean input = INPUT.contains(sheet.getSheetName());
            assertEquals(!input, sheet.getProtect(), sheet.getSheetName());
            if (!input) {
                var protection = ((XSSFSheet) sheet).getCTWorksheet().getSheetProtection();
                assertFalse(protection.isSetPassword() || protection.isSetHashValue(), sheet.getSheetName());
                results++;
            }
        }
        assertEquals(9, results);
    }

    @Test
    void sortingFilteringAndWidths_stayFree() {
        XSSFSheet plan = book.getSheet("Plan");
        assertFalse(plan.isSortLocked());
        assertFalse(plan.isAutoFilterLocked());
        assertFalse(plan.isFormatColumnsLocked());
        assertFalse(plan.isFormatRowsLocked());
        assertFalse(plan.isSelectLockedCellsLocked());
        assertFalse(plan.isObjectsLocked());
    }

    @Test
    void everyFormula_isLocked() {
        int formulas = 0;
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        assertTrue(cell.getCellStyle().getLocked(), sheet.getSheetName() + "!" + cell.getAddress());
                        formulas++;
                    }
                }
            }
        }
        assertTrue(formulas > 200, "only " + formulas);
    }

    @Test
    void choiceCellsAndAims_areOpen() {
        for (int slot = 0; slot < 3; slot++) {
            assertFalse(ResultCells.plan(book, slot, "Pin").getCellStyle().getLocked());
        }
        assertFalse(ResultCells.plan(book, 0, "Live setting").getCellStyle().getLocked());
        assertFalse(ResultCells.plan(book, 0, "Live weighting").getCellStyle().getLocked());
        assertFalse(ResultCells.plan(book, 1, "Live club").getCellStyle().getLocked());
        assertFalse(
                ResultCells.plan(book, 2, "Live loft bend [deg]").getCellStyle().getLocked());
        assertFalse(
                ResultCells.plan(book, 2, "Live lie bend [deg]").getCellStyle().getLocked());
        assertTrue(ResultCells.plan(book, 0, "Planned setting").getCellStyle().getLocked());
        assertFalse(named("BW_gap_tolerance").getCellStyle().getLocked());
        assertFalse(named("BW_gap_importance").getCellStyle().getLocked());
    }

    private static Cell named(String name) {
        var reference =
                new org.apache.poi.ss.util.CellReference(book.getName(name).getRefersToFormula());
        return book.getSheet(reference.getSheetName())
                .getRow(reference.getRow())
                .getCell(reference.getCol());
    }
}
