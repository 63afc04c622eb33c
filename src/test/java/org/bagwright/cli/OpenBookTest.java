package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that is open in a spreadsheet program: it may be read, but not be replaced. */
@Tag("regression")
class OpenBookTest {
    @TempDir
    Path folder;

    private Path book;
    private byte[] before;

    @BeforeEach
    void openBook() throws Exception {
        book = Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
        before = Files.readAllBytes(book);
        Files.writeString(folder.resolve(".~lock.bag.xlsx#"), ",golfer,bench,27.11.2026 10:00,;");
    }

    private void refused(Terminal run, String name) throws Exception {
        assertEquals(3, run.code(), run.err());
        assertTrue(run.err().startsWith(name + ": the book is open in another program"), run.err());
        assertTrue(run.err().contains("Close it there") && run.err().contains("delete "), run.err());
        assertEquals("", run.out());
    }

    @Test
    void planInPlace_saysThreeAndLeavesEverything() throws Exception {
        refused(Terminal.run("plan", book, "--in-place"), "bag.xlsx");
        assertArrayEquals(before, Files.readAllBytes(book));
        assertEquals(2, files().size());
    }

    @Test
    void planOntoAnOpenResult_saysThreeAndLeavesIt() throws Exception {
        Path result = Files.writeString(folder.resolve("bag-plan.xlsx"), "an earlier result");
        Files.writeString(folder.resolve("~$bag-plan.xlsx"), "Golfer A");
        refused(Terminal.run("plan", book), "bag-plan.xlsx");
        assertEquals("an earlier result", Files.readString(result));
        assertEquals(4, files().size());
    }

    @Test
    void planBesideAnOpenBook_isMadeAndSaysWhatIsNotSeen() throws Exception {
        Terminal plan = Terminal.run("plan", book);
        assertEquals(0, plan.code(), plan.err());
        assertTrue(plan.err().contains("changes not saved there are not seen"), plan.err());
        assertTrue(Files.exists(folder.resolve("bag-plan.xlsx")));
        Files.delete(folder.resolve(".~lock.bag.xlsx#"));
        assertFalse(Terminal.run("plan", book).err().contains("not seen"));
    }

    @Test
    void check_ofAnOpenBook_saysWhatIsNotSeen() {
        Terminal check = Terminal.run("check", book);
        assertEquals(0, check.code());
        assertTrue(check.out().contains("bag.xlsx: the book seems to be open in another program"), check.out());
    }

    private List<Path> files() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
