package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.files.SavedMeanwhileException;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkbookProblems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that is saved between the reading and the writing: a result never goes with another book than its own. */
@Tag("analytic")
class SavedMeanwhileTest {
    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();
    private final AtomicInteger tries = new AtomicInteger();
    private Path book;
    private Path result;

    @BeforeEach
    void copyDemo() throws IOException {
        book = Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
        result = folder.resolve("bag-plan.xlsx");
    }

    private interface Save {
        void run() throws Exception;
    }

    /** Plans and writes, with a save in between on the first tries. */
    private BookResult planned(int savedTries, Save save, Path target) throws Exception {
        return new SavedMeanwhile(book, new PrintWriter(err, true)).repeat(source -> {
            BookResult plan = new Planning(1, 10).plan(source);
            if (tries.incrementAndGet() <= savedTries) {
                save.run();
            }
            Planning.write(source, plan, List.of(), target);
            return plan;
        });
    }

    private void nameTheGolfer(String name) throws IOException {
        try (XSSFWorkbook saved = ResultCells.open(book)) {
            saved.getSheet("Start").getRow(0).createCell(9).setCellValue(name);
            try (OutputStream out = Files.newOutputStream(book)) {
                saved.write(out);
            }
        }
    }

    private static String nameIn(Path file) throws IOException {
        try (XSSFWorkbook saved = ResultCells.open(file)) {
            return saved.getSheet("Start").getRow(0).getCell(9).getStringCellValue();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void savedOnce_isPlannedAgainFromWhatWasSaved() throws Exception {
        planned(1, () -> nameTheGolfer("second"), result);
        assertEquals(2, tries.get());
        assertEquals("second", nameIn(result));
        assertTrue(err.toString().contains("was saved meanwhile; starting again"), err.toString());
    }

    @Test
    void savedOnceInPlace_keepsWhatWasSavedAsTheBackup() throws Exception {
        planned(1, () -> nameTheGolfer("second"), book);
        assertEquals("second", nameIn(book));
        assertEquals(2, names().size(), names().toString());
        assertEquals("second", nameIn(folder.resolve(names().get(0))));
    }

    @Test
    void savedEachTime_stopsAndWritesNothing() throws Exception {
        SavedMeanwhileException stopped = assertThrows(
                SavedMeanwhileException.class, () -> planned(3, () -> nameTheGolfer("again " + tries), result));
        assertEquals(3, tries.get());
        assertTrue(
                stopped.found().text().contains("nothing was written"),
                stopped.found().text());
        assertEquals(List.of("bag.xlsx"), names());
    }

    @Test
    void garbageSavedMeanwhile_isAProblemOfTheBook() throws Exception {
        byte[] garbage = "no book".getBytes(StandardCharsets.US_ASCII);
        WorkbookProblems wrong =
                assertThrows(WorkbookProblems.class, () -> planned(1, () -> Files.write(book, garbage), book));
        assertTrue(wrong.messages().get(0).text().startsWith("this is not an .xlsx workbook"));
        assertEquals(List.of("bag.xlsx"), names());
        assertArrayEquals(garbage, Files.readAllBytes(book));
    }

    @Test
    void deletedMeanwhile_isAProblemOfTheBook() throws Exception {
        WorkbookProblems gone =
                assertThrows(WorkbookProblems.class, () -> planned(1, () -> Files.delete(book), result));
        assertTrue(gone.messages().get(0).text().startsWith("there is no such file"));
        assertEquals(List.of(), names());
    }

    @Test
    void savedWithTheSameSizeAndTime_isNoticed() throws Exception {
        SourceFile source = new SourceFile(book);
        byte[] bytes = source.bytes().clone();
        source.requireUnchanged();
        FileTime time = Files.getLastModifiedTime(book);
        bytes[bytes.length / 2]++;
        Files.write(book, bytes);
        Files.setLastModifiedTime(book, time);
        assertThrows(SavedMeanwhileException.class, source::requireUnchanged);
    }

    @Test
    void commandsOnABookSavedAllTheTime_endWith3() throws Exception {
        byte[] bytes = Files.readAllBytes(book);
        AtomicBoolean ended = new AtomicBoolean();
        Thread saving = new Thread(() -> saveAllTheTime(bytes, ended));
        saving.start();
        Terminal plan = Terminal.run("plan", book, "--in-place");
        ended.set(true);
        saving.join();
        assertEquals(3, plan.code(), plan.err());
        assertTrue(plan.err().contains("saved this book again and again"), plan.err());
        assertEquals(List.of("bag.xlsx"), names());
    }

    /** The same book with another comment in its zip each time, renamed over the one before. */
    private void saveAllTheTime(byte[] bytes, AtomicBoolean ended) {
        try {
            for (int save = 1; !ended.get(); save++) {
                byte[] comment = ("save " + save).getBytes(StandardCharsets.US_ASCII);
                byte[] saved = Arrays.copyOf(bytes, bytes.length + comment.length);
                saved[bytes.length - 2] = (byte) comment.length;
                System.arraycopy(comment, 0, saved, bytes.length, comment.length);
                Path fresh = Files.write(folder.resolve("fresh"), saved);
                Files.move(fresh, book, StandardCopyOption.ATOMIC_MOVE);
                TimeUnit.MILLISECONDS.sleep(20);
            }
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
    }
}
