package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The word of the column Live fit around its bounds: up to one tolerance off is inside, up to two is close. */
@Tag("analytic")
class FitWordTest {
    private static final Map<Double, String> WORDS = new TreeMap<>(Map.of(
            0.0, "inside",
            0.999, "inside",
            1.0, "inside",
            1.001, "close: loft",
            1.999, "close: loft",
            2.0, "close: loft",
            2.001, "far: loft"));
    private static final double TOLERANCE_DEG = 0.5;

    @TempDir
    Path folder;

    /** A golfer for each miss, to both sides; each has one club that nothing can change. */
    @Test
    void word_changesJustAboveOneToleranceAndJustAboveTwo() throws Exception {
        BookSketch sketch = new BookSketch().sheet("Golfers", "Golfer, Iron speed");
        List<Double> misses = WORDS.keySet().stream().toList();
        for (double miss : misses) {
            sketch.row("Weak " + miss, 80).row("Strong " + miss, 80);
        }
        sketch.sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target");
        for (double miss : misses) {
            sketch.row("Weak " + miss, 1, "7 iron", "iron", 31, 62, 37, 31 - miss * TOLERANCE_DEG)
                    .row("Strong " + miss, 1, "7 iron", "iron", 31, 62, 37, 31 + miss * TOLERANCE_DEG);
        }
        sketch.sheet("Aims", "Measure, Tolerance").row("loft", TOLERANCE_DEG);
        Path result = folder.resolve("plan.xlsx");
        Terminal run = Terminal.run("plan", sketch.write(folder.resolve("bag.xlsx")), "-o", result);
        assertEquals(0, run.code(), run.err());
        try (XSSFWorkbook book = ResultCells.open(result)) {
            for (int row = 0; row < 2 * misses.size(); row++) {
                double miss = misses.get(row / 2);
                Cell word = ResultCells.plan(book, row, "Live fit");
                assertEquals(WORDS.get(miss), word.getStringCellValue(), "the program's word for " + miss);
                assertEquals(WORDS.get(miss), calculated(book, row, miss), "the formula's word for " + miss);
            }
        }
    }

    /** What the formula says where the worst miss is so many tolerances. */
    private static String calculated(XSSFWorkbook book, int row, double miss) {
        for (String heading : List.of("Live loft miss [tolerances]", "Live worst miss [tolerances]")) {
            ResultCells.plan(book, row, heading).setBlank();
            ResultCells.set(book, row, heading, miss);
        }
        return ResultCells.live(book, row, "Live fit").getStringValue();
    }
}
