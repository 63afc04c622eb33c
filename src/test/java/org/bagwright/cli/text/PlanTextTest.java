package org.bagwright.cli.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.DemoBooks;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code plan} shows of the demo books: it fits a screen and starts with what decides. */
@Tag("regression")
class PlanTextTest {
    private static final int SCREEN_LINES = 40;
    private static final int SCREEN_COLUMNS = 100;

    @TempDir
    Path folder;

    private List<String> shown(String demo) {
        Terminal plan = Terminal.run("plan", DemoBooks.kept(demo), "-o", folder.resolve("plan.xlsx"), "--seconds", 120);
        assertEquals(0, plan.code(), plan.err());
        return Stream.concat(plan.out().lines(), plan.err().lines()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void plan_fitsAScreenAndSaysFirstWhatDecides(String demo) {
        List<String> lines = shown(demo);
        assertTrue(lines.size() <= SCREEN_LINES, lines.size() + " lines");
        // The folder of the test may be long.
        lines.stream()
                .filter(line -> !line.contains(folder.toString()))
                .forEach(line -> assertTrue(line.length() <= SCREEN_COLUMNS, line));
        assertTrue(
                lines.get(0)
                        .matches(
                                ".*: every must and limit is met; penalty [\\d.]+ today -> [\\d.]+ planned \\(proven best\\)"),
                lines.get(0));
        assertTrue(lines.get(lines.size() - 1).matches("\\d+ more messages: sheet Messages"), lines.toString());
    }

    @Test
    void singleGolfer_readsWhatToTurnBeforeTheLadder() {
        List<String> lines = shown("trio");
        assertTrue(lines.get(1).startsWith("Of the planned penalty "), lines.get(1));
        assertEquals("Change 2 clubs (2 items):", lines.get(2));
        assertTrue(lines.get(4).matches("  5 wood +setting 3 -> 1 .*"), lines.get(4));
        assertTrue(lines.get(5).startsWith("  carry and gap, yd"), lines.get(5));
    }

    @Test
    void team_hasTwoLinesAGolfer() {
        List<String> lines = shown("team");
        assertTrue(lines.get(0).startsWith("All 12 golfers: "), lines.get(0));
        assertTrue(
                lines.get(1).matches("Golfer A: musts met; penalty .*; change 12 clubs, first 5 wood: .*"),
                lines.get(1));
        assertTrue(lines.get(2).matches("  carry \\d+ .* yd.*"), lines.get(2));
        assertTrue(lines.get(23).startsWith("Golfer L: "), lines.get(23));
    }

    @Test
    void longText_isWrappedAtBlanksAndCut() {
        String text = "word ".repeat(50).strip();
        List<String> lines = new WrappedText(text, 2).lines();
        assertEquals(text, String.join(" ", lines).replaceAll(" +", " "));
        assertTrue(lines.stream().allMatch(line -> line.length() <= WrappedText.COLUMNS));
        List<String> cut = new WrappedText(text, 2).lines(1);
        assertEquals(1, cut.size());
        assertTrue(cut.get(0).endsWith(" ...") && cut.get(0).length() <= WrappedText.COLUMNS, cut.get(0));
        String whole = "x".repeat(150);
        assertEquals(List.of(whole), new WrappedText(whole, 2).lines());
    }
}
