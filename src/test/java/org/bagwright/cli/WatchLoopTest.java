package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.exceptions.NotOfficeXmlFileException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.AnsiStyle;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.cli.text.WatchText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.files.FileWatch;
import org.bagwright.planning.PlanTarget;
import org.bagwright.planning.Planning;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that is saved again and again while it is watched. */
@Tag("regression")
class WatchLoopTest {
    private static final long MOST_WAIT_MS = 60_000;

    @TempDir
    Path folder;

    @TempDir
    Path scratch;

    private final StringWriter said = new StringWriter();
    private Path book;
    private Path target;
    private FileWatch watch;
    private WatchLoop loop;
    private Thread thread;

    @BeforeEach
    void prepare() throws Exception {
        book = folder.resolve("bag.xlsx");
        target = folder.resolve("bag-plan.xlsx");
        watch = new FileWatch(book, new FileWatch.Pace(60, 300, 100));
        PrintWriter out = new PrintWriter(said);
        WatchText text = new WatchText(out, new ProgressLine(out, System::nanoTime, ""), AnsiStyle.NONE);
        loop = new WatchLoop(new Planning(1, 5), watch, new PlanTarget(target), text);
        thread = new Thread(this::run);
    }

    private void run() {
        try {
            loop.run();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @AfterEach
    void end() throws Exception {
        loop.stop();
        thread.join(MOST_WAIT_MS);
        watch.close();
        assertFalse(thread.isAlive(), "the loop ends when it is told to");
    }

    private static void await(BooleanSupplier reached) throws InterruptedException {
        long endMs = System.currentTimeMillis() + MOST_WAIT_MS;
        while (!reached.getAsBoolean() && System.currentTimeMillis() < endMs) {
            Thread.sleep(20);
        }
    }

    private double plannedLoftDeg() {
        if (!Files.isRegularFile(target)) {
            return 0;
        }
        try (XSSFWorkbook result = ResultCells.open(target)) {
            return result.getSheet("Clubs").getRow(1).getCell(4).getNumericCellValue();
        } catch (NotOfficeXmlFileException noBookYet) {
            return 0;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void awaitSaid(String part) throws InterruptedException {
        await(() -> said.toString().contains(part));
        assertTrue(said.toString().contains(part), said.toString());
    }

    private void awaitPlanOf(int number) throws InterruptedException {
        await(() -> Math.abs(plannedLoftDeg() - BookSaves.loftDeg(number)) < 1e-9);
        assertEquals(BookSaves.loftDeg(number), plannedLoftDeg(), 1e-9, said.toString());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void manySaves_someOfThemBroken_endWithThePlanOfTheLast() throws Exception {
        BookSaves saves = new BookSaves(book, scratch, 40);
        saves.all(0);
        thread.start();
        saves.all(24);
        awaitPlanOf(24);
        loop.stop();
        thread.join(MOST_WAIT_MS);
        assertTrue(saves.broken() >= 8);
        double points = new Planning(1, 5).plan(book).plannedPoints();
        List<String> plans =
                said.toString().lines().filter(line -> line.contains("penalty")).toList();
        String last = plans.get(plans.size() - 1);
        assertTrue(last.contains("  penalty " + Numbers.fixed(points, 2) + " (before "), said.toString());
        assertEquals(List.of("bag-plan.xlsx", "bag.xlsx"), names(), "no backups, nothing half-written");
    }

    @Test
    void problems_areListedAndTheNextSaveIsPlanned() throws Exception {
        BookSaves saves = new BookSaves(book, scratch, 0);
        saves.all(0);
        thread.start();
        awaitPlanOf(0);
        byte[] good = Files.readAllBytes(book);
        Files.writeString(book, "no workbook");
        awaitSaid("bag.xlsx: this is not an .xlsx workbook");
        Files.delete(book);
        awaitSaid("the book is missing");
        Files.write(book, good);
        awaitSaid("the same set-up");
    }

    @Test
    void foreignResult_isKeptOnceAndOwnPlansReplaceOneAnother() throws Exception {
        Files.writeString(target, "somebody's own");
        BookSaves saves = new BookSaves(book, scratch, 0);
        saves.all(0);
        thread.start();
        awaitPlanOf(0);
        saves.all(1);
        awaitPlanOf(1);
        awaitSaid("(before ");
        List<String> kept =
                names().stream().filter(name -> name.contains(".backup-")).toList();
        assertEquals(1, kept.size(), kept.toString());
        assertEquals("somebody's own", Files.readString(folder.resolve(kept.get(0))));
        assertTrue(said.toString().contains("Kept the previous file"), said.toString());
    }

    @Test
    void resultThatCannotBeWritten_isToldAndWrittenLater() throws Exception {
        Path inside = Files.createDirectories(target).resolve("in the way");
        Files.writeString(inside, "x");
        new BookSaves(book, scratch, 0).all(0);
        thread.start();
        awaitSaid("cannot be written");
        Files.delete(inside);
        Files.delete(target);
        awaitPlanOf(0);
    }
}
