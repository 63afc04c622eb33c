package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --from-live} writes the set-up that shots were hit with into their rows, so that they stay true. */
@Tag("analytic")
class OldShotsTest {
    private static final String TOLD = "Rows of the sheet Shots that now say with which set-up they were hit: ";

    @TempDir
    Path folder;

    private Path planned(BookSketch sketch, Consumer<XSSFWorkbook> person) throws Exception {
        return ChoiceBook.planned(sketch.write(folder.resolve("bag.xlsx")), folder.resolve("one.xlsx"), person);
    }

    private Terminal fromLive(Path book, String to) {
        Terminal run = Terminal.run("plan", book, "--from-live", "-o", folder.resolve(to));
        assertEquals(0, run.code(), run.err());
        return run;
    }

    private List<String> row(String file, int row) throws Exception {
        try (XSSFWorkbook book = ResultCells.open(folder.resolve(file))) {
            DataFormatter formatter = new DataFormatter();
            XSSFRow cells = book.getSheet("Shots").getRow(row);
            List<String> texts = new ArrayList<>();
            for (int column = 0; column < cells.getLastCellNum(); column++) {
                texts.add(formatter.formatCellValue(cells.getCell(column)));
            }
            return texts;
        }
    }

    private static void asToday(XSSFWorkbook book) {
        ResultCells.set(book, 0, "Live setting", 2);
        ResultCells.set(book, 0, "Live weighting", "heel");
        ResultCells.set(book, 1, "Live club", "5 wood");
        ResultCells.set(book, 1, "Live setting", 1);
        ResultCells.set(book, 2, "Live loft bend [deg]", 0.5);
        ResultCells.set(book, 2, "Live lie bend [deg]", 0);
    }

    private static void driver(XSSFWorkbook book) {
        asToday(book);
        ResultCells.set(book, 0, "Live setting", 4);
        ResultCells.set(book, 0, "Live weighting", "toe");
    }

    private static BookSketch withoutTheColumns() {
        return ChoiceBook.sketch()
                .sheet("Shots", "Golfer, Club, Carry, *Mood, Use")
                .row("Golfer A", "Driver", 221, "calm", null)
                .row(null, "driver", 223, "calm", "no")
                .row("Golfer A", "5 wood", 190, "calm", null)
                .row("Golfer A", "7 iron", 150, "calm", null);
    }

    @Test
    void bookWithoutTheColumns_getsThemBehindTheFittersOwn() throws Exception {
        Terminal run = fromLive(planned(withoutTheColumns(), OldShotsTest::driver), "two.xlsx");
        assertTrue(run.out().contains(TOLD + "2."), run.out());
        assertEquals(
                List.of("Golfer", "Club", "Carry", "*Mood", "Use", "Setting", "Weighting", "Length"),
                row("two.xlsx", 0));
        assertEquals(List.of("Golfer A", "Driver", "221", "calm", "", "2", "heel", "45"), row("two.xlsx", 1));
        assertEquals(List.of("", "driver", "223", "calm", "no", "2", "heel", "45"), row("two.xlsx", 2));
        assertEquals(List.of("Golfer A", "5 wood", "190", "calm"), row("two.xlsx", 3));
    }

    @Test
    void bends_areWrittenForIronsOnlyAndAZeroToo() throws Exception {
        fromLive(
                planned(withoutTheColumns(), book -> {
                    asToday(book);
                    ResultCells.set(book, 2, "Live loft bend [deg]", -1);
                }),
                "two.xlsx");
        assertEquals(
                List.of("Golfer", "Club", "Carry", "*Mood", "Use", "Loft bend", "Lie bend", "Length"),
                row("two.xlsx", 0));
        assertEquals(List.of("Golfer A", "7 iron", "150", "calm", "", "0.5", "0", "37"), row("two.xlsx", 4));
    }

    @Test
    void whatARowStates_isLeftAlone() throws Exception {
        BookSketch sketch = ChoiceBook.sketch()
                .sheet("Shots", "Golfer, Club, Setting, Weighting, Length [mm], Carry")
                .row("Golfer A", "Driver", 3, null, 1150, 221)
                .row("Golfer A", "Driver", 1, "toe", 1155, 222);
        Terminal run = fromLive(planned(sketch, OldShotsTest::driver), "two.xlsx");
        assertTrue(run.out().contains(TOLD + "1."), run.out());
        assertEquals(List.of("Golfer A", "Driver", "3", "heel", "1150", "221"), row("two.xlsx", 1));
        assertEquals(List.of("Golfer A", "Driver", "1", "toe", "1155", "222"), row("two.xlsx", 2));
    }

    @Test
    void secondTime_marksOnlyTheShotsHitSince() throws Exception {
        fromLive(planned(withoutTheColumns(), OldShotsTest::driver), "two.xlsx");
        ChoiceBook.edited(folder.resolve("two.xlsx"), book -> {
            XSSFRow added = book.getSheet("Shots").createRow(5);
            added.createCell(1).setCellValue("Driver");
            added.createCell(2).setCellValue(225);
            ResultCells.set(book, 1, "Live club", "5 wood");
            ResultCells.set(book, 1, "Live setting", 1);
            ResultCells.set(book, 2, "Live loft bend [deg]", 0.5);
            ResultCells.set(book, 2, "Live lie bend [deg]", 0);
            ResultCells.set(book, 0, "Live setting", 1);
        });
        Terminal run = fromLive(folder.resolve("two.xlsx"), "three.xlsx");
        assertTrue(run.out().contains(TOLD + "1."), run.out());
        assertEquals(List.of("Golfer A", "Driver", "221", "calm", "", "2", "heel", "45"), row("three.xlsx", 1));
        assertEquals(List.of("", "Driver", "225", "", "", "4", "toe", "45"), row("three.xlsx", 5));
    }

    @Test
    void formula_isKeptAndTold() throws Exception {
        BookSketch sketch = ChoiceBook.sketch()
                .sheet("Shots", "Golfer, Club, Setting, Weighting, Length, Carry")
                .row("Golfer A", "Driver", null, "heel", 45, 221);
        Path book = planned(sketch, workbook -> {
            driver(workbook);
            workbook.getSheet("Shots").getRow(1).createCell(2).setCellFormula("IF(TRUE,\"\",\"\")");
        });
        Terminal run = fromLive(book, "two.xlsx");
        assertFalse(run.out().contains(TOLD), run.out());
        assertTrue(
                run.err()
                        .contains("Shots!C2: setting 2, with which the shot was hit, is not written: the cell holds a"
                                + " formula"),
                run.err());
    }

    @Test
    void clubsThatDoNotChange_keepTheirShots() throws Exception {
        Terminal run = fromLive(
                planned(withoutTheColumns(), book -> {
                    asToday(book);
                    ResultCells.set(book, 1, "Live club", "7 wood");
                    ResultCells.set(book, 1, "Live setting", 3);
                }),
                "two.xlsx");
        assertFalse(run.out().contains(TOLD), run.out());
        assertEquals(List.of("Golfer", "Club", "Carry", "*Mood", "Use"), row("two.xlsx", 0));
    }
}
