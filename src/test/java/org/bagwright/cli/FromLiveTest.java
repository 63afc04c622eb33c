package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --from-live}: the live choices of the sheet Plan become today's set-up. */
@Tag("analytic")
class FromLiveTest {
    private static final List<String> LIVE = List.of(
            "Golfer A|1|Driver|4|toe|0|0", "Golfer A|2|7 wood|2|none|0|0", "Golfer A|3|7 iron|fixed|none|-1|0.5");

    @TempDir
    Path folder;

    private Path planned(Consumer<XSSFWorkbook> person) throws Exception {
        Path book = ChoiceBook.sketch().write(folder.resolve("bag.xlsx"));
        return ChoiceBook.planned(book, folder.resolve("one.xlsx"), person);
    }

    private Terminal fromLive(Path book) {
        return Terminal.run("plan", book, "--from-live", "--json", "-o", folder.resolve("two.xlsx"));
    }

    private static void choose(XSSFWorkbook book) {
        ResultCells.set(book, 0, "Live setting", 4);
        ResultCells.set(book, 0, "Live weighting", "toe");
        ResultCells.set(book, 1, "Live club", "7 wood");
        ResultCells.set(book, 1, "Live setting", 2);
        ResultCells.set(book, 2, "Live loft bend [deg]", -1);
        ResultCells.set(book, 2, "Live lie bend [deg]", 0.5);
    }

    private static String clubs(XSSFWorkbook book, int row, String heading) {
        XSSFRow headings = book.getSheet("Clubs").getRow(0);
        for (int column = 0; column < headings.getLastCellNum(); column++) {
            if (headings.getCell(column).getStringCellValue().equals(heading)) {
                return String.valueOf(book.getSheet("Clubs").getRow(row).getCell(column));
            }
        }
        throw new AssertionError("no heading " + heading);
    }

