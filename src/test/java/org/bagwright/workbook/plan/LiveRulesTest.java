package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits and musts that a person changes on the sheet Plan: each side of a limit, and a must just kept. */
@Tag("analytic")
class LiveRulesTest {
    @TempDir
    Path folder;

    private XSSFWorkbook planned() throws Exception {
        Path result = folder.resolve("plan.xlsx");
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Iron speed")
                .row("Golfer A", 80)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target")
                .row("Golfer A", 1, "7 iron", "iron", 31, 62, 37, 31.5)
                .row("Golfer A", 2, "8 iron", "iron", 35, 62.5, 36.5, 35)
                .sheet("Aims", "Measure, Tolerance, Must")
                .row("loft", 0.5, "yes")
                .write(folder.resolve("bag.xlsx"));
        Terminal run = Terminal.run("plan", book, "-o", result);
        assertEquals(0, run.code(), run.err());
        return ResultCells.open(result);
    }

    private static double number(XSSFWorkbook plan, String heading) {
        return ResultCells.live(plan, 0, heading).getNumberValue();
    }

    private static void assertLimits(XSSFWorkbook plan, String figure, String least, String most) {
        double now = number(plan, "Live " + figure + " [yd]");
        String beyond = "Live " + figure + " beyond its limit [yd]";
        assertEquals(0, number(plan, beyond));
        ResultCells.set(plan, 0, least, now + 3);
        assertEquals(3, number(plan, beyond), 1e-9, least + " above it");
        assertEquals(1, number(plan, "Live limits broken"));
        ResultCells.set(plan, 0, least, now - 1);
        ResultCells.set(plan, 0, most, now + 1);
        assertEquals(0, number(plan, beyond), figure + " between its limits");
        assertEquals(0, number(plan, "Live limits broken"));
        ResultCells.set(plan, 0, most, now - 2);
        assertEquals(2, number(plan, beyond), 1e-9, most + " below it");
        assertEquals(1, number(plan, "Live limits broken"));
        assertTrue(ResultCells.live(plan, 0, "Live fit").getStringValue().startsWith("limit: "));
        ResultCells.set(plan, 0, most, now + 1);
    }

    @Test
    void gapAndCarry_areBeyondEitherOfTheirLimits() throws Exception {
        try (XSSFWorkbook plan = planned()) {
            assertLimits(plan, "gap", "Gap least [yd]", "Gap most [yd]");
            assertLimits(plan, "carry", "Carry least [yd]", "Carry most [yd]");
        }
    }

    /** Half a degree off with a tolerance of half a degree is kept; a hundredth more is not. */
    @Test
    void mustOfExactlyItsTolerance_isKept() throws Exception {
        try (XSSFWorkbook plan = planned()) {
            assertEquals(0, number(plan, "Live musts missed"));
            ResultCells.set(plan, 0, "Loft target [deg]", 31.51);
            assertEquals(1, number(plan, "Live musts missed"));
            assertEquals("loft", ResultCells.live(plan, 0, "Live must missed").getStringValue());
        }
    }
}
