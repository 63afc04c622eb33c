package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookFiller;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command page: which file it writes, and when it writes none. */
@Tag("regression")
class PageCommandTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void copy() throws Exception {
        book = Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
    }

    private void change(String club, String heading, Object value) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(Path.of("demo-data", "trio.xlsx"));
                OutputStream output = Files.newOutputStream(book)) {
            new BookFiller(workbook, "Clubs").changeClub(club, heading, value);
            workbook.write(output);
        }
    }

    private List<String> files() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void page_goesNextToTheBook_andReplacesTheOneBeforeWithABackup() throws Exception {
        byte[] before = Files.readAllBytes(book);
        Terminal first = Terminal.run("page", book);
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("Page: " + folder.resolve("bag.html")), first.out());
        assertTrue(first.out().contains("12.89 today -> 5.88 planned"), first.out());
        assertEquals(List.of("bag.html", "bag.xlsx"), files());
        byte[] page = Files.readAllBytes(folder.resolve("bag.html"));
        Terminal second = Terminal.run("page", book);
        assertTrue(second.out().contains("Kept the previous file: "), second.out());
        assertEquals(3, files().size(), files().toString());
        assertArrayEquals(page, Files.readAllBytes(folder.resolve("bag.html")));
        assertArrayEquals(before, Files.readAllBytes(book));
    }

    @Test
    void brokenLimit_stillWritesThePage() throws Exception {
        change("Driver", "Carry least", 300);
        Terminal run = Terminal.run("page", book, "-o", folder.resolve("bench.htm"));
        assertEquals(4, run.code(), run.err());
        assertTrue(Files.exists(folder.resolve("bench.htm")));
    }

    @Test
    void badBook_writesNothing() throws Exception {
        change("Driver", "Loft", "ten and a half");
        Terminal run = Terminal.run("page", book);
        assertEquals(3, run.code());
        assertTrue(run.err().contains("Clubs!"), run.err());
        assertEquals(List.of("bag.xlsx"), files());
    }

    @Test
    void wrongTargets_areRefused() throws Exception {
        assertEquals(2, Terminal.run("page", book, "-o", book).code());
        Terminal ending = Terminal.run("page", book, "-o", folder.resolve("page.xlsx"));
        assertEquals(2, ending.code());
        assertTrue(ending.err().contains(".html"), ending.err());
        assertEquals(
                2,
                Terminal.run("page", book, "-o", folder.resolve("none").resolve("a.html"))
                        .code());
        assertEquals(2, Terminal.run("page", book, "--seconds", "0").code());
        assertFalse(Files.exists(folder.resolve("page.xlsx")));
    }
}
