package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A general-purpose spreadsheet program, LibreOffice, calculates every formula of a result book again. The copy that it
 * gets holds no cached values, so that none of the program's own numbers can pass for a calculated one.
 */
@Tag("analytic")
class RecalculationTest {
    @TempDir
    Path folder;

    private static final List<String> DEMOS = List.of("trio", "full", "team");

    @Test
    void plan_recalculatesToTheProgramsOwnNumbers() throws Exception {
        List<Path> bare = new ArrayList<>();
        for (String demo : DEMOS) {
            bare.add(ResultCells.writeBare(ResultCells.open(planned(demo)), folder.resolve(demo + "-bare.xlsx")));
        }
        bare.add(ResultCells.writeBare(ResultCells.open(plannedWithWildcards()), folder.resolve("wild-bare.xlsx")));
        List<Path> recalculated = Spreadsheet.recalculated(bare, folder.resolve("calc"));
        List<String> names = List.of("trio", "full", "team", "wild");
        for (int index = 0; index < names.size(); index++) {
            try (XSSFWorkbook own = ResultCells.open(folder.resolve(names.get(index) + "-plan.xlsx"));
                    XSSFWorkbook other = ResultCells.open(recalculated.get(index))) {
                int compared = ResultCells.compare(own, other);
                assertTrue(compared > 150, names.get(index) + ": only " + compared + " formulas compared");
            }
        }
    }

    /** The demo trio with a club whose name lookups would take as a pattern, were it not for what the formulas do. */
    private Path plannedWithWildcards() throws Exception {
        Path wild = folder.resolve("wild.xlsx");
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("trio.xlsx"));
                OutputStream output = Files.newOutputStream(wild)) {
            for (String sheet : List.of("Clubs", "Shots")) {
                book.getSheet(sheet)
                        .forEach(row -> row.forEach(cell -> {
                            if (cell.getCellType() == CellType.STRING
                                    && cell.getStringCellValue().equals("5 wood")) {
                                cell.setCellValue("5*?~");
                            }
                        }));
            }
            book.write(output);
        }
        assertEquals(0, Terminal.run("plan", wild).code());
        return folder.resolve("wild-plan.xlsx");
    }

    /** One slot for each kind of choice: setting, weighting, club, loft bend, lie bend, left out. */
    @Test
    void plan_followsAChangedChoice() throws Exception {
        Path planned = planned("full");
        Map<String, JsonNode> options = chart(folder.resolve("full.xlsx"));
        Path changed = folder.resolve("changed.xlsx");
        try (XSSFWorkbook book = ResultCells.open(planned)) {
            choose(book, 0, "Driver deep", 3, "Back", 0, 0);
            choose(book, 1, "3 wood", 5, "Light", 0, 0);
            choose(book, 3, "4 iron", "fixed", "none", 0.5, -1);
            choose(book, 6, "7 iron", "fixed", "none", -1.5, 1);
            ResultCells.set(book, 12, "Live club", "left out");
            ResultCells.writeBare(book, changed);
        }
        Path recalculated = Spreadsheet.recalculated(changed, folder.resolve("calc"));
        try (XSSFWorkbook book = ResultCells.open(recalculated)) {
            expect(book, 0, options.get("Golfer A|1|Driver deep|3|Back|0|0"));
            expect(book, 1, options.get("Golfer A|2|3 wood|5|Light|0|0"));
            expect(book, 3, options.get("Golfer A|4|4 iron|fixed|none|0.5|-1"));
            expect(book, 6, options.get("Golfer A|7|7 iron|fixed|none|-1.5|1"));
            assertEquals("left out", ResultCells.plan(book, 12, "Live fit").getStringCellValue());
            for (String heading : List.of("Live loft [deg]", "Live carry [yd]", "Live swing- weight")) {
                assertEquals("", ResultCells.plan(book, 12, heading).getStringCellValue(), heading);
            }
        }
    }

    private static void choose(
            XSSFWorkbook book, int row, String club, Object setting, String weighting, double loftDeg, double lieDeg) {
        ResultCells.set(book, row, "Live club", club);
        ResultCells.set(book, row, "Live setting", setting);
        ResultCells.set(book, row, "Live weighting", weighting);
        ResultCells.set(book, row, "Live loft bend [deg]", loftDeg);
        ResultCells.set(book, row, "Live lie bend [deg]", lieDeg);
    }

    private Path planned(String name) {
        Terminal demo = Terminal.run("demo", name, "-o", folder);
        assertEquals(0, demo.code(), demo.err());
        return folder.resolve(name + "-plan.xlsx");
    }

    private static Map<String, JsonNode> chart(Path file) throws Exception {
        Map<String, JsonNode> options = new HashMap<>();
        for (JsonNode club : Terminal.run("chart", file, "--json").json().get("clubs")) {
            club.get("options")
                    .forEach(option -> options.put(option.get("option").asText(), option));
        }
        return options;
    }

    private static void expect(XSSFWorkbook plan, int club, JsonNode option) {
        Map<String, String> columns = Map.ofEntries(
                Map.entry("Live loft [deg]", "gaugeLoftDeg"),
                Map.entry("Live lie [deg]", "gaugeLieDeg"),
                Map.entry("Live sits [deg]", "sitsClosedDeg"),
                Map.entry("Live start line [deg closed]", "startClosedDeg"),
                Map.entry("Live contact shift [mm forward]", "contactShiftMm"),
                Map.entry("Live shaft turn [deg]", "shaftTurnDeg"),
                Map.entry("Live launch [deg]", "launchDeg"),
                Map.entry("Live spin [rpm]", "spinRpm"),
                Map.entry("Live landing [deg]", "landingDeg"),
                Map.entry("Live carry [yd]", "carry"),
                Map.entry("Live changes", "changes"));
        columns.forEach((heading, field) -> assertEquals(
                option.get(field).asDouble(),
                ResultCells.plan(plan, club, heading).getNumericCellValue(),
                1e-9,
                heading));
        double terms = 0;
        for (String term : new String[] {"loft", "lie", "sits", "carry", "swingweight", "change"}) {
            terms += ResultCells.plan(plan, club, "Live " + term + " points").getNumericCellValue();
        }
        assertEquals(option.get("ownPenalty").asDouble(), terms, 1e-9);
        double carry = ResultCells.plan(plan, club, "Live carry [yd]").getNumericCellValue();
        double next = ResultCells.plan(plan, club + 1, "Live carry [yd]").getNumericCellValue();
        assertEquals(carry - next, ResultCells.plan(plan, club, "Live gap [yd]").getNumericCellValue(), 1e-9);
    }
}
