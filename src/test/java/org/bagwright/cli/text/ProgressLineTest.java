package org.bagwright.cli.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.domain.plan.WorkProgress.Stage;
import org.bagwright.planning.Planning;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a person sees who waits. */
@Tag("regression")
class ProgressLineTest {
    private final StringWriter said = new StringWriter();
    private long nowNs;
    private final ProgressLine line = new ProgressLine(new PrintWriter(said), () -> nowNs, " (hint)");

    private String lastLine() {
        String all = said.toString();
        return all.substring(all.lastIndexOf('\r') + 1).strip();
    }

    private void tickAtS(double seconds) {
        nowNs = (long) (seconds * 1e9);
        line.tick();
    }

    @Test
    void shortWork_showsNothing() {
        line.at(Stage.READING, 0, 0);
        tickAtS(0.9);
        line.clear();
        assertEquals("", said.toString());
    }

    @Test
    void longWork_tellsItsStageThoughNothingIsReported() {
        line.at(Stage.READING, 0, 0);
        tickAtS(1.2);
        assertEquals("1 s  Reading the book", lastLine());
        line.at(Stage.OPTIONS, 36, 200);
        tickAtS(4);
        assertEquals("4 s  Computing every option, golfer 37 of 200", lastLine());
        line.at(Stage.SEARCH, 0, 0);
        tickAtS(6);
        assertEquals("6 s  Searching (hint)", lastLine());
        line.report(0, 3.25, 1.5, 0.1);
        tickAtS(7);
        assertEquals("7 s  Searching: best 3.25 points, none below 1.50 (hint)", lastLine());
        line.at(Stage.WRITING, 0, 0);
        tickAtS(9);
        assertEquals("9 s  Writing the result", lastLine());
    }

    @Test
    void brokenMusts_areToldInWholesNotInThousandths() {
        line.at(Stage.SEARCH, 0, 0);
        line.report(500, 3.25, 0, 0.1);
        tickAtS(2);
        assertEquals("2 s  Searching: best 3.25 points and 0.50 of musts broken, none below 0.00 (hi", lastLine());
    }

    @Test
    void clearedLine_isGoneAndStaysGoneUntilMoreWork() {
        line.at(Stage.SEARCH, 0, 0);
        tickAtS(2);
        line.clear();
        int length = said.toString().length();
        assertTrue(said.toString().endsWith(" \r"));
        tickAtS(5);
        assertEquals(length, said.toString().length());
        line.at(Stage.READING, 0, 0);
        tickAtS(5.5);
        assertEquals(length, said.toString().length(), "new work has its own second of quiet");
        tickAtS(6.5);
        assertEquals("2 s  Reading the book", lastLine());
    }

    @Test
    void everyLine_fitsATerminalAndCoversTheOneBefore() {
        line.at(Stage.SEARCH, 0, 0);
        line.report(123_456_789, 123_456.78, 12_345.67, 1);
        tickAtS(3);
        assertEquals(1 + 78, said.toString().length());
    }

    @Test
    void planning_tellsItsStagesInTheirOrderAndCountsGolfers() throws Exception {
        List<String> told = new ArrayList<>();
        Set<Stage> stages = EnumSet.noneOf(Stage.class);
        WorkProgress listener = (stage, done, all) -> {
            stages.add(stage);
            told.add(stage + " " + done + "/" + all);
        };
        Planning planning = new Planning(1, 20);
        planning.onWork(listener);
        assertEquals(12, planning.plan(Path.of("demo-data", "team.xlsx")).bags().size());
        assertEquals(EnumSet.of(Stage.READING, Stage.OPTIONS, Stage.SEARCH, Stage.REASONS), stages);
        assertEquals(List.of("READING 0/0", "OPTIONS 0/12"), told.subList(0, 2));
        assertTrue(told.indexOf("OPTIONS 11/12") < told.indexOf("SEARCH 0/0"), told.toString());
        assertEquals("REASONS 11/12", told.get(told.size() - 1));
    }

    @Test
    void outputThatNobodyWatches_hasNoLine() throws Exception {
        Terminal check = Terminal.run("chart", Path.of("demo-data", "trio.xlsx"));
        assertFalse(check.err().contains("\r"), check.err());
    }
}
