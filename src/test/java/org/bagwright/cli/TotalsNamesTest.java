package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of the totals of the sheet Plan, as formulas on a sheet of the fitter use them. */
@Tag("regression")
class TotalsNamesTest {
    private static final String MINE = "My sheet";
    private static final List<String> NAMES = List.of(
            "BW_today_points",
            "BW_planned_points",
            "BW_live_points",
            "BW_today_points_Golfer_A",
            "BW_planned_points_Golfer_A",
            "BW_live_points_Golfer_A",
            "BW_planned_points_Zo\u00eb_O_Neill",
            "BW_live_points_Zo\u00eb_O_Neill");

    @TempDir
    Path folder;

    private Path book() throws Exception {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .row("Zo\u00eb O'Neill", 88, 74)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Gap wish")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", 2, 25)
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "S", 1, 40)
                .row("Golfer A", 3, "7 iron", "iron", 31, 62, 37, null, null, null)
                .row("Zo\u00eb O'Neill", 1, "Driver", "driver", 12, 58, 45, "S", 3, 25)
                .row("Zo\u00eb O'Neill", 2, "7 iron", "iron", 33, 62, 37, null, null, null)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .row("S", 4, 9, 1.5, "yes")
                .write(folder.resolve("bag.xlsx"));
    }

    private static JsonNode plan(Path book) throws IOException {
        Terminal run = Terminal.run("plan", book, "--in-place", "--json");
        assertEquals(0, run.code(), run.err());
        return run.json();
    }

    /** Adds a sheet between Settings and Ladder, with a formula for each name. */
    private static void addMine(XSSFWorkbook workbook) {
        XSSFSheet mine = workbook.createSheet(MINE);
        workbook.setSheetOrder(MINE, workbook.getSheetIndex("Ladder"));
        for (int row = 0; row < NAMES.size(); row++) {
            mine.createRow(row).createCell(0).setCellFormula(NAMES.get(row) + "*2");
        }
    }

    private static void addClub(XSSFWorkbook workbook) {
        XSSFSheet clubs = workbook.getSheet("Clubs");
        Object[] cells = {"Golfer A", 4, "Wedge", "wedge", 52, 64, 35.5};
        XSSFRow row = clubs.createRow(clubs.getLastRowNum() + 1);
        for (int column = 0; column < cells.length; column++) {
            if (cells[column] instanceof Number number) {
                row.createCell(column).setCellValue(number.doubleValue());
            } else {
                row.createCell(column).setCellValue((String) cells[column]);
            }
        }
        clubs.getRow(3).createCell(9).setCellValue(60);
    }

    private interface Edit {
        void on(XSSFWorkbook workbook);
    }

    private static void edit(Path book, Edit edit) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            edit.on(workbook);
            try (OutputStream output = Files.newOutputStream(book)) {
                workbook.write(output);
            }
        }
    }

    private static List<String> sheets(Path book) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            return IntStream.range(0, workbook.getNumberOfSheets())
                    .mapToObj(workbook::getSheetName)
                    .toList();
        }
    }

    /** What the formulas must give, by name. */
    private static Map<String, Double> expected(JsonNode plan) {
        JsonNode golfers = plan.get("golfers");
        return Map.of(
                "BW_today_points", plan.at("/today/penalty").asDouble(),
                "BW_planned_points", plan.get("penalty").asDouble(),
                "BW_live_points", plan.get("penalty").asDouble(),
                "BW_today_points_Golfer_A", golfers.get(0).at("/today/penalty").asDouble(),
                "BW_planned_points_Golfer_A", golfers.get(0).get("penalty").asDouble(),
                "BW_live_points_Golfer_A", golfers.get(0).get("penalty").asDouble(),
                "BW_planned_points_Zo\u00eb_O_Neill",
                        golfers.get(1).get("penalty").asDouble(),
                "BW_live_points_Zo\u00eb_O_Neill", golfers.get(1).get("penalty").asDouble());
    }

    private static void check(Path book, JsonNode plan) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            for (int row = 0; row < NAMES.size(); row++) {
                assertEquals(1, workbook.getNames(NAMES.get(row)).size(), NAMES.get(row));
                assertEquals(
                        2 * expected(plan).get(NAMES.get(row)),
                        workbook.getSheet(MINE).getRow(row).getCell(0).getNumericCellValue(),
                        1e-9,
                        NAMES.get(row));
            }
        }
    }

    @Test
    void formulasWithTheNames_stayRightWhileTheBookGrowsAndIsPlannedAgain() throws Exception {
        Path book = book();
        plan(book);
        edit(book, TotalsNamesTest::addMine);
        List<String> order = sheets(book);
        List<JsonNode> plans = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            if (run == 1) {
                edit(book, TotalsNamesTest::addClub);
            }
            plans.add(plan(book));
            check(book, plans.get(run));
            assertEquals(order, sheets(book), "run " + run);
        }
        assertTrue(
                Math.abs(plans.get(0).get("penalty").asDouble()
                                - plans.get(1).get("penalty").asDouble())
                        > 1e-6,
                "the club that was added must count");
        Path bare;
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            bare = ResultCells.writeBare(workbook, folder.resolve("bare.xlsx"));
        }
        check(Spreadsheet.recalculated(bare, folder.resolve("calc")), plans.get(2));
    }

    @Test
    void liveTotal_followsAChoice() throws Exception {
        Path book = book();
        JsonNode plan = plan(book);
        edit(book, TotalsNamesTest::addMine);
        Path bare;
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            double setting = ResultCells.plan(workbook, 0, "Live setting").getNumericCellValue();
            ResultCells.set(workbook, 0, "Live setting", setting == 4 ? 2 : 4);
            bare = ResultCells.writeBare(workbook, folder.resolve("bare.xlsx"));
        }
        try (XSSFWorkbook live = ResultCells.open(Spreadsheet.recalculated(bare, folder.resolve("calc")))) {
            double planned = plan.get("penalty").asDouble();
            assertEquals(2 * planned, value(live, "BW_planned_points"), 1e-9);
            assertTrue(value(live, "BW_live_points") > 2 * planned + 1e-6, "the plan is the best");
            assertEquals(
                    value(live, "BW_live_points") - 2 * planned,
                    value(live, "BW_live_points_Golfer_A") - value(live, "BW_planned_points_Golfer_A"),
                    1e-9);
            assertEquals(
                    value(live, "BW_planned_points_Zo\u00eb_O_Neill"),
                    value(live, "BW_live_points_Zo\u00eb_O_Neill"),
                    1e-9);
        }
    }

    private static double value(XSSFWorkbook book, String name) {
        return book.getSheet(MINE).getRow(NAMES.indexOf(name)).getCell(0).getNumericCellValue();
    }
}
