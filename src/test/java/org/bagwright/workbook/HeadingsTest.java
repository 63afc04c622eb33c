package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class HeadingsTest {
    @Test
    void anyOrderAnyCaseOnRowSeven_isReadAsTheUsualOrder() {
        TestBook odd = TestBook.sound()
                .without("Golfers")
                .sheet(" golfers")
                .rowAt(0, 0, "Our golfers")
                .rowAt(2, 1, "Hand", "means the side")
                .rowAt(6, 2, "IRON   SPEED", "my own", "hand ", "  driver speed", "GOLFER")
                .rowAt(8, 2, 78, "tall", "L", 95, "Ann");
        Book book = odd.book();
        assertEquals("Ann", book.golfers().get(0).name());
        assertEquals("LEFT", book.golfers().get(0).hand().name());
        assertEquals(95 * 0.44704, book.golfers().get(0).speeds().driverMps().orElseThrow(), 1e-12);
        assertEquals("' golfers'!G9", book.golfers().get(0).cell());
    }

    /** Who repeats the headings further down has a row too many, and reads where; the first ones are the headings. */
    @Test
    void ofTwoEqualHeadingRows_theFirstCounts() {
        TestBook twice = TestBook.sound()
                .without("Golfers")
                .sheet("Golfers")
                .row("Golfer", "Hand")
                .row("Ann", "L")
                .row("Golfer", "Hand")
                .row("Bob", "R");
        assertEquals(List.of("Golfers!B3"), twice.problemCells());
    }

    @Test
    void headingsBelowTheTenthRow_areNotFound() {
        TestBook late = TestBook.sound()
                .without("Golfers")
                .sheet("Golfers")
                .rowAt(10, 0, "Golfer", "Hand")
                .row("Ann");
        assertEquals(
                List.of("Golfers: no headings found in the first 10 rows; expected Golfer,"
                        + " Hand, Driver speed, Iron speed, Shaft lean, Squares face ..."),
                late.problems());
    }

    @Test
    void unitsInBrackets_overrideTheSheetStart() {
        Book book = TestBook.sound()
                .set("Golfers!C1", "Driver speed [m/s]")
                .set("Golfers!C2", 42)
                .set("Clubs!G1", "Length [mm]")
                .set("Clubs!G2", 1150)
                .set("Clubs!G3", 1090)
                .set("Clubs!G4", 940)
                .set("Clubs!K1", "Head mass [oz]")
                .set("Clubs!K2", 7)
                .set("Shots!H1", "Carry (m)")
                .set("Shots!H2", 200)
                .set("Shots!D1", "BALL SPEED [km/h]")
                .set("Shots!D2", 225)
                .book();
        assertEquals(42, book.golfers().get(0).speeds().driverMps().orElseThrow(), 1e-12);
        assertEquals(1.15, book.clubs().get(0).parts().lengthM().orElseThrow(), 1e-12);
        assertEquals(7 * 0.028349523125, book.clubs().get(0).form().massKg().orElseThrow(), 1e-12);
        assertEquals(200, book.shots().get(0).measured().carryM().orElseThrow(), 1e-12);
        assertEquals(62.5, book.shots().get(0).measured().ballSpeedMps().orElseThrow(), 1e-12);
    }

    @Test
    void unknownUnitInBrackets_isAProblemAtTheHeading() {
        assertEquals(
                List.of("Clubs!G1: the unit of Length must be one of in, mm, cm, m, found \"furlong\"."),
                TestBook.sound().set("Clubs!G1", "Length [furlong]").problems());
    }

    @Test
    void wordsInRoundBrackets_areNoUnit() {
        Book book = TestBook.sound()
                .set("Clubs!I1", "Setting (today's)")
                .set("Clubs!K1", "Face (closed +)")
                .set("Clubs!K2", 1)
                .set("Clubs!G1", "Length (cm)")
                .set("Clubs!G2", 115)
                .set("Clubs!G3", 109)
                .set("Clubs!G4", 94)
                .book();
        assertEquals(1, book.clubs().get(0).head().faceDeg());
        assertEquals(1.15, book.clubs().get(0).parts().lengthM().orElseThrow(), 1e-12);
    }

    @Test
    void limitsInTheFittersUnit_areSaidInIt() {
        assertEquals(
                List.of("Golfers!C2: driver speed must be 28.8 to 288 km/h, found 500. Maybe 50?"),
                TestBook.sound()
                        .set("Golfers!C1", "Driver speed [km/h]")
                        .set("Golfers!C2", 500)
                        .problems());
    }

    @Test
    void sameHeadingTwice_isAProblem() {
        assertEquals(
                List.of("Clubs!K1: the column Loft appears twice, first in Clubs!E1; expected once."),
                TestBook.sound().set("Clubs!K1", "loft").problems());
    }

    @Test
    void missingNeededColumn_isSaidOnceAndTheOtherProblemsOfTheRowsStillAre() {
        TestBook book = TestBook.sound().set("Clubs!D1", "Sort").set("Clubs!F3", 158);
        assertEquals(
                List.of(
                        "Clubs!A1: the column Kind is missing; expected among the headings of this row.",
                        "Clubs!F3: lie must be 40 to 80 degrees, found 158. Maybe 58?"),
                book.problems());
    }

    @Test
    void missingNeededColumnWithACloseHeading_saysMaybe() {
        assertEquals(
                List.of("Clubs!A1: the columns Slot, Loft are missing; expected among the headings of this row."
                        + " Maybe \"Lofft\" in Clubs!E1 is meant as \"Loft\"?"),
                TestBook.sound().set("Clubs!E1", "Lofft").set("Clubs!B1", "Nr").problems());
    }

    @Test
    void closeHeadingOfAnOtherColumn_isAWarningAndIsNotRead() {
        TestBook book = TestBook.sound().set("Clubs!G1", "Lenght");
        assertTrue(book.book().clubs().get(0).parts().lengthM().isEmpty());
        assertTrue(book.lines(Message.Severity.WARNING)
                .contains("Clubs!G1: not read: \"Lenght\" (Maybe Length?); * before a heading marks it as your own."));
        assertTrue(book.lines(Message.Severity.MISSING)
                .contains("Clubs!A1: the column Length is missing; club lengths are assumed from kind and loft."));
    }

    @Test
    void missingDriverSpeedColumn_isAssumed() {
        TestBook book = TestBook.sound().set("Golfers!C1", "My speed");
        assertTrue(book.book().golfers().get(0).speeds().driverMps().isEmpty());
        assertTrue(book.lines(Message.Severity.MISSING)
                .contains("Golfers!A1: the column Driver speed is missing; head speeds are assumed."));
    }

    @Test
    void ownSheetsResultSheetsAndBlankRows_areNoInput() {
        TestBook book = TestBook.sound();
        book.sheet("Plan").row("Golfer", "Slot", "Loft").row("Nobody", "x", "y");
        book.sheet("Settings").row("Golfer", "Club").row("Nobody", 7);
        book.sheet("My prices").row("Golfer", "Price").row("Ann", 120);
        book.set("Clubs!C9", "   ")
                .set("Clubs!X4", "mine")
                .set("Clubs!K1", "Note")
                .set("Clubs!K8", "only a note");
        assertEquals(List.of(), book.problems());
        assertEquals(3, book.book().clubs().size());
    }

    @Test
    void exampleRows_areIgnored() {
        TestBook book = TestBook.sound()
                .set("Golfers!A3", "Example golfer")
                .set("Golfers!C3", "fast")
                .set("Clubs!A5", "example Golfer")
                .set("Clubs!E5", "ten")
                .set("Sleeves!A5", "EXAMPLE sleeve")
                .set("Shots!A3", "Example golfer");
        assertEquals(List.of(), book.problems());
        assertEquals(1, book.book().golfers().size());
        assertEquals(1, book.book().sleeves().size());
    }

    @Test
    void headingsOnly_ofSheetsThatMayBeLeftOutAreFine() {
        TestBook book = TestBook.sound().without("Shots").without("Aims");
        book.sheet("Shots").row("Golfer", "Club").sheet("Aims").row("Measure");
        book.sheet("Weights").row("Kit", "Weighting").sheet("Stock").row("Item");
        assertEquals(List.of(), book.problems());
    }

    @Test
    void contentWithoutHeadings_isAProblemOfTheSheet() {
        TestBook book = TestBook.sound().without("Aims").sheet("Aims").row("gap", 3, 2);
        assertEquals(
                List.of("Aims: no headings found in the first 10 rows; expected Measure,"
                        + " Tolerance, Importance, Must ..."),
                book.problems());
    }
}
