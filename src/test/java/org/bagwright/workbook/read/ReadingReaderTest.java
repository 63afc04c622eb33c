package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Reading;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class ReadingReaderTest {
    private static TestBook readings() {
        return TestBook.sound().sheet("Readings").row("Golfer", "Club", "Setting", "Loft", "Lie", "Face");
    }

    @Test
    void rows_becomeReadingsInTheBooksOwnSpelling() {
        Book book = readings()
                .row("ann", "driver", "h", 12.1, "58,2", -0.5)
                .row(null, "7 iron", null, null, 62.1)
                .row("Example golfer", "Driver", "N", 10)
                .book();
        assertEquals(
                List.of(
                        new Reading(
                                "Ann",
                                "Driver",
                                Optional.of("H"),
                                OptionalDouble.of(12.1),
                                OptionalDouble.of(58.2),
                                OptionalDouble.of(-0.5),
                                "Readings!B2"),
                        new Reading(
                                "Ann",
                                "7 iron",
                                Optional.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.of(62.1),
                                OptionalDouble.empty(),
                                "Readings!B3")),
                book.readings());
        assertEquals(1, book.readingsOf(book.clubs().get(0)).size());
        assertEquals(List.of(), book.readingsOf(book.clubs().get(1)));
    }

    @Test
    void sheet_isUsedAndMayBeMissingOrEmpty() {
        assertEquals(List.of(), readings().row("Ann", "Driver", "N", 10, 58).lines(Message.Severity.WARNING));
        assertEquals(List.of(), readings().book().readings());
        assertEquals(List.of(), TestBook.sound().book().readings());
    }

    @Test
    void allMistakes_areToldAtTheirCells() {
        assertEquals(
                List.of(
                        "Readings!A2: golfer must be a name on the sheet Golfers, found \"Anne\". Maybe \"Ann\"?",
                        "Readings!B3: club must be one of \"Ann\" on the sheet Clubs, found \"Drivr\". Maybe \"Driver\"?",
                        "Readings!C4: setting must be a mark of the sleeve \"Two degree\", found \"Q\"; expected \"N\","
                                + " \"H\" or \"L\".",
                        "Readings!C5: setting must be filled in for a club with a sleeve, found nothing; expected \"N\","
                                + " \"H\" or \"L\".",
                        "Readings!C6: setting must be blank for a club without a sleeve, found \"N\".",
                        "Readings!D7: loft must be 0 to 75 degrees, found 105. Maybe 10.5?",
                        "Readings!E7: lie must be 40 to 80 degrees, found 158. Maybe 58?",
                        "Readings!D8: a reading must have a loft or a lie, found neither; expected degrees in at least one"
                                + " of Loft and Lie.",
                        "Readings!B9: club must be filled in, found nothing; expected the club, as on the sheet"
                                + " Clubs."),
                readings()
                        .row("Anne", "Driver", "N", 10, 58)
                        .row("Ann", "Drivr", "N", 10, 58)
                        .row("Ann", "Driver", "Q", 10, 58)
                        .row("Ann", "Driver", null, 10, 58)
                        .row("Ann", "7 iron", "N", 31, 62)
                        .row("Ann", "Driver", "N", 105, 158)
                        .row("Ann", "Driver", "N", null, null, 1)
                        .row("Ann", null, "N", 10, 58)
                        .problems());
    }

    @Test
    void clubWithAMistakeOfItsOwn_isNotBlamedTwice() {
        TestBook book = readings().row("Ann", "Driver", "Q", 10, 58).set("Clubs!F2", 158);
        assertEquals(List.of("Clubs!F2"), book.problemCells());
    }

    @Test
    void unreadableMarkOfTheSleeve_doesNotBlameTheReading() {
        TestBook book =
                readings().row("Ann", "Driver", "4-1", 10, 58).set("Sleeves!B4", new TestBook.Shown(45383, "d-mmm"));
        assertEquals(List.of("Sleeves!B4"), book.problemCells());
    }

    @Test
    void twoClubsOfOneName_cannotHaveReadings() {
        TestBook book = readings().row("Ann", "driver", "N", 10, 58).set("Clubs!C3", "Driver");
        assertTrue(
                book.problems()
                        .contains("Readings!B2: a reading must belong to one club, found two called \"Driver\", in"
                                + " Clubs!C2 and Clubs!C3; expected clubs with different names."),
                book.problems().toString());
    }

    @Test
    void missingColumns_areOneProblem() {
        TestBook book = TestBook.sound()
                .sheet("Readings")
                .row("Golfer", "Club", "Setting", "Lift")
                .row("Ann", "Driver", "N", 1);
        assertEquals(
                List.of("Readings!A1: the columns Loft, Lie are missing; expected among the headings of this row. Maybe"
                        + " \"Lift\" in Readings!D1 is meant as \"Loft\"?"),
                book.problems());
    }
}
