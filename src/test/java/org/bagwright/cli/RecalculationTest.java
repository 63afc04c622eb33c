package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
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
    @TempDir
    Path folder;

    @Test
    void plan_recalculatesToTheProgramsOwnNumbers() throws Exception {
        Path planned = plannedDemo();
        Path bare = ResultCells.writeBare(ResultCells.open(planned), folder.resolve("bare.xlsx"));
        Path recalculated = Spreadsheet.recalculated(bare, folder.resolve("calc"));
        try (XSSFWorkbook own = ResultCells.open(planned);
                XSSFWorkbook other = ResultCells.open(recalculated)) {
            int compared = ResultCells.compare(own, other);
            assertTrue(compared > 800, "only " + compared + " formulas compared");
        }
    }

    @Test
    void plan_followsAChangedChoice() throws Exception {
        Path planned = plannedDemo();
        Map<String, JsonNode> options = chart(folder.resolve("full.xlsx"));
        Path changed = folder.resolve("changed.xlsx");
        try (XSSFWorkbook book = ResultCells.open(planned)) {
            ResultCells.set(book, 0, "Live setting", 3);
            ResultCells.set(book, 4, "Live setting", "D");
            ResultCells.set(book, 7, "Live loft bend [deg]", -1.5);
            ResultCells.set(book, 7, "Live lie bend [deg]", 1);
            ResultCells.writeBare(book, changed);
        }
        Path recalculated = Spreadsheet.recalculated(changed, folder.resolve("calc"));
        try (XSSFWorkbook book = ResultCells.open(recalculated)) {
            expect(book, 0, options.get("Golfer A|1|Driver|3|none|0|0"));
            expect(book, 4, options.get("Golfer A|5|4 hybrid|D|none|0|0"));
            expect(book, 7, options.get("Golfer A|8|7 iron|fixed|none|-1.5|1"));
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

    private static void expect(XSSFWorkbook plan, int club, JsonNode option) {
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
                option.get(field).asDouble(),
                ResultCells.plan(plan, club, heading).getNumericCellValue(),
                1e-6,
                heading));
        double terms = 0;
        for (String term : new String[] {"loft", "lie", "sits", "carry", "swingweight", "change"}) {
            terms += ResultCells.plan(plan, club, "Live " + term + " points").getNumericCellValue();
        }
        assertEquals(option.get("ownPenalty").asDouble(), terms, 1e-6);
        double carry = ResultCells.plan(plan, club, "Live carry [yd]").getNumericCellValue();
        double next = ResultCells.plan(plan, club + 1, "Live carry [yd]").getNumericCellValue();
        assertEquals(carry - next, ResultCells.plan(plan, club, "Live gap [yd]").getNumericCellValue(), 1e-6);
    }
}
