package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.TestBook.Formula;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class TenMistakesTest {
    /** Ten mistakes at once: the missing sheet is Aims, the missing column is Club on the sheet Shots. */
    private static TestBook tenMistakes() {
        return TestBook.empty()
                .sheet("Start")
                .row("Distance", "yd")
                .sheet("Golfers")
                .row("Golfer", "Hand", "Driver speed", "Iron speed")
                .sheet("Clubs")
                .row("Golfer", "Slot", "Club", "Kind", "Loft", "Lie", "Face", "Length", "Sleeve", "Setting")
                .row("Ann", 1, "Driver", "driver", "ten and a half", 58, 0, 45.5, "Two degree", "N")
                .row("Ann", 2, "3 wood", "wood", 15, 57.5, 0, 43, "Two degre", "N")
                .row("Ann", 3, "5 wood", "wood", 18, 158, 0, 42.5, "Two degree", "N")
                .row("Ann", 4, "4 hybrid", "hybrid", 22, 59, 0, 40, "Two degree", "Q")
                .row("Ann", 5, "7 iron", "iron", 31, 62.5, new Formula("1/0"), 37)
                .row("Ann", 5, "7 Iron", "iron", 32, 62.5, 0, 37)
                .sheet("Sleeves")
                .row("Sleeve", "Setting", "Clock", "Bend")
                .row("Two degree", "N", 12, 1.7)
                .row("Two degree", "H", 3, 1.7)
                .sheet("Shots")
                .row("Golfer", "Head speed", "Ball speed", "Carry")
                .row("Ann", 95, -140, 225);
    }

    @Test
    void tenMistakesInOneBook_eachIsReportedOnceAtItsCell() {
        Set<String> expected = new TreeSet<>(Set.of(
                "Golfers!A2", // no golfer
                "Clubs!E2", // text in a number cell
                "Clubs!I3", // unknown sleeve
                "Clubs!F4", // lie 158
                "Clubs!J5", // setting not on the sleeve
                "Clubs!G6", // formula error
                "Clubs!C7", // same slot and club again
                "Shots!A1", // missing column
                "Shots!C2")); // negative speed
        List<String> cells = tenMistakes().problemCells();
        assertEquals(expected, new TreeSet<>(cells));
        assertEquals(cells.size(), new TreeSet<>(cells).size(), "no cell twice");
        assertTrue(
                tenMistakes().read().messages().stream()
                        .anyMatch(message -> message.cell().equals("Aims")
                                && message.severity() == Message.Severity.MISSING
                                && message.text().startsWith("the sheet is missing")),
                "the tenth: the missing sheet");
    }

    @Test
    void tenMistakesInOneBook_saidInPlainWords() {
        assertEquals(
                List.of(
                        "Golfers!A2: No golfer: every row under the headings is empty. Enter a name" + " here.",
                        "Clubs!E2: loft must be a number in degrees, found \"ten and a half\".",
                        "Clubs!I3: sleeve must be a name on the sheet Sleeves, found \"Two degre\". Maybe \"Two"
                                + " degree\"?",
                        "Clubs!F4: lie must be 40 to 80 degrees, found 158. Maybe 58?",
                        "Clubs!J5: setting must be a mark of the sleeve \"Two degree\", found \"Q\"; expected \"N\" or"
                                + " \"H\".",
                        "Clubs!G6: face must be a number in degrees, found the error #DIV/0!.",
                        "Clubs!C7: slot and club must be unique for a golfer, found \"7 Iron\" in slot 5 again, first in"
                                + " Clubs!C6.",
                        "Shots!A1: the column Club is missing; expected among the headings of this row.",
                        "Shots!C2: ball speed must be 11.2 to 246 mph, found -140. Maybe 140?"),
                tenMistakes().problems());
    }

    @Test
    void missingNeededSheet_isAProblemAtItsName() {
        assertEquals(
                List.of("Sleeves: the sheet is missing; the sheet Clubs names a sleeve, and its settings belong"
                        + " there."),
                TestBook.sound().without("Sleeves").problems());
        assertEquals(
                List.of("Golfers: the sheet is missing; every golfer needs a row there. Maybe the sheet \"Golfrs\"?"),
                TestBook.sound().rename("Golfers", "Golfrs").problems());
        assertEquals(
                List.of("Clubs: the sheet is missing; every club needs a row there."),
                TestBook.sound().without("Clubs").problems());
    }
}
