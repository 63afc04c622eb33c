package org.bagwright.workbook;

import static org.bagwright.workbook.TestClubs.clubs;
import static org.bagwright.workbook.TestClubs.column;
import static org.bagwright.workbook.TestClubs.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class CandidatesTest {
    private static TestBook threeForOneSlot(Object first, Object second, Object third) {
        TestBook book = clubs(
                row("Ann", 1, "3 wood", "wood", 15, 57),
                row("Ann", 1, "5 wood", "wood", 18, 58),
                row("ann", 1, "3 hybrid", "hybrid", 20, 59));
        return book.set(cell("In bag", 2), first).set(cell("In bag", 3), second).set(cell("In bag", 4), third);
    }

    private static String cell(String header, int row) {
        return "Clubs!" + column(header) + row;
    }

    private static List<Boolean> inBag(TestBook book) {
        return book.book().clubs().stream().map(Club::inBag).toList();
    }

    @Test
    void severalRowsForASlot_areCandidatesForTheFirst() {
        assertEquals(List.of(true, false, false), inBag(threeForOneSlot(null, null, null)));
    }

    @Test
    void inBag_saysWhichRowIsTheClubOfToday() {
        assertEquals(List.of(false, true, false), inBag(threeForOneSlot("no", "yes", null)));
        assertEquals(List.of(false, false, true), inBag(threeForOneSlot(null, null, "yes")));
        assertEquals(List.of(true, false, false), inBag(threeForOneSlot("yes", "no", "no")));
    }

    @Test
    void noRowInTheBag_isASlotEmptyToday() {
        assertEquals(List.of(false, false, false), inBag(threeForOneSlot("no", "no", "no")));
        assertEquals(List.of(false, false, false), inBag(threeForOneSlot("no", null, null)));
    }

    @Test
    void twoRowsInTheBag_areAProblemAtTheSecond() {
        assertEquals(
                List.of("Clubs!P4: a slot must have one club in the bag today, found yes again, first in Clubs!P3;"
                        + " expected no in one of them."),
                threeForOneSlot(null, "yes", "yes").problems());
    }

    @Test
    void sameSlotOfAnotherGolfer_isAnotherSlot() {
        TestBook book =
                threeForOneSlot("yes", "no", "yes").set("Golfers!A3", "Bea").set("Clubs!A4", "Bea");
        assertEquals(List.of(true, false, true), inBag(book));
    }

    @Test
    void twoPinnedRows_areAProblemAtTheSecond() {
        assertEquals(
                List.of("Clubs!Q3: a slot must have at most one pinned club, found yes again, first in Clubs!Q2;"
                        + " expected no in one of them."),
                threeForOneSlot(null, null, null)
                        .set(cell("Pinned", 2), "yes")
                        .set(cell("Pinned", 3), "yes")
                        .problems());
    }

    @Test
    void pinnedRowThatIsNotInTheBag_isAWarning() {
        TestBook book = threeForOneSlot(null, "no", "no").set("Aims!A2", "lie").set(cell("Pinned", 3), "yes");
        assertTrue(book.book().clubs().get(1).pinned());
        assertEquals(
                List.of("Clubs!Q3: the club \"5 wood\" is pinned but not in the bag today; the plan uses it as this row"
                        + " says."),
                book.lines(Message.Severity.WARNING));
        assertEquals(
                List.of(),
                threeForOneSlot(null, "no", "no")
                        .set("Aims!A2", "lie")
                        .set(cell("Pinned", 2), "yes")
                        .set(cell("Optional", 2), "yes")
                        .lines(Message.Severity.WARNING));
    }

    @Test
    void sameClubTwiceInASlot_isAProblem() {
        assertEquals(
                List.of(
                        "Clubs!C3: slot and club must be unique for a golfer, found \"3 Wood\" in slot 1 again, first in"
                                + " Clubs!C2."),
                threeForOneSlot(null, null, null).set("Clubs!C3", "3 Wood").problems());
    }

    @Test
    void clubCalledLeftOut_isAProblem() {
        assertEquals(
                List.of("Clubs!C3: club must not be called \"Left out\", the words for a slot without a club; expected"
                        + " another name."),
                threeForOneSlot(null, null, null).set("Clubs!C3", "Left out").problems());
    }

    @Test
    void candidateWithSomethingWrong_isStillTheFirstOfItsSlot() {
        assertEquals(
                List.of("Clubs!E2"),
                threeForOneSlot(null, null, null).set("Clubs!E2", "x").problemCells());
    }
}
