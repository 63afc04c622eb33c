package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.Spreadsheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A general-purpose spreadsheet program, LibreOffice, calculates every formula of a result book anew. The copy that it
 * gets holds no cached values, so that none of the program's own numbers can pass for a calculated one.
 */
@Tag("analytic")
class RecalculationTest {
    private static final int HEADING_ROW = 4;

    @TempDir
    Path folder;

    @Test
    void plan_recalculatesToTheProgramsOwnNumbers() throws Exception {
        Path planned = plannedDemo();
        Path recalculated = Spreadsheet.recalculated(withoutCachedValues(planned), folder.resolve("calc"));
        try (XSSFWorkbook own = open(planned);
                XSSFWorkbook other = open(recalculated)) {
            int compared = 0;
            for (String name : new String[] {"Plan", "Settings", "Ladder"}) {
                compared += compare(own.getSheet(name), other.getSheet(name));
            }
            assertTrue(compared > 800, "only " + compared + " formulas compared");
        }
    }

    @Test
    void plan_followsAChangedChoice() throws Exception {
        Path planned = plannedDemo();
        Map<String, JsonNode> options = chart(folder.resolve("full.xlsx"));
        Path changed = folder.resolve("changed.xlsx");
        try (XSSFWorkbook book = open(planned)) {
            XSSFSheet plan = book.getSheet("Plan");
            set(plan, 0, "Live setting", 3);
            set(plan, 4, "Live setting", "D");
            set(plan, 7, "Live loft bend [deg]", -1.5);
            set(plan, 7, "Live lie bend [deg]", 1);
            write(book, changed);
        }
        Path recalculated = Spreadsheet.recalculated(withoutCachedValues(changed), folder.resolve("calc"));
        try (XSSFWorkbook book = open(recalculated)) {
            XSSFSheet plan = book.getSheet("Plan");
            expect(plan, 0, options.get("Golfer A|1|Driver|3|0|0"));
            expect(plan, 4, options.get("Golfer A|5|4 hybrid|D|0|0"));
            expect(plan, 7, options.get("Golfer A|8|7 iron|fixed|-1.5|1"));
        }
    }

    private Path plannedDemo() {
        Terminal demo = Terminal.run("demo", "full", "-o", folder);
        assertEquals(0, demo.code(), demo.err());
        return folder.resolve("full-plan.xlsx");
    }

    private static Map<String, JsonNode> chart(Path file) throws Exception {
        Map<String, JsonNode> options = new HashMap<>();
        for (JsonNode club : Terminal.run("chart", file, "--json").json().get("clubs")) {
            club.get("options")
                    .forEach(option -> options.put(option.get("option").asText(), option));
        }
        return options;
    }

    private static void expect(Sheet plan, int club, JsonNode option) {
        Map<String, String> columns = Map.ofEntries(
                Map.entry("Live loft [deg]", "gaugeLoftDeg"),
                Map.entry("Live lie [deg]", "gaugeLieDeg"),
                Map.entry("Live sits [deg closed]", "sitsClosedDeg"),
                Map.entry("Live start line [deg closed]", "startClosedDeg"),
                Map.entry("Live contact shift [mm forward]", "contactShiftMm"),
                Map.entry("Live shaft turn [deg]", "shaftTurnDeg"),
                Map.entry("Live launch [deg]", "launchDeg"),
                Map.entry("Live spin [rpm]", "spinRpm"),
                Map.entry("Live landing [deg]", "landingDeg"),
                Map.entry("Live carry [yd]", "carry"),
                Map.entry("Live changes", "changes"));
        columns.forEach((heading, field) -> assertEquals(
                option.get(field).asDouble(), cell(plan, club, heading).getNumericCellValue(), 1e-6, heading));
        double terms = 0;
        for (String term : new String[] {"loft", "lie", "sits", "carry", "change"}) {
            terms += cell(plan, club, "Live " + term + " points").getNumericCellValue();
        }
        assertEquals(option.get("ownPenalty").asDouble(), terms, 1e-6);
        double carry = cell(plan, club, "Live carry [yd]").getNumericCellValue();
        double next = cell(plan, club + 1, "Live carry [yd]").getNumericCellValue();
        assertEquals(carry - next, cell(plan, club, "Live gap [yd]").getNumericCellValue(), 1e-6);
    }

    private static int compare(XSSFSheet own, XSSFSheet other) {
        int compared = 0;
        for (Row row : own) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA) {
                    compareCell((XSSFCell) cell, other.getRow(row.getRowNum()).getCell(cell.getColumnIndex()));
                    compared++;
                }
            }
        }
        return compared;
    }

    private static void compareCell(XSSFCell own, XSSFCell other) {
        String where = own.getSheet().getSheetName() + "!" + own.getReference() + " =" + own.getCellFormula();
        assertNotEquals(CellType.ERROR, other.getCachedFormulaResultType(), where);
        if (own.getCachedFormulaResultType() == CellType.NUMERIC) {
            assertEquals(own.getNumericCellValue(), other.getNumericCellValue(), 1e-6, where);
        } else {
            assertEquals(own.getStringCellValue(), other.getStringCellValue(), where);
        }
    }

    private Path withoutCachedValues(Path source) throws Exception {
        Path bare = folder.resolve("bare.xlsx");
        try (XSSFWorkbook book = open(source)) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        forget((XSSFCell) cell);
                    }
                }
            }
            write(book, bare);
        }
        return bare;
    }

    /** Takes the cached value away; an error first shows if the formula is then not calculated. */
    private static void forget(XSSFCell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            cell.setCellErrorValue(FormulaError.NUM);
            cell.getCTCell().unsetV();
            cell.getCTCell().unsetT();
        }
    }

    private static void set(XSSFSheet plan, int club, String heading, Object value) {
        Cell cell = cell(plan, club, heading);
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            cell.setCellValue((String) value);
        }
    }

    private static Cell cell(Sheet plan, int club, String heading) {
        for (Cell cell : plan.getRow(HEADING_ROW)) {
            if (cell.getStringCellValue().equals(heading)) {
                return plan.getRow(HEADING_ROW + 1 + club).getCell(cell.getColumnIndex());
            }
        }
        throw new AssertionError("no heading " + heading);
    }

    private static XSSFWorkbook open(Path file) throws Exception {
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    private static void write(XSSFWorkbook book, Path file) throws Exception {
        try (OutputStream output = Files.newOutputStream(file)) {
            book.write(output);
        }
    }
}
