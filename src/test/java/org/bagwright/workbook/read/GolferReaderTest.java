package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class GolferReaderTest {
    private static TestBook golfers(Object[]... rows) {
        TestBook book = TestBook.sound().without("Golfers").sheet("Golfers");
        for (Object[] row : rows) {
            book.row(row);
        }
        return book;
    }

    private static Object[] row(Object... values) {
        return values;
    }

    private static final Object[] HEADINGS = row(
            "Golfer",
            "Hand",
            "Driver speed",
            "Iron speed",
            "Shaft lean",
            "Squares face",
            "Keep shaft turned",
            "Most open",
            "Most closed",
            "Gap wish",
            "Gap least",
            "Gap most",
            "Most changes");

    @Test
    void nameAlone_hasTheDefaults() {
        Golfer ann = golfers(HEADINGS, row("Ann")).book().golfers().get(0);
        assertEquals(
                new Golfer(
                        "Ann",
                        Hand.RIGHT,
                        new Golfer.HeadSpeeds(OptionalDouble.empty(), OptionalDouble.empty()),
                        new Golfer.Address(0, true, false),
                        GapWish.EVEN,
                        Limits.NONE,
                        OptionalInt.empty(),
                        "Golfers!A2"),
                ann);
    }

    @Test
    void everyColumn_isRead() {
        Golfer ann = golfers(HEADINGS, row("Ann", "L", 100, 80, 2.5, "no", "no", -2, 0.5, 12, 8, 16, 3))
                .book()
                .golfers()
                .get(0);
        assertEquals(Hand.LEFT, ann.hand());
        assertEquals(44.704, ann.speeds().driverMps().orElseThrow(), 1e-9);
        assertEquals(35.7632, ann.speeds().ironMps().orElseThrow(), 1e-9);
        assertEquals(2.5, ann.address().leanDeg());
        assertFalse(ann.address().squaresFace());
        assertTrue(ann.address().keepsShaftAligned(), "no: the shaft must stay as it is");
        assertEquals(new StatedLimit(LimitKind.MOST_OPEN, -2, "Golfers!H2"), limit(ann, LimitKind.MOST_OPEN));
        assertEquals(new StatedLimit(LimitKind.MOST_CLOSED, 0.5, "Golfers!I2"), limit(ann, LimitKind.MOST_CLOSED));
        assertEquals(12 * 0.9144, ann.gapWish().fixedM().orElseThrow(), 1e-12);
        assertEquals(8 * 0.9144, limit(ann, LimitKind.GAP_LEAST).valueMeasureUnits(), 1e-12);
        assertEquals(16 * 0.9144, limit(ann, LimitKind.GAP_MOST).valueMeasureUnits(), 1e-12);
        assertEquals(OptionalInt.of(3), ann.mostChanges());
    }

    @Test
    void gapWish_mayBeAWord() {
        assertEquals(GapWish.TODAY, wish("today"));
        assertEquals(GapWish.TODAY, wish(" Today"));
        assertEquals(GapWish.EVEN, wish("EVEN"));
        assertEquals(GapWish.EVEN, wish(null));
        assertEquals(GapWish.ofM(11 * 0.9144), wish(11));
    }

    private static GapWish wish(Object written) {
        return golfers(row("Golfer", "Gap wish"), row("Ann", written))
                .book()
                .golfers()
                .get(0)
                .gapWish();
    }

    private static StatedLimit limit(Golfer golfer, LimitKind kind) {
        return golfer.limits().of(kind).orElseThrow();
    }

    /** A bare number means the side of its column, whatever its sign; only words can mean the other one. */
    @ParameterizedTest
    @CsvSource({
        "1, 2, -1, 2",
        "-1, -2, -1, 2",
        "1 open, 2 closed, -1, 2",
        "1\u00b0, 2 deg, -1, 2",
        "1.5 deg open, 2 degrees closed, -1.5, 2",
        "1 Closed, 2, 1, 2",
        "1, 0.5 open, -1, -0.5",
        "open 1, closed 2, -1, 2",
        "square, SQUARE, 0, 0",
        "0, 0, 0, 0"
    })
    void looks_areReadAsPeopleWriteThem(String open, String closed, double openDeg, double closedDeg) {
        Golfer ann = golfers(row("Golfer", "Most open", "Most closed"), row("Ann", written(open), written(closed)))
                .book()
                .golfers()
                .get(0);
        assertEquals(openDeg, limit(ann, LimitKind.MOST_OPEN).valueMeasureUnits());
        assertEquals(closedDeg, limit(ann, LimitKind.MOST_CLOSED).valueMeasureUnits());
    }

    private static Object written(String text) {
        return text.matches("-?[0-9.]+") ? Double.valueOf(text) : text;
    }

    @Test
    void looksThatAreNone_areProblems() {
        assertEquals(
                List.of(
                        "Golfers!B2: most open must be a number in degrees or the word square, found \"a bit open\".",
                        "Golfers!C2: most closed must be -15 to 15 degrees, found \"16 closed\". Maybe 1.6?"),
                golfers(row("Golfer", "Most open", "Most closed"), row("Ann", "a bit open", "16 closed"))
                        .problems());
    }

    @Test
    void wrongCells_areEachReported() {
        assertEquals(
                List.of(
                        "Golfers!B2: hand must be R or L, found \"both\".",
                        "Golfers!C2: driver speed must be 17.9 to 178.9 mph, found -95. Maybe 95?",
                        "Golfers!D2: iron speed must be a number in mph, found \"fast\".",
                        "Golfers!E2: shaft lean must be -10 to 20 degrees, found 45. Maybe 4.5?",
                        "Golfers!F2: squares face must be yes or no, found \"often\".",
                        "Golfers!J2: gap wish must be a number in yd or the word even or today, found \"evne\".",
                        "Golfers!H2: most open must not be more closed than most closed, found \"2 closed\" against 1.",
                        "Golfers!K2: gap least must not be above gap most, found 15 against 10.",
                        "Golfers!M2: most changes must be a whole number, found 2.5."),
                golfers(
                                HEADINGS,
                                row("Ann", "both", -95, "fast", 45, "often", null, "2 closed", 1, "evne", 15, 10, 2.5))
                        .problems());
    }

    @Test
    void sameGolferTwice_isAProblemAtTheSecond() {
        assertEquals(
                List.of("Golfers!A3: golfer must have one row only, found \"ann\" again, first in Golfers!A2."),
                golfers(HEADINGS, row("Ann"), row("ann")).problems());
    }

    @Test
    void noGolfer_isOneProblemAndClubsAreNotBlamed() {
        assertEquals(
                List.of("Golfers!A2: No golfer: every row under the headings is empty. Enter a name" + " here."),
                golfers(HEADINGS).problems());
    }

    @Test
    void rowWithoutAName_isOneProblemAndClubsAreNotBlamed() {
        assertEquals(
                List.of("Golfers!A2"), golfers(HEADINGS, row(null, "R", 95)).problemCells());
    }

    @Test
    void golferColumnMissing_isOneProblemAndClubsAreNotBlamed() {
        assertEquals(
                List.of("Golfers!A1: the column Golfer is missing; expected among the headings of this row. Maybe"
                        + " \"Golfre\" in Golfers!B1 is meant as \"Golfer\"?"),
                golfers(row("Hand", "Golfre"), row("R", "Ann")).problems());
    }

    @Test
    void golferWithoutClubs_isAWarning() {
        assertEquals(
                List.of("Golfers!A3: \"Bea\" has no club on the sheet Clubs."),
                golfers(HEADINGS, row("Ann"), row("Bea")).lines(Message.Severity.WARNING));
    }

    @ParameterizedTest
    @CsvSource({
        "R, RIGHT", "right, RIGHT", "RH, RIGHT", "Right-handed, RIGHT",
        "L, LEFT", "LEFT, LEFT", "LH, LEFT", "left-handed, LEFT"
    })
    void everyWordForAHand_meansThatHand(String word, Hand hand) {
        assertEquals(
                hand,
                golfers(HEADINGS, row("Ann", word)).book().golfers().get(0).hand());
    }
}
