package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A golfer whose gap wish is {@code today}; his driver has a gap wish of its own, which goes first. */
@Tag("analytic")
class TodayGapsTest {
    private static final List<String> TODAY = List.of(
            "Golfer A|1|Driver|2|heel|0|0", "Golfer A|2|5 wood|1|none|0|0", "Golfer A|3|7 iron|fixed|none|0.5|0");

    @TempDir
    Path folder;

    private Path book;
    private List<Map<String, JsonNode>> slots;
    private Map<String, Double> wishesYd;

    @BeforeEach
    void write() throws Exception {
        BookSketch sketch = ChoiceBook.sketch().put("Golfers", 1, "Gap wish", "today");
        sketch.put("Clubs", 2, "Gap wish", null);
        sketch.put("Clubs", 3, "Gap wish", null);
        book = sketch.write(folder.resolve("bag.xlsx"));
        slots = ChoiceBook.slots(book);
        double gapYd = carryYd(1, TODAY.get(1)) - carryYd(2, TODAY.get(2));
        wishesYd = Map.of("Driver", 25.0, "5 wood", gapYd, "7 wood", gapYd);
    }

    private double carryYd(int slot, String key) {
        return slots.get(slot).get(key).get("carry").asDouble();
    }

    private JsonNode plan() throws Exception {
        return Terminal.run("plan", book, "--json", "-o", folder.resolve("one.xlsx"))
                .json();
    }

    @Test
    void plan_isTheBestOfAllChoices() throws Exception {
        JsonNode plan = plan();
        assertEquals(
                ChoiceBook.penaltyPoints(slots, TODAY, wishesYd),
                plan.at("/today/penalty").asDouble(),
                1e-9);
        assertEquals(
                ChoiceBook.leastPoints(slots, Set.of(), wishesYd),
                plan.get("penalty").asDouble(),
                1e-9);
    }

    /** Another club in the slot, and another club after it, still have the gap of today as their wish. */
    @Test
    void sheetPlan_showsTodaysGapAsTheWishLive() throws Exception {
        plan();
        List<String> live = List.of(
                "Golfer A|1|Driver|4|toe|0|0", "Golfer A|2|7 wood|2|none|0|0", "Golfer A|3|7 iron|fixed|none|-1|0.5");
        Path bare = folder.resolve("bare.xlsx");
        try (XSSFWorkbook one = ResultCells.open(folder.resolve("one.xlsx"))) {
            ResultCells.set(one, 0, "Live setting", 4);
            ResultCells.set(one, 0, "Live weighting", "toe");
            ResultCells.set(one, 1, "Live club", "7 wood");
            ResultCells.set(one, 1, "Live setting", 2);
            ResultCells.set(one, 2, "Live loft bend [deg]", -1);
            ResultCells.set(one, 2, "Live lie bend [deg]", 0.5);
            ResultCells.writeBare(one, bare);
        }
        try (XSSFWorkbook calculated = ResultCells.open(Spreadsheet.recalculated(bare, folder.resolve("calc")))) {
            assertEquals(25, number(calculated, 0, "Gap wish [yd]"), 1e-9);
            assertEquals(wishesYd.get("7 wood"), number(calculated, 1, "Gap wish [yd]"), 1e-9);
            for (int slot = 0; slot < 2; slot++) {
                double gapYd = carryYd(slot, live.get(slot)) - carryYd(slot + 1, live.get(slot + 1));
                double off = (gapYd - (slot == 0 ? 25 : wishesYd.get("7 wood"))) / 3;
                assertEquals(2 * off * off, number(calculated, slot, "Live gap points"), 1e-9);
            }
        }
    }

    private static double number(XSSFWorkbook calculated, int row, String heading) {
        return ResultCells.plan(calculated, row, heading).getNumericCellValue();
    }
}
