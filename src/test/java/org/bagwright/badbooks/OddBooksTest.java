package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Valid books are planned however odd they look, with live formulas that find their options again. */
@Tag("analytic")
class OddBooksTest {
    private static final int HEADING_ROW = 6;

    @TempDir
    Path folder;

    static Stream<BadBook> books() {
        return OddBooks.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void oddBook_isPlannedAndItsFormulasFindEveryOption(BadBook odd) throws Exception {
        Path file = Files.write(folder.resolve("bag.xlsx"), odd.file().bytes());
        byte[] before = Files.readAllBytes(file);
        Terminal plan = Terminal.run("plan", file);
        assertEquals(0, plan.code(), plan.err());
        assertArrayEquals(before, Files.readAllBytes(file));
        try (XSSFWorkbook result = ResultCells.open(folder.resolve("bag-plan.xlsx"))) {
            assertFormulasFindTheirOptions(result);
        }
        assertSound(folder.resolve("bag-plan.xlsx"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void oddBook_isTakenByEveryOtherCommand(BadBook odd) throws Exception {
        Path file = Files.write(folder.resolve("bag.xlsx"), odd.file().bytes());
        byte[] before = Files.readAllBytes(file);
        Path shots = Files.writeString(folder.resolve("may.csv"), "Club,Carry (yd)\n7 iron,150\n");
        assertSound(file);
        done("chart", file);
        done("compare", file, Files.copy(file, folder.resolve("copy.xlsx")), "--seconds", "1");
        done("add-shots", file, shots, "--golfer", "Golfer B");
        assertSound(folder.resolve("bag-shots.xlsx"));
        Terminal gauge = Terminal.run("gauge", file);
        assertEquals(3, gauge.code());
        assertTrue(gauge.err().contains("Readings"), gauge.err());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    private static void done(Object... arguments) {
        Terminal run = Terminal.run(arguments);
        assertEquals(0, run.code(), arguments[0] + " " + run.out() + run.err());
    }

    private static void assertSound(Path book) {
        Terminal check = Terminal.run("check", book);
        assertEquals(0, check.code(), check.out());
    }

    /** The place of each choice among the options, calculated again: 0 where a lookup does not find it. */
    private static void assertFormulasFindTheirOptions(XSSFWorkbook result) {
        var evaluator = result.getCreationHelper().createFormulaEvaluator();
        var headings = result.getSheet("Plan").getRow(HEADING_ROW);
        int found = 0;
        for (int slot = 0; slot < 4; slot++) {
            Row row = ResultCells.slot(result.getSheet("Plan"), slot);
            assertFalse(row.getCell(0).getCellType() == CellType.FORMULA, "a name became a formula");
            for (Cell cell : row) {
                boolean lookup = cell.getCellType() == CellType.FORMULA
                        && cell.getCellFormula().startsWith("IFERROR(MATCH(");
                if (lookup) {
                    String where = headings.getCell(cell.getColumnIndex()) + " " + cell.getAddress();
                    assertTrue(evaluator.evaluate(cell).getNumberValue() > 0, where);
                    found++;
                }
            }
        }
        assertTrue(found >= 12, "lookups: " + found);
    }
}