    /** The cell of a slot's pin as messages write it. */
    private String pin(int slot) throws Exception {
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("one.xlsx"))) {
            return ResultCells.address(book, slot, "Pin");
        }
    }

    @Test
    void liveChoices_areTodayAndChangesCountFromThere() throws Exception {
        Path book = planned(FromLiveTest::choose);
        Terminal run = fromLive(book);
        assertEquals(0, run.code(), run.err());
        var slots = ChoiceBook.slots(folder.resolve("two.xlsx"));
        for (int slot = 0; slot < LIVE.size(); slot++) {
            assertEquals(0, slots.get(slot).get(LIVE.get(slot)).get("changes").asInt(), LIVE.get(slot));
        }
        JsonNode plan = run.json();
        assertEquals(
                ChoiceBook.penaltyPoints(slots, LIVE), plan.at("/today/penalty").asDouble(), 1e-9);
        assertEquals(
                ChoiceBook.leastPoints(slots, Set.of()), plan.get("penalty").asDouble(), 1e-9);
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals(4, ResultCells.plan(two, 0, "Today setting").getNumericCellValue());
            assertEquals("toe", ResultCells.plan(two, 0, "Today weighting").getStringCellValue());
            assertEquals("7 wood", ResultCells.plan(two, 1, "Club today").getStringCellValue());
            assertEquals(-1, ResultCells.plan(two, 2, "Today loft bend [deg]").getNumericCellValue());
        }
    }

    @Test
    void resultsSheetClubs_saysWhatIsInTheBagAndPlansTheSameAgain() throws Exception {
        Path book = planned(FromLiveTest::choose);
        JsonNode first = fromLive(book).json();
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals("4.0", clubs(two, 1, "Setting"));
            assertEquals("K: toe", clubs(two, 1, "Weighting"));
            assertEquals("no", clubs(two, 2, "In bag"));
            assertEquals("1.0", clubs(two, 2, "Setting"), "the club that is out keeps its row");
            assertEquals("yes", clubs(two, 3, "In bag"));
            assertEquals("2.0", clubs(two, 3, "Setting"));
            assertEquals("-1.0", clubs(two, 4, "Loft bend"));
            assertEquals("0.5", clubs(two, 4, "Lie bend"));
        }
        JsonNode again = Terminal.run("plan", folder.resolve("two.xlsx"), "--json", "-o", folder.resolve("three.xlsx"))
                .json();
        assertEquals(first.get("golfers"), again.get("golfers"));
        assertEquals(first.get("today"), again.get("today"));
    }

    /** The shots were hit with the clubs as they were; what they teach is the same before and after the book is written. */
    @Test
    void shots_teachTheSameAsTheBookThatIsWritten() throws Exception {
        Path book = ChoiceBook.planned(
                ChoiceBook.sketch()
                        .sheet("Shots", "Golfer, Club, Carry")
                        .row("Golfer A", "Driver", 205)
                        .row(null, "7 iron", 150)
                        .write(folder.resolve("shots.xlsx")),
                folder.resolve("one.xlsx"),
                FromLiveTest::choose);
        JsonNode first = fromLive(book).json();
        JsonNode again = Terminal.run("plan", folder.resolve("two.xlsx"), "--json", "-o", folder.resolve("three.xlsx"))
                .json();
        assertEquals(first.get("golfers"), again.get("golfers"));
        assertEquals(first.get("today"), again.get("today"));
    }

    @Test
    void whatIsWritten_isToldAndKeepsItsFormat() throws Exception {
        Path book = planned(workbook -> {
            choose(workbook);
            CellStyle style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat("0.000"));
            workbook.getSheet("Clubs").getRow(4).getCell(9).setCellStyle(style);
        });
        Terminal run = Terminal.run("plan", book, "--from-live", "-o", folder.resolve("two.xlsx"));
        assertTrue(run.out().contains("Clubs!I2 setting: 2 -> 4"), run.out());
        assertTrue(run.out().contains("Clubs!M4 in bag: blank -> yes"), run.out());
        assertTrue(run.out().contains("only if they were taken with this set-up"), run.out());
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals(
                    "0.000",
                    two.getSheet("Clubs").getRow(4).getCell(9).getCellStyle().getDataFormatString());
        }
    }

    @Test
    void formula_isLeftAndTold() throws Exception {
        Path book = planned(workbook -> {
            choose(workbook);
            workbook.getSheet("Clubs").getRow(1).getCell(8).setCellFormula("1+1");
        });
        Terminal run = fromLive(book);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("Clubs!I2") && run.err().contains("formula"), run.err());
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals("1+1", two.getSheet("Clubs").getRow(1).getCell(8).getCellFormula());
        }
    }

    @Test
    void missingColumn_isTold() throws Exception {
        Path book = planned(workbook -> {
            choose(workbook);
            workbook.getSheet("Clubs").getRow(0).getCell(10).setCellValue("Other");
        });
        Terminal run = fromLive(book);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("no column Lie bend"), run.err());
    }

    @Test
    void slotLeftOut_isEmptyTodayInEveryRow() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 1, "Live club", "left out"));
        JsonNode first = fromLive(book).json();
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals("no", clubs(two, 2, "In bag"));
            assertEquals("no", clubs(two, 3, "In bag"));
        }
        JsonNode again = Terminal.run("plan", folder.resolve("two.xlsx"), "--json", "-o", folder.resolve("three.xlsx"))
                .json();
        assertEquals(first.get("today"), again.get("today"));
    }

    @Test
    void liveChoiceThatIsNoOption_saysThreeWithItsCell() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 0, "Live setting", 7));
        Terminal wrong = fromLive(book);
        assertEquals(3, wrong.code());
        assertTrue(
                wrong.err().contains(pin(0) + ": the live choice of Golfer A, slot 1, is not an option"), wrong.err());
        assertFalse(Files.exists(folder.resolve("two.xlsx")));
    }

    @Test
    void bookWithoutAPlan_saysTwoAndWhatToDo() throws Exception {
        Path book = ChoiceBook.sketch().write(folder.resolve("bag.xlsx"));
        Terminal wrong = fromLive(book);
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("no sheet Plan of an earlier run"), wrong.err());
        assertFalse(Files.exists(folder.resolve("two.xlsx")));
    }

    @Test
    void withoutTheOption_theSheetClubsStaysAsItIs() throws Exception {
        Path book = planned(FromLiveTest::choose);
        assertEquals(
                0, Terminal.run("plan", book, "-o", folder.resolve("two.xlsx")).code());
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals("2.0", clubs(two, 1, "Setting"));
        }
    }
}
