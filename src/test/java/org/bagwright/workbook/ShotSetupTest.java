package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a row of the sheet Shots says about how and when it was hit. */
@Tag("analytic")
class ShotSetupTest {
    private static final double YARD_M = 0.9144;

    private static TestBook shots(Object... values) {
        return TestBook.sound()
                .set("Start!A2", "Length")
                .set("Start!B2", "in")
                .without("Shots")
                .sheet("Weights")
                .row("Kit", "Weighting", "Port", "Mass")
                .row("K", "light", "back", 4)
                .row("K", "heavy", "back", 12)
                .set("Clubs!K1", "Weighting")
                .set("Clubs!K2", "K: light")
                .sheet("Shots")
                .row(
                        "Club",
                        "Date",
                        "Setting",
                        "Weighting",
                        "Loft bend",
                        "Lie bend",
                        "Length",
                        "Shots",
                        "Spread",
                        "Side",
                        "Landing",
                        "Carry")
                .row(values);
    }

    private static Shot shot(TestBook book) {
        return book.book().shots().get(0);
    }

    @Test
    void setup_isRead() {
        Shot driver = shot(shots("Driver", "2026-05-31", "h", "HEAVY", null, null, 44.5, 5, 8, -12, 36, 230));
        assertEquals(
                new Shot.Setup(
                        Optional.of("H"),
                        Optional.of("heavy"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(44.5 * 0.0254)),
                driver.setup());
        assertEquals(
                new Shot.Series(Optional.of(LocalDate.of(2026, 5, 31)), 5, OptionalDouble.of(8 * YARD_M)),
                driver.series());
        assertEquals(-12 * YARD_M, driver.measured().sideRightM().orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.of(36), driver.measured().landingDeg());
    }

    @Test
    void weighting_mayHaveItsKitInFront() {
        Shot driver = shot(shots("Driver", null, null, "k: heavy", null, null, null, null, null, null, null, 230));
        assertEquals(Optional.of("heavy"), driver.setup().weighting());
    }

    @Test
    void blankCells_meanTodayAndOneShot() {
        Shot driver = shot(shots("Driver", null, null, null, null, null, null, null, null, null, null, 230));
        assertEquals(Shot.Setup.TODAY, driver.setup());
        assertEquals(Shot.Series.ONE, driver.series());
    }

    @Test
    void date_isReadFromACellOfTheSpreadsheetProgramAndFromText() {
        LocalDate day = LocalDate.of(2026, 5, 31);
        for (Object written : List.of(
                new TestBook.Shown(46173, "dd/mm/yyyy"),
                new TestBook.Shown(46173.75, "yyyy-mm-dd hh:mm"),
                "2026-05-31",
                "2026-05-31 18:00",
                "2026-05-31T18:00:00Z")) {
            Shot shot = shot(shots("Driver", written, null, null, null, null, null, null, null, null, null, 230));
            assertEquals(Optional.of(day), shot.series().date(), written.toString());
        }
    }

    @Test
    void dateOfABookThatCountsFrom1904_isTheSameDay() {
        TestBook book = shots(
                "Driver",
                new TestBook.Shown(46173 - 1462, "yyyy-mm-dd"),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                230);
        book.workbook().getCTWorkbook().getWorkbookPr().setDate1904(true);
        assertEquals(Optional.of(LocalDate.of(2026, 5, 31)), shot(book).series().date());
    }

    /** The 7 iron may be bent by 2 degrees; an old shot may be from before, with more. */
    @Test
    void bend_mayBeOneThatTheRowOfTheClubNoLongerAllows() {
        Shot iron = shot(shots("7 iron", null, null, null, -3.3, 4, null, null, null, null, null, 150));
        assertEquals(OptionalDouble.of(-3.3), iron.setup().loftBendDeg());
        assertEquals(OptionalDouble.of(4), iron.setup().lieBendDeg());
    }

    @Test
    void wrongCells_areEachReported() {
        assertEquals(
                List.of(
                        "Shots!J2: side must be -218.7 to 218.7 yd, found 900. Maybe 90?",
                        "Shots!K2: landing must be 0 to 90 degrees, found -40. Maybe 40?",
                        "Shots!C2: setting must be a mark of the sleeve \"Two degree\", found \"Q\"; expected \"N\","
                                + " \"H\" or \"L\".",
                        "Shots!D2: weighting must be one of the kit \"K\", found \"medium\"; expected \"light\" or"
                                + " \"heavy\".",
                        "Shots!E2: loft bend must be 0 or blank for a driver, found 1; only irons and wedges are bent.",
                        "Shots!F2: lie bend must be -8 to 8 degrees, found 9. Maybe 0.9?",
                        "Shots!G2: length must be 15.8 to 55.1 in, found 445. Maybe 44.5?",
                        "Shots!B2: date must be a date from 1990-01-01 to 2099-12-31, such as 2026-05-31, found"
                                + " \"31 May\".",
                        "Shots!H2: shots must be a whole number, found 2.5.",
                        "Shots!I2: spread must be 0 to 164 yd, found -1. Maybe 1?"),
                shots("Driver", "31 May", "Q", "medium", 1, 9, 445, 2.5, -1, 900, -40, 230)
                        .problems());
        assertEquals(
                List.of(
                        "Shots!C2: setting must be blank for a club without a sleeve, found \"N\".",
                        "Shots!D2: weighting must be blank for a club without a kit of weights, found \"light\".",
                        "Shots!B2: date must be a date from 1990-01-01 to 2099-12-31, such as 2026-05-31, found 46173;"
                                + " format the cell as a date.",
                        "Shots!H2: shots must be 1 to 1000, found 0."),
                shots("7 iron", 46173, "N", "light", null, null, null, 0, null, null, null, 150)
                        .problems());
        assertEquals(
                List.of("Shots!B2: date must be a date from 1990-01-01 to 2099-12-31, such as 2026-05-31, found"
                        + " 2206-05-31."),
                shots("7 iron", "2206-05-31", null, null, null, null, null, null, null, null, null, 150)
                        .problems());
    }

    @Test
    void rowThatIsNotToBeUsed_isNotChecked() {
        TestBook book = shots("Driver", "31 May", "Q", null, null, null, null, null, null, null, null, 230)
                .set("Shots!M1", "Use")
                .set("Shots!M2", "no");
        assertEquals(List.of(), book.book().shots());
    }

    /** A shot of a club whose name another club has too says nothing about a set-up, or it is not known whose it is. */
    @Test
    void setupOfAClubWhoseNameTwoHave_isAProblem() {
        TestBook book = shots("Driver", null, "H", null, null, null, null, null, null, null, null, 230)
                .set("Clubs!C3", "Driver");
        assertEquals(
                List.of("Shots!A2: a shot with a set-up must belong to one club, found two called \"Driver\", in"
                        + " Clubs!C2 and Clubs!C3; expected clubs with different names."),
                book.problems());
        assertEquals(1, book.set("Shots!C2", null).book().shots().size());
    }

    @Test
    void headingShot_numbersTheRowsAndIsNotTheColumnShots() {
        TestBook book = shots("Driver", null, null, null, null, null, null, 7, null, null, null, 230);
        assertEquals(7, shot(book).series().shots());
        for (String heading : List.of("Shot", "Shot #", "Shot no", "Shot number")) {
            book.set("Shots!H1", heading);
            assertEquals(1, shot(book).series().shots(), heading);
            assertEquals(
                    1,
                    book.lines(Message.Severity.WARNING).stream()
                            .filter(line -> line.contains("not read: \"" + heading + "\""))
                            .count(),
                    heading);
        }
    }
}
