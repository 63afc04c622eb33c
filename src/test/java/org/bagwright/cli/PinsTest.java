package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person pins on the sheet Plan holds at the next plan; the rest is best around it, as trying all choices says. */
@Tag("analytic")
class PinsTest {
    private static final String DRIVER = "Golfer A|1|Driver|4|toe|0|0";
    private static final String OTHER_WOOD = "Golfer A|2|7 wood|3|none|0|0";
    private static final String IRON = "Golfer A|3|7 iron|fixed|none|-1|0.5";

    @TempDir
    Path folder;

    private Path planned(Consumer<XSSFWorkbook> person) throws Exception {
        Path book = ChoiceBook.sketch().write(folder.resolve("bag.xlsx"));
        return ChoiceBook.planned(book, folder.resolve("one.xlsx"), person);
    }

    private Terminal again(Path book) {
        return Terminal.run("plan", book, "--json", "-o", folder.resolve("two.xlsx"));
    }

    private static void pinDriver(XSSFWorkbook book) {
        ResultCells.set(book, 0, "Live setting", 4);
        ResultCells.set(book, 0, "Live weighting", "toe");
        ResultCells.set(book, 0, "Pin", "yes");
    }

    private static void pinOnClubs(XSSFWorkbook book, int row) {
        book.getSheet("Clubs").getRow(0).createCell(20).setCellValue("Pinned");
        book.getSheet("Clubs").getRow(row).createCell(20).setCellValue("yes");
    }

    private static void pinAll(XSSFWorkbook book) {
        pinDriver(book);
        ResultCells.set(book, 1, "Live club", "7 wood");
        for (String what : List.of("setting", "weighting", "loft bend [deg]", "lie bend [deg]")) {
            ResultCells.plan(book, 1, "Live " + what).setBlank();
        }
        ResultCells.set(book, 1, "Pin", "yes");
        ResultCells.set(book, 2, "Live loft bend [deg]", -1);
        ResultCells.set(book, 2, "Live lie bend [deg]", 0.5);
        ResultCells.set(book, 2, "Pin", "yes");
    }

    private static List<String> keys(JsonNode plan) {
        return plan.at("/golfers/0/choices").findValuesAsText("option");
    }

