package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Shot;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class ShotAndAimReaderTest {
    private static TestBook aims(Object... values) {
        return TestBook.sound()
                .without("Aims")
                .sheet("Aims")
                .row("Measure", "Tolerance", "Importance", "Must")
                .row(values);
    }

    @Test
    void shot_isReadInSiUnits() {
        Shot shot = TestBook.sound().set("Shots!B2", "DRIVER").book().shots().get(0);
        assertEquals("Ann", shot.golfer());
        assertEquals("Driver", shot.club());
        assertEquals(95 * 0.44704, shot.measured().headSpeedMps().orElseThrow(), 1e-12);
        assertEquals(140 * 0.44704, shot.measured().ballSpeedMps().orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.of(12), shot.measured().launchDeg());
        assertEquals(OptionalDouble.of(2700), shot.measured().spinRpm());
        assertEquals(OptionalDouble.of(1), shot.measured().attackDeg());
        assertEquals(225 * 0.9144, shot.measured().carryM().orElseThrow(), 1e-12);
        assertEquals("Shots!B2", shot.cell());
    }

    @Test
    void shotOfTheOnlyGolfer_mayLeaveTheGolferBlank() {
        assertEquals(
                "Ann",
                TestBook.sound().set("Shots!A2", null).book().shots().get(0).golfer());
    }

    @Test
    void shotThatIsNotToBeUsed_isNotRead() {
        TestBook book = TestBook.sound().set("Shots!I1", "Use").set("Shots!I2", "no");
        assertEquals(List.of(), book.problems());
        assertEquals(
                TestBook.sound().book().shots().size() - 1, book.book().shots().size());
    }

    @Test
    void whatIsWrongInAShotThatIsNotToBeUsed_isNoProblem() {
        TestBook book = TestBook.sound().set("Shots!I1", "Use").set("Shots!H2", "long");
        assertEquals(
                List.of("Shots!H2: carry must be a number in yd, found \"long\"."),
                book.set("Shots!I2", "yes").problems());
        assertEquals(List.of(), book.set("Shots!I2", "no").problems());
    }

    @Test
    void useThatIsNeitherYesNorNo_isAProblem() {
        assertEquals(
                1,
                TestBook.sound().set("Shots!I1", "Use").set("Shots!I2", "perhaps").problems().stream()
                        .filter(problem -> problem.startsWith("Shots!I2: "))
                        .count());
    }

    @Test
    void wrongShots_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Shots!A2: golfer must be a name on the sheet Golfers, found \"Bob\".",
                        "Shots!B3: club must be one of \"Ann\" on the sheet Clubs, found \"Drivr\". Maybe \"Driver\"?",
                        "Shots!B4: the shot has no measured value; expected at least one of Ball speed,"
                                + " Launch, Spin, Carry.",
                        "Shots!F5: spin must be 0 to 16000 rpm, found 27000. Maybe 2700?",
                        "Shots!H5: carry must be a number in yd, found \"long\"."),
                TestBook.sound()
                        .set("Shots!A2", "Bob")
                        .set("Shots!A3", "Ann")
                        .set("Shots!B3", "Drivr")
                        .set("Shots!D3", 140)
                        .set("Shots!B4", "Driver")
                        .set("Shots!C4", 95)
                        .set("Shots!B5", "Driver")
                        .set("Shots!F5", 27000)
                        .set("Shots!H5", "long")
                        .problems());
    }

    @Test
    void shotsWithoutAnyMeasure_isSaidOnceAtTheHeadings() {
        TestBook book = TestBook.sound().without("Shots").sheet("Shots");
        book.row("Golfer", "Club", "Head speed").row("Ann", "Driver", 95).row("Ann", "3 wood", 93);
        assertEquals(
                List.of(
                        "Shots!A1: the columns Ball speed, Launch, Spin, Carry are missing; expected among the headings of"
                                + " this row."),
                book.problems());
    }

    @Test
    void clubWhoseRowIsWrong_isStillKnownToTheShots() {
        assertEquals(List.of("Clubs!F2"), TestBook.sound().set("Clubs!F2", 158).problemCells());
    }

    @Test
    void clubOfAMisspeltGolfer_doesNotBlameItsShots() {
        assertEquals(
                List.of("Clubs!A2"), TestBook.sound().set("Clubs!A2", "Anm").problemCells());
    }

    @Test
    void aim_isReadInTheBooksUnits() {
        Aims read = aims("Carry", 6, 3, "yes").book().aims();
        assertEquals(new Aim(Measure.CARRY, 6 * 0.9144, 3, true, true), read.of(Measure.CARRY));
        assertEquals(Aims.defaults().of(Measure.GAP).onWhatIsLikely(true), read.of(Measure.GAP));
        assertEquals(
                new Aim(Measure.LOFT, 0.25, 1, false),
                aims("loft", 0.25).book().aims().of(Measure.LOFT));
        assertEquals(
                new Aim(Measure.GAP, 3, 2, false, true),
                aims("gap", "3 m").book().aims().of(Measure.GAP));
    }

    @Test
    void wrongAims_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Aims!A2: measure must be loft, lie, sits, carry, gap, reach, swingweight, spread or change, found"
                                + " \"carrry\". Maybe \"carry\"?",
                        "Aims!B3: tolerance must be above 0, found 0.",
                        "Aims!C4: importance must be 0 to 1000 points, found -1. Maybe 1?",
                        "Aims!D4: \"Must\" must be yes or no, found \"perhaps\".",
                        "Aims!A5: measure must have one row only, found \"lie\" again, first in Aims!A4.",
                        "Aims!A6: measure must be filled in, found nothing; expected what is measured: loft, lie, sits,"
                                + " carry, gap, reach, swingweight, spread, change."),
                aims("carrry", 5, 1)
                        .row("gap", 0, 1)
                        .row("lie", 1, -1, "perhaps")
                        .row("Lie", 1, 1)
                        .row(null, 2, 2)
                        .problems());
    }

    @Test
    void swingweightAndSpread_areReadInPoints() {
        Aims read = aims("swingweight", 2, 1, "yes")
                .row("spread", "1.5 points", 0.5)
                .book()
                .aims();
        assertEquals(new Aim(Measure.SWINGWEIGHT, 2, 1, true), read.of(Measure.SWINGWEIGHT));
        assertEquals(new Aim(Measure.SPREAD, 1.5, 0.5, false), read.of(Measure.SPREAD));
    }

    @Test
    void spreadOfInertia_isReadInKgCm2WithItsOwnDefault() {
        TestBook blank = aims("spread", null, 0.5).set("Start!A2", "Match by").set("Start!B2", "inertia");
        assertEquals(
                new Aim(Measure.SPREAD, 25, 0.5, false), blank.book().aims().of(Measure.SPREAD));
        assertEquals(
                new Aim(Measure.SPREAD, 40, 0.5, false),
                blank.set("Aims!B2", "40 kg cm2").book().aims().of(Measure.SPREAD));
        assertEquals(
                List.of("Aims!B2: tolerance must be a number in kg cm2, found \"2 points\"."),
                blank.set("Aims!B2", "2 points").problems());
        assertEquals(
                new Aim(Measure.SPREAD, 25, 0, false),
                blank.without("Aims").book().aims().of(Measure.SPREAD));
    }

    @Test
    void shotOfACandidateThatIsNotInTheBag_isRead() {
        TestBook book = TestBook.sound()
                .set("Clubs!K1", "In bag")
                .set("Clubs!B3", 1)
                .set("Clubs!K3", "no")
                .set("Shots!B2", "3 wood");
        assertEquals("3 wood", book.book().shots().get(0).club());
        assertFalse(book.book().clubs().get(1).inBag());
    }
}
