package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells for what is wanted, changed on the sheet Plan: the next plan takes them and writes them into the input sheets. */
@Tag("analytic")
class PlanEditsTest {
    @TempDir
    Path folder;

    private static BookSketch sketch() {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed, Most open, Most closed")
                .row("Golfer A", 95, 80, -2, 2)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Bend limit, Loft target, Lie target,"
                                + " Carry target, Gap wish, Swingweight target")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", 2, null, 11, null, null, 25)
                .row("Golfer A", 2, "7 iron", "iron", 31, 62, 37, null, null, 1, null, 62.5, 150, null, "D2")
                .row("Golfer A", 3, "Putter", "putter", 3, 71, 34)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .row("S", 4, 9, 1.5, "yes")
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("loft", 0.5, 1, "no");
    }

    private Path planned(Consumer<XSSFWorkbook> person) throws Exception {
        return ChoiceBook.planned(sketch().write(folder.resolve("bag.xlsx")), folder.resolve("one.xlsx"), person);
    }

    private Terminal again(Path book) {
        return Terminal.run("plan", book, "-o", folder.resolve("two.xlsx"));
    }

    private String input(String address) throws Exception {
        return input(folder.resolve("two.xlsx"), address);
    }

    private static String input(Path book, String address) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            CellReference at = new CellReference(address);
            Cell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
            return cell == null ? "" : cell.toString();
        }
    }

    private static void aim(XSSFWorkbook book, String name, Object value) {
        CellReference at = new CellReference(book.getName(name).getRefersToFormula());
        Cell cell = book.getSheet("Plan").getRow(at.getRow()).getCell(at.getCol());
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            cell.setCellValue((String) value);
        }
    }

    private void isTaken(Consumer<XSSFWorkbook> person, String address, String before, String after) throws Exception {
        Path book = planned(person);
        Terminal run = again(book);
        assertTrue(run.code() == 0 || run.code() == 4, run.err());
        assertTrue(
                run.out()
                        .lines()
                        .anyMatch(line ->
                                line.startsWith("  " + address + " ") && line.endsWith(": " + before + " -> " + after)),
                run.out());
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertTrue(
                    messages(two).stream().anyMatch(line -> line.contains("is now in " + address)),
                    () -> String.valueOf(messages(two)));
        }
        String quietly = Terminal.run("plan", folder.resolve("two.xlsx"), "-o", folder.resolve("three.xlsx"))
                .out();
        assertFalse(quietly.contains("Changed on the sheet Plan"), quietly);
    }

    private static List<String> messages(XSSFWorkbook book) {
        List<String> lines = new ArrayList<>();
        for (Row row : book.getSheet("Messages")) {
            StringBuilder line = new StringBuilder();
            row.forEach(cell -> line.append(cell).append(' '));
            lines.add(line.toString());
        }
        return lines;
    }

    @Test
    void loftTarget_isTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 0, "Loft target [deg]", 12), "Clubs!K2", "11", "12");
        assertEquals("12.0", input("Clubs!K2"));
    }

    @Test
    void lieTargetThatWasAssumed_isTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 0, "Lie target [deg]", 59), "Clubs!L2", "blank", "59");
        assertEquals("59.0", input("Clubs!L2"));
    }

    @Test
    void carryTarget_isTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 1, "Carry target [yd]", 155.5), "Clubs!M3", "150", "155.5");
    }

    @Test
    void gapWish_isTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 0, "Gap wish [yd]", 60), "Clubs!N2", "25", "60");
    }

    @Test
    void swingweightTarget_isTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 1, "Swing- weight target", "d 4.5"), "Clubs!O3", "D2", "D4.5");
        assertEquals("D4.5", input("Clubs!O3"));
    }

    @Test
    void limitsOfTheGolfer_areTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 0, "Most open [deg closed]", -1.5), "Golfers!D2", "-2", "-1.5");
        isTaken(book -> ResultCells.set(book, 0, "Most closed [deg closed]", 0.5), "Golfers!E2", "2", "0.5");
    }

    @Test
    void limitsOfTheClub_areTaken() throws Exception {
        isTaken(book -> ResultCells.set(book, 0, "Gap least [yd]", 20), "Clubs!P2", "blank", "20");
        isTaken(book -> ResultCells.set(book, 0, "Gap most [yd]", 90), "Clubs!P2", "blank", "90");
        isTaken(book -> ResultCells.set(book, 1, "Carry least [yd]", 100), "Clubs!P3", "blank", "100");
        isTaken(book -> ResultCells.set(book, 0, "Carry most [yd]", 280), "Clubs!P2", "blank", "280");
        isTaken(book -> ResultCells.set(book, 1, "Landing least [deg]", 30), "Clubs!P3", "blank", "30");
    }

    @Test
    void limitOnTheOtherSide_isWrittenInWords() throws Exception {
        planned(book -> ResultCells.set(book, 0, "Most closed [deg closed]", "1 open"));
        again(folder.resolve("one.xlsx"));
        assertTrue(Terminal.run("check", folder.resolve("one.xlsx")).out().contains("most closed 1 open from here"));
    }

    @Test
    void toleranceImportanceAndMust_areTaken() throws Exception {
        isTaken(book -> aim(book, "BW_loft_tolerance", 0.75), "Aims!B2", "0.5", "0.75");
        isTaken(book -> aim(book, "BW_loft_importance", 3), "Aims!C2", "1", "3");
        isTaken(book -> aim(book, "BW_loft_must", "yes"), "Aims!D2", "no", "yes");
    }

    @Test
    void aimWithoutARow_getsOne() throws Exception {
        isTaken(book -> aim(book, "BW_gap_tolerance", 5), "Aims!B3", "blank", "5");
        assertEquals("gap", input("Aims!A3"));
        assertEquals("5.0", input("Aims!B3"));
    }

    @Test
    void changedWish_changesThePlanAsIfItWasTypedIntoTheBook() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 0, "Loft target [deg]", 9);
            aim(workbook, "BW_loft_importance", 7);
        });
        JsonNode taken = Terminal.run("plan", book, "--json", "-o", folder.resolve("two.xlsx"))
                .json();
        Path typed = sketch().put("Clubs", 1, "Loft target", 9)
                .put("Aims", 1, "Importance", 7)
                .write(folder.resolve("typed.xlsx"));
        JsonNode plan = Terminal.run("plan", typed, "--json", "-o", folder.resolve("t.xlsx"))
                .json();
        assertEquals(plan.get("penalty"), taken.get("penalty"));
        assertEquals(plan.get("golfers"), taken.get("golfers"));
    }

    @Test
    void bookSavedByASpreadsheetProgram_givesTheSameEdits() throws Exception {
        Path plain = Spreadsheet.recalculated(planned(workbook -> {}), folder.resolve("plain"));
        assertFalse(again(plain).out().contains("Changed on the sheet Plan"));
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 0, "Loft target [deg]", 12);
            ResultCells.set(workbook, 0, "Most closed [deg closed]", 1);
            aim(workbook, "BW_gap_importance", 4);
        });
        String out =
                again(Spreadsheet.recalculated(book, folder.resolve("saved"))).out();
        assertTrue(out.contains("Clubs!K2 loft target: 11 -> 12"), out);
        assertTrue(out.contains("Golfers!E2 most closed: 2 -> 1"), out);
        assertTrue(out.contains("Aims!C3 importance: blank -> 4"), out);
        assertEquals(
                3,
                out.lines()
                        .filter(line -> line.matches("  (Clubs|Golfers|Aims)!.*"))
                        .count(),
                out);
    }

    @Test
    void inPlace_writesTheBookItself() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 0, "Loft target [deg]", 12));
        Terminal run = Terminal.run("plan", book, "--in-place");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Clubs!K2 loft target: 11 -> 12"), run.out());
        assertEquals("12.0", input(book, "Clubs!K2"));
    }

    @Test
    void headingWithAnotherUnit_getsThatUnit() throws Exception {
        Path bag = sketch().write(folder.resolve("bag.xlsx"));
        ChoiceBook.edited(bag, workbook -> {
            workbook.getSheet("Clubs").getRow(0).getCell(12).setCellValue("Carry target [m]");
        });
        Path book = ChoiceBook.planned(
                bag, folder.resolve("one.xlsx"), person -> ResultCells.set(person, 1, "Carry target [yd]", 200));
        assertEquals(0, again(book).code());
        assertEquals("182.88", input("Clubs!M3"));
    }

    @Test
    void missingColumn_isAdded() throws Exception {
        Path bag = sketch().write(folder.resolve("bag.xlsx"));
        ChoiceBook.edited(
                bag,
                workbook -> workbook.getSheet("Clubs").getRow(0).getCell(12).setCellValue("* Mine"));
        Path book = ChoiceBook.planned(
                bag, folder.resolve("one.xlsx"), person -> ResultCells.set(person, 1, "Carry target [yd]", 160));
        assertEquals(0, again(book).code());
        assertEquals("Carry target", input("Clubs!P1"));
        assertEquals("160.0", input("Clubs!P3"));
        assertEquals("150.0", input("Clubs!M3"));
    }

    @Test
    void inputSheetChangedToo_goesFirstAndIsSaid() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 0, "Loft target [deg]", 12);
            workbook.getSheet("Clubs").getRow(1).getCell(10).setCellValue(9.5);
        });
        Terminal run = again(book);
        assertEquals(0, run.code(), run.err());
        assertTrue(
                run.err().contains("loft target 12 is not taken: Clubs!K2 was changed since that plan too"), run.err());
        assertEquals("9.5", input("Clubs!K2"));
    }

    @Test
    void bothChangedAlike_isNoConflict() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 0, "Loft target [deg]", 12);
            workbook.getSheet("Clubs").getRow(1).getCell(10).setCellValue(12);
        });
        Terminal run = again(book);
        assertFalse(run.err().contains("is not taken"), run.err());
    }

    @Test
    void clearedWish_isCleared() throws Exception {
        Path book = planned(
                workbook -> ResultCells.plan(workbook, 0, "Loft target [deg]").setBlank());
        Terminal run = again(book);
        assertTrue(run.out().contains("Clubs!K2 loft target: 11 -> blank"), run.out());
        assertEquals("", input("Clubs!K2"));
    }

    @Test
    void clearedDefault_staysAndIsSaid() throws Exception {
        Path book = planned(
                workbook -> ResultCells.plan(workbook, 0, "Lie target [deg]").setBlank());
        Terminal run = again(book);
        assertTrue(run.err().contains("lie target cannot be taken out here: blank in Clubs!L2 means"), run.err());
    }

    @Test
    void mustTakenOut_isANo() throws Exception {
        Path book = ChoiceBook.planned(
                sketch().put("Aims", 1, "Must", "yes").write(folder.resolve("bag.xlsx")),
                folder.resolve("one.xlsx"),
                workbook -> aim(workbook, "BW_loft_must", ""));
        Terminal run = again(book);
        assertTrue(run.out().contains("Aims!D2 \"Must\": yes -> no"), run.out() + run.err());
        assertEquals("no", input("Aims!D2"));
    }

    /** The sheet Aims already says what the sheet Plan says now. */
    @Test
    void mustChangedInBothPlaces_isNoChange() throws Exception {
        Path book = planned(workbook -> {
            aim(workbook, "BW_loft_must", "yes");
            workbook.getSheet("Aims").getRow(1).getCell(3).setCellValue("yes");
        });
        Terminal run = again(book);
        assertFalse(run.out().contains("Aims!D2"), run.out());
        assertEquals("yes", input("Aims!D2"));
    }

    @Test
    void clubWithoutAGolfer_isOfTheOnlyGolfer() throws Exception {
        ChoiceBook.planned(
                sketch().put("Clubs", 1, "Golfer", "").write(folder.resolve("bag.xlsx")),
                folder.resolve("one.xlsx"),
                workbook -> ResultCells.set(workbook, 0, "Loft target [deg]", 12));
        again(folder.resolve("one.xlsx"));
        assertEquals("12.0", input("Clubs!K2"));
    }

    @Test
    void sameSlotOfTwoGolfers_takesTheRowOfTheRightOne() throws Exception {
        BookSketch both = sketch();
        Row golfer = both.workbook().getSheet("Golfers").createRow(2);
        golfer.createCell(0).setCellValue("Golfer B");
        golfer.createCell(1).setCellValue(90);
        Row club = both.workbook().getSheet("Clubs").createRow(4);
        club.createCell(0).setCellValue("Golfer B");
        both.put("Clubs", 4, "Slot", 1)
                .put("Clubs", 4, "Club", "Driver")
                .put("Clubs", 4, "Kind", "driver")
                .put("Clubs", 4, "Loft", 10.5)
                .put("Clubs", 4, "Lie", 58)
                .put("Clubs", 4, "Loft target", 10.5);
        ChoiceBook.planned(
                both.write(folder.resolve("bag.xlsx")),
                folder.resolve("one.xlsx"),
                workbook -> ResultCells.set(workbook, 3, "Loft target [deg]", 10));
        Terminal run = again(folder.resolve("one.xlsx"));
        assertEquals("10.0", input("Clubs!K5"), run.out() + run.err());
        assertEquals("11.0", input("Clubs!K2"));
    }

    /** A wish on the sheet Plan cannot say for which of two clubs it is. */
    @Test
    void slotWithTwoClubs_takesNothingOnTheSheetClubs() throws Exception {
        Path book = ChoiceBook.planned(
                sketch().put("Clubs", 3, "Slot", 2)
                        .put("Clubs", 3, "In bag", "no")
                        .put("Clubs", 3, "Kind", "iron")
                        .put("Clubs", 3, "Loft", 32)
                        .write(folder.resolve("bag.xlsx")),
                folder.resolve("one.xlsx"),
                workbook -> ResultCells.set(workbook, 1, "Carry target [yd]", 155.5));
        Terminal run = again(book);
        assertEquals("150.0", input("Clubs!M3"), run.out());
        assertEquals("", input("Clubs!M4"), run.out());
    }

    @Test
    void wrongValue_isAProblemAtItsCellOnPlan() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 0, "Loft target [deg]", 200));
        Terminal run = again(book);
        assertEquals(3, run.code());
        assertTrue(run.err().contains("Plan!") && run.err().contains("loft target must be"), run.err());
        assertFalse(Files.exists(folder.resolve("two.xlsx")));
    }

    @Test
    void formulaInTheInputSheet_isKeptAndSaid() throws Exception {
        Path bag = sketch().write(folder.resolve("bag.xlsx"));
        ChoiceBook.edited(
                bag,
                workbook -> workbook.getSheet("Clubs").getRow(1).getCell(10).setCellFormula("10+1"));
        Path book = ChoiceBook.planned(
                bag, folder.resolve("one.xlsx"), person -> ResultCells.set(person, 0, "Loft target [deg]", 12));
        Terminal run = again(book);
        assertTrue(run.err().contains("Clubs!K2 holds a formula, which is kept"), run.err());
    }

    @Test
    void cellsWithoutEffect_areLocked() throws Exception {
        Path book = planned(workbook -> {});
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            assertTrue(locked(workbook, 2, "Carry target [yd]"));
            assertTrue(locked(workbook, 2, "Gap wish [yd]"));
            assertTrue(locked(workbook, 1, "Gap wish [yd]"));
            assertTrue(locked(workbook, 1, "Most open [deg closed]"));
            assertTrue(locked(workbook, 2, "Pin"));
            assertFalse(locked(workbook, 0, "Most open [deg closed]"));
            assertFalse(locked(workbook, 0, "Gap wish [yd]"));
            assertFalse(locked(workbook, 0, "Pin"));
        }
    }

    private static boolean locked(XSSFWorkbook book, int slot, String heading) {
        return ResultCells.plan(book, slot, heading).getCellStyle().getLocked();
    }
}
