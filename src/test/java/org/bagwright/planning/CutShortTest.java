package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.StreamSupport;
import org.bagwright.ChildJava;
import org.bagwright.Needed;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book that takes the search a quarter of a minute and more, ended by the time or by Ctrl-C. */
@Tag("analytic")
class CutShortTest {
    private static final int STOPPED = 130;

    @TempDir
    Path folder;

    private Path book;
    private Path out;

    /** Hundreds of options a club, swingweights that must be alike, and few changes. */
    @BeforeEach
    void writeBook() throws IOException {
        EditedDemo demo = new EditedDemo(ShippedBook.FULL, folder).change("Clubs", "Bend step", step -> 0.15);
        demo.put("Aims", "spread", "Tolerance", 0.1);
        demo.put("Aims", "spread", "Importance", 1);
        demo.put("Aims", "spread", "Must", "yes");
        demo.put("Golfers", "Golfer A", "Most changes", 9);
        book = demo.write();
        out = folder.resolve("out.xlsx");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.2, 2})
    void planCutByTheTime_saysWhatIsNotSettledAndNeverCannot(double seconds) throws IOException {
        Terminal plan = Terminal.run("plan", book, "-o", out, "--seconds", seconds, "--json");
        assertEquals(4, plan.code(), plan.err());
        JsonNode json = plan.json();
        assertFalse(json.get("proven").asBoolean());
        JsonNode bounds = json.get("bounds");
        assertEquals(0, bounds.get("hard").asLong());
        assertTrue(bounds.get("brokenMusts").asLong() <= json.get("brokenMusts").asLong());
        assertTrue(bounds.get("penalty").asDouble() <= json.get("penalty").asDouble());
        boolean settled = json.get("mustsSettled").asBoolean();
        assertEquals(settled, bounds.get("brokenMusts").asLong() > 0, "settled by a bound only");
        String said = plan.err().replaceAll("\\s+", " ");
        assertEquals(settled, said.contains("not all can be met"), said);
        assertEquals(!settled, said.contains("(whether they can be is not settled in the time)"), said);
        assertGivenOrUnsettled(json, "steps", "the steps from ");
        assertGivenOrUnsettled(json, "others", "another plan: ");
        assertGivenOrUnsettled(json, "relaxations", "whether it would help to ");
    }

    private static void assertGivenOrUnsettled(JsonNode json, String given, String unsettled) {
        assertTrue(
                !json.get(given).isEmpty() || unsettled(json).stream().anyMatch(what -> what.startsWith(unsettled)),
                given + ": " + json.get("notSettled"));
    }

    private static List<String> unsettled(JsonNode json) {
        return StreamSupport.stream(json.get("notSettled").spliterator(), false)
                .map(each -> each.get("what").asText())
                .toList();
    }

    private Process started() throws IOException {
        return ChildJava.of("org.bagwright.cli.Main", "plan", book, "-o", out, "--seconds", 600)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Ctrl-C as a terminal sends it, a while after the start. */
    private static void interrupt(Process process) throws IOException, InterruptedException {
        TimeUnit.SECONDS.sleep(5);
        new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                .start()
                .waitFor();
    }

    @Test
    void ctrlC_writesTheBestPlanSoFar() throws IOException, InterruptedException {
        Needed.notWindows();
        Process process = started();
        interrupt(process);
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(STOPPED, process.waitFor(), said);
        assertTrue(said.contains("stopping"), said);
        assertTrue(Files.exists(out), said);
        assertEquals(0, Terminal.run("check", out).code());
    }

    @Test
    void secondCtrlC_endsAtOnceAndWritesNothing() throws IOException, InterruptedException {
        Needed.notWindows();
        Process process = started();
        interrupt(process);
        BufferedReader said = process.errorReader(StandardCharsets.UTF_8);
        String line = said.readLine();
        assertTrue(line.contains("Press Ctrl-C again"), line);
        new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                .start()
                .waitFor();
        assertEquals(STOPPED, process.waitFor());
        assertFalse(Files.exists(out));
    }
}