    /** The cell of a slot's pin as messages write it. */
    private String pin(int slot) throws Exception {
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("one.xlsx"))) {
            return ResultCells.address(book, slot, "Pin");
        }
    }

    @Test
    void everyKindOfChoice_isKeptWhereItIsPinned() throws Exception {
        Path book = planned(PinsTest::pinAll);
        JsonNode plan = again(book).json();
        assertEquals(List.of(DRIVER, OTHER_WOOD, IRON), keys(plan));
        double expected = ChoiceBook.penaltyPoints(ChoiceBook.slots(book), keys(plan));
        assertEquals(expected, plan.get("penalty").asDouble(), 1e-9);
        assertEquals(35, wish(plan.at("/golfers/0/gaps"), "7 wood"), "the wish of the club planned");
        assertEquals(40, wish(plan.at("/golfers/0/today/gaps"), "5 wood"), "the wish of the club today");
    }

    private static double wish(JsonNode gaps, String from) {
        assertEquals(from, gaps.at("/1/from").asText());
        return gaps.at("/1/wish").asDouble();
    }

    /** A club whose carry is far from what is wanted, so that a plan leaves it out where it may. */
    @Test
    void optionalClubPinnedOnItsRow_isNotLeftOut() throws Exception {
        assertEquals("left out", keys(optional(null)).get(1).split("\\|")[2]);
        assertEquals("5 wood", keys(optional("yes")).get(1).split("\\|")[2]);
    }

    private JsonNode optional(String pinned) throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Optional, Pinned, Carry target")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58)
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, "yes", pinned, 120)
                .write(folder.resolve("optional" + pinned + ".xlsx"));
        return Terminal.run("plan", book, "--json", "-o", folder.resolve("of" + pinned + ".xlsx"))
                .json();
    }

    @Test
    void onePin_leavesTheRestBestAroundIt() throws Exception {
        Path book = planned(PinsTest::pinDriver);
        var slots = ChoiceBook.slots(book);
        double free = ChoiceBook.leastPoints(slots, Set.of());
        double held = ChoiceBook.leastPoints(slots, Set.of(DRIVER));
        assertTrue(held > free + 0.01, "the pin must cost something to be seen: " + held + " against " + free);
        JsonNode plan = again(book).json();
        assertEquals(DRIVER, keys(plan).get(0));
        assertEquals(held, plan.get("penalty").asDouble(), 1e-9);
        assertEquals(
                free,
                Terminal.run("plan", folder.resolve("bag.xlsx"), "--json", "-o", folder.resolve("free.xlsx"))
                        .json()
                        .get("penalty")
                        .asDouble(),
                1e-9);
    }

    @Test
    void pin_isAmongWhatHoldsThePlanBack() throws Exception {
        Path book = planned(PinsTest::pinDriver);
        var slots = ChoiceBook.slots(book);
        double gain = ChoiceBook.leastPoints(slots, Set.of(DRIVER)) - ChoiceBook.leastPoints(slots, Set.of());
        for (JsonNode relaxation : again(book).json().get("relaxations")) {
            if (relaxation.get("cell").asText().equals(pin(0))) {
                assertTrue(relaxation.get("what").asText().startsWith("unpin"), relaxation.toString());
                assertEquals(gain, relaxation.get("gain").asDouble(), 1e-9);
                return;
            }
        }
        throw new AssertionError(
                "no relaxation of the pin: " + again(book).json().get("relaxations"));
    }

    @Test
    void leftOut_mayBePinnedToo() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 1, "Live club", "left out");
            ResultCells.set(workbook, 1, "Pin", "yes");
        });
        assertEquals("Golfer A|2|left out", keys(again(book).json()).get(1));
    }

    @Test
    void pins_standOnTheNewPlanWithTheChoiceTheyHold() throws Exception {
        Path book = planned(PinsTest::pinDriver);
        JsonNode first = again(book).json();
        try (XSSFWorkbook two = ResultCells.open(folder.resolve("two.xlsx"))) {
            assertEquals("yes", ResultCells.plan(two, 0, "Pin").getStringCellValue());
            assertEquals(4, ResultCells.plan(two, 0, "Live setting").getNumericCellValue());
            assertEquals("toe", ResultCells.plan(two, 0, "Live weighting").getStringCellValue());
            assertEquals("", ResultCells.plan(two, 1, "Pin").toString());
            assertEquals("", ResultCells.plan(two, 2, "Pin").toString());
        }
        JsonNode second = Terminal.run("plan", folder.resolve("two.xlsx"), "--json", "-o", folder.resolve("three.xlsx"))
                .json();
        assertEquals(first.get("golfers"), second.get("golfers"));
    }

    @Test
    void pinThatIsNoOption_isAProblemAtItsCell() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 1, "Live setting", 9);
            ResultCells.set(workbook, 1, "Pin", "yes");
        });
        for (String command : List.of("plan", "check", "chart")) {
            Terminal wrong = Terminal.run(command, book);
            assertEquals(3, wrong.code());
            String said = wrong.out() + wrong.err();
            assertTrue(said.contains(pin(1) + ": the pinned choice of Golfer A, slot 2, is not an option"), said);
            assertTrue(said.contains("setting 9"), said);
        }
    }

    @Test
    void choiceThatIsNoOption_doesNotMatterWithoutAPin() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 1, "Live setting", 9));
        assertEquals(0, again(book).code());
    }

    @Test
    void pinOfASlotThatIsGone_isAProblem() throws Exception {
        Path book = planned(workbook -> {
            pinDriver(workbook);
            workbook.getSheet("Clubs").getRow(1).getCell(1).setCellValue(9);
        });
        Terminal wrong = again(book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains(pin(0)) && wrong.err().contains("no longer has this slot"), wrong.err());
    }

    @Test
    void pinAgainstThePinOfTheSheetClubs_isAProblem() throws Exception {
        Path book = planned(workbook -> {
            pinDriver(workbook);
            pinOnClubs(workbook, 1);
        });
        Terminal wrong = again(book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains(pin(0)) && wrong.err().contains("Clubs!C2"), wrong.err());
    }

    @Test
    void leftOutAgainstThePinOfTheSheetClubs_isAProblem() throws Exception {
        Path book = planned(workbook -> {
            ResultCells.set(workbook, 1, "Live club", "left out");
            ResultCells.set(workbook, 1, "Pin", "yes");
            pinOnClubs(workbook, 2);
        });
        Terminal wrong = again(book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains(pin(1)) && wrong.err().contains("Clubs!C3"), wrong.err());
    }

    @Test
    void secondRowOfASlot_isAProblemAtThatRowOnly() throws Exception {
        Path book = planned(workbook -> {
            pinAll(workbook);
            ResultCells.set(workbook, 2, "Slot", 1);
        });
        Terminal wrong = again(book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains(pin(2) + ": the pinned choice of Golfer A, slot 1,"), wrong.err());
        assertTrue(wrong.err().contains("second row for the same slot"), wrong.err());
        assertFalse(wrong.err().contains(pin(0)), wrong.err());
    }

    @Test
    void pin_mustBeYesOrNo() throws Exception {
        Path book = planned(workbook -> ResultCells.set(workbook, 0, "Pin", "perhaps"));
        Terminal wrong = again(book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains(pin(0) + ": pin must be yes or no"), wrong.err());
    }

    @Test
    void sheetPlanOfTheFittersOwn_isNeverRead() throws Exception {
        Path book = ChoiceBook.sketch()
                .sheet("Plan", "Golfer, Slot, Live club, Pin")
                .row("Golfer A", 1, "Nothing", "yes")
                .write(folder.resolve("own.xlsx"));
        Terminal wrong = Terminal.run("plan", book);
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains("your own"), wrong.err());
        assertFalse(wrong.err().contains("pinned"), wrong.err());
    }

    @Test
    void pinCells_offerYesAndSayWhatItDoes() throws Exception {
        try (XSSFWorkbook book = ResultCells.open(planned(workbook -> {}))) {
            for (int slot = 0; slot < 3; slot++) {
                Cell pin = ResultCells.plan(book, slot, "Pin");
                DataValidation list = book.getSheet("Plan").getDataValidations().stream()
                        .filter(validation -> validation
                                .getRegions()
                                .getCellRangeAddresses()[0]
                                .isInRange(pin))
                        .findFirst()
                        .orElseThrow();
                assertEquals(
                        List.of("yes"), List.of(list.getValidationConstraint().getExplicitListValues()));
                assertTrue(list.getPromptBoxText().contains("keeps your choice"));
                assertTrue(list.getPromptBoxText().length() < 256);
                assertNotEquals(0, pin.getCellStyle().getBorderTop().getCode());
            }
        }
    }
}
