package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class SleeveReaderTest {
    private static TestBook sleeves() {
        return TestBook.sound()
                .without("Sleeves")
                .sheet("Sleeves")
                .row(
                        "Sleeve",
                        "Setting",
                        "Clock",
                        "Bend",
                        "Clock 2",
                        "Bend 2",
                        "Turns shaft",
                        "Loft change",
                        "Lie change",
                        "Face change")
                .row("Two degree", "N", "12:00", 1.7);
    }

    @Test
    void rowsOfOneSleeveApart_areOneSleeveInTheOrderOfTheBook() {
        List<Sleeve> sleeves = sleeves()
                .row("Other", "1", null, 0)
                .row("two  degree", "H", "3", 1.7, "1:30", 1, "no")
                .book()
                .sleeves();
        assertEquals(
                List.of("Two degree", "Other"),
                sleeves.stream().map(Sleeve::name).toList());
        assertEquals(
                List.of(
                        new SleeveSetting("N", List.of(new Ring(0, 1.7)), true, Optional.empty()),
                        new SleeveSetting("H", List.of(new Ring(3, 1.7), new Ring(1.5, 1)), false, Optional.empty())),
                sleeves.get(0).settings());
        assertEquals(List.of(Ring.STRAIGHT), sleeves.get(1).settings().get(0).rings());
    }

    @Test
    void ratedTable_standsAloneOrBesideTheGeometry() {
        List<SleeveSetting> settings = sleeves()
                .row("Two degree", "+1", null, null, null, null, null, 1, 0, null)
                .row("Two degree", "H", 3, 1.7, null, null, null, 2, 0, 3)
                .book()
                .sleeves()
                .get(0)
                .settings();
        assertEquals(
                new SleeveSetting("+1", List.of(), true, Optional.of(rated(1, 0, OptionalDouble.empty()))),
                settings.get(1));
        assertEquals(
                new SleeveSetting("H", List.of(new Ring(3, 1.7)), true, Optional.of(rated(2, 0, OptionalDouble.of(3)))),
                settings.get(2));
    }

    private static RatedChange rated(double loftDeg, double lieDeg, OptionalDouble faceDeg) {
        return new RatedChange(OptionalDouble.of(loftDeg), OptionalDouble.of(lieDeg), faceDeg);
    }

    @Test
    void halfATable_isAProblemAtTheCellThatIsBlank() {
        assertEquals(
                List.of(
                        "Sleeves!I3: lie change must be filled in where Loft change is, found nothing; expected degrees, 0"
                                + " for no change.",
                        "Sleeves!H4: loft change must be filled in where Lie change is, found nothing; expected degrees, 0"
                                + " for no change.",
                        "Sleeves!J5: a face change alone does not say where the shaft points; expected"
                                + " Clock and Bend, or Loft change and Lie change, in this row as well."),
                sleeves()
                        .row("Two degree", "A", null, null, null, null, null, 1)
                        .row("Two degree", "B", 3, 1.7, null, null, null, null, 0.5)
                        .row("Two degree", "C", null, null, null, null, null, null, null, 2)
                        .problems());
    }

    @Test
    void ratedFaceBesideRings_leavesTheShaftToTheRings() {
        SleeveSetting setting = sleeves()
                .row("Two degree", "H", 3, 1.7, null, null, null, null, null, 2)
                .book()
                .sleeves()
                .get(0)
                .settings()
                .get(1);
        assertEquals(List.of(new Ring(3, 1.7)), setting.rings());
        assertEquals(Optional.empty(), setting.ratedShaft());
        assertEquals(2, setting.ratedFaceDeg().orElseThrow());
    }

    @Test
    void halfFilledRows_areProblems() {
        assertEquals(
                List.of(
                        "Sleeves!B3: a setting must have Clock and Bend or a rated change, found neither;"
                                + " expected one of them in this row.",
                        "Sleeves!D4: bend must be filled in where Clock is, found nothing; expected degrees, 0 for no"
                                + " bend.",
                        "Sleeves!C5: clock must be filled in where Bend is not 0, found nothing; expected an hour such as"
                                + " 1.5 or 1:30.",
                        "Sleeves!E6: clock 2 must be filled in where Bend 2 is not 0, found nothing; expected an hour such"
                                + " as 1.5 or 1:30.",
                        "Sleeves!F7: bend 2 needs a first ring, found no Bend in this row; expected Clock and Bend as"
                                + " well.",
                        "Sleeves!B8: setting must be filled in, found nothing; expected the mark on the sleeve. One row for"
                                + " every mark.",
                        "Sleeves!A9: sleeve must be filled in, found nothing; expected your name for the sleeve, on"
                                + " each of its rows."),
                sleeves()
                        .row("Two degree", "A")
                        .row("Two degree", "B", 3)
                        .row("Two degree", "C", null, 1.7)
                        .row("Two degree", "D", 3, 1.7, null, 1)
                        .row("Two degree", "E", null, null, 3, 1)
                        .row("Two degree", null, 3, 1.7)
                        .row(null, "F", 3, 1.7)
                        .problems());
    }

    @Test
    void sameMarkTwice_isAProblemAtTheSecond() {
        assertEquals(
                List.of(
                        "Sleeves!B3: setting must be unique within a sleeve, found \"n\" of \"Two degree\" again, first in"
                                + " Sleeves!B2."),
                sleeves().row("Two degree", "n", 3, 1.7).problems());
    }

    @Test
    void bendOutOfLimits_isOneProblem() {
        assertEquals(
                List.of("Sleeves!D3: bend must be 0 to 6 degrees, found 17. Maybe 1.7?"),
                sleeves().row("Two degree", "H", 3, 17).problems());
    }

    @Test
    void unreadableMark_doesNotBlameTheClubs() {
        TestBook book = sleeves().row("Two degree", new TestBook.Shown(45383, "d-mmm"), 3, 1.7);
        assertEquals(List.of("Sleeves!B3"), book.set("Clubs!I3", "4-1").problemCells());
    }
}
