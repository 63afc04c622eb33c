package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.cli.text.Terminal;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.read.BookReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The committed books are what the code makes today, and survive the program. */
@Tag("regression")
class KeptBooksTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void demo_isWhatTheCodeMakes(String demo) throws Exception {
        try (XSSFWorkbook made = DemoBooks.made(demo);
                XSSFWorkbook kept = open(DemoBooks.kept(demo))) {
            assertEquals(cells(made, List.of()), cells(kept, List.of()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void demo_saysOnItsStartSheetThatItIsInvented(String demo) throws Exception {
        try (XSSFWorkbook kept = open(DemoBooks.kept(demo))) {
            assertTrue(kept.getSheet("Start")
                    .getRow(1)
                    .getCell(0)
                    .getStringCellValue()
                    .startsWith("Invented: "));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void demo_hasNoProblem(String demo) {
        assertFalse(BookReader.read(DemoBooks.kept(demo)).messages().stream()
                .anyMatch(message -> message.severity() == Message.Severity.PROBLEM));
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-data/trio.xlsx", "demo-data/full.xlsx"})
    void planned_keepsEveryCellOfTheBook(String book) throws Exception {
        Path target = folder.resolve("planned.xlsx");
        Terminal plan = Terminal.run("plan", book, "-o", target);
        assertEquals(0, plan.code(), plan.err());
        List<String> results = List.of(
                "Plan",
                "Settings",
                "Ladder",
                "Steps",
                "Others",
                "Measure next",
                "Bench card",
                "Golfer card",
                "Messages");
        try (XSSFWorkbook before = open(Path.of(book));
                XSSFWorkbook after = open(target)) {
            assertEquals(cells(before, List.of()), cells(after, results));
        }
    }

    @Test
    void blankBook_filledInIsPlanned() throws Exception {
        Path file = folder.resolve("bag.xlsx");
        assertEquals(0, Terminal.run("new", file).code());
        try (XSSFWorkbook book = open(file)) {
            new BookFiller(book, "Golfers").row(Map.of("Golfer", "Golfer B", "Driver speed", 90));
            BookFiller sleeves = new BookFiller(book, "Sleeves");
            for (int mark = 1; mark <= 4; mark++) {
                sleeves.row(Map.of("Sleeve", "Mine", "Setting", mark, "Clock", 3 * mark, "Bend", 1.5));
            }
            BookFiller clubs = new BookFiller(book, "Clubs");
            clubs.row(club(1, "Driver", "driver", 10.5));
            clubs.row(club(2, "5 wood", "wood", 18));
            clubs.row(club(3, "4 hybrid", "hybrid", 22));
            try (OutputStream output = Files.newOutputStream(file)) {
                book.write(output);
            }
        }
        Terminal plan = Terminal.run("plan", file);
        assertEquals(0, plan.code(), plan.err());
    }

    private static Map<String, Object> club(int slot, String name, String kind, double loft) {
        return Map.of(
                "Golfer",
                "Golfer B",
                "Slot",
                slot,
                "Club",
                name,
                "Kind",
                kind,
                "Loft",
                loft,
                "Lie",
                58,
                "Sleeve",
                "Mine",
                "Setting",
                4);
    }

    private static XSSFWorkbook open(Path file) throws Exception {
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    private static Map<String, String> cells(XSSFWorkbook book, List<String> without) {
        Map<String, String> cells = new TreeMap<>();
        for (Sheet sheet : book) {
            if (!without.contains(sheet.getSheetName())) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        cells.put(sheet.getSheetName() + "!" + cell.getAddress(), cell.toString());
                    }
                }
            }
        }
        return cells;
    }
}
