package org.bagwright.workbook.read;

import static org.bagwright.workbook.TestClubs.clubs;
import static org.bagwright.workbook.TestClubs.driverWith;
import static org.bagwright.workbook.TestClubs.ironWith;
import static org.bagwright.workbook.TestClubs.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.ClubSketch;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class ClubReaderTest {
    private static double limit(Club club, LimitKind kind) {
        return club.freedom().limits().of(kind).orElseThrow().valueMeasureUnits();
    }

    @Test
    void everyColumn_isRead() {
        Club club = clubs(row(
                        "ann",
                        2,
                        "7 iron",
                        "iron",
                        31,
                        62.5,
                        -0.5,
                        null,
                        37,
                        null,
                        null,
                        1,
                        -0.5,
                        "front",
                        "heavy",
                        "yes",
                        "yes",
                        "yes",
                        null,
                        2,
                        0.5,
                        30,
                        62,
                        160,
                        11,
                        "c 9.5",
                        61.5,
                        270,
                        "180/240",
                        21,
                        9.5,
                        2600,
                        "D1,5",
                        105,
                        16.5,
                        48,
                        9,
                        13,
                        150,
                        170,
                        "42.5\u00b0",
                        "bent last year"))
                .sheet("Weights")
                .row("Kit", "Weighting", "Port", "Mass", "X", "Y", "Z")
                .row("Front", "Light", "A", 4, 0, 0, 0)
                .row("Front", "Heavy", "A", 8, 0, 0, 0)
                .book()
                .clubs()
                .get(0);
        assertEquals("Ann", club.golfer(), "the golfer's own spelling");
        assertEquals(2, club.slot());
        assertEquals(ClubKind.IRON, club.kind());
        assertEquals(new StatedHead(31, 62.5, -0.5, Optional.empty()), club.head());
        assertEquals(37 * 0.0254, club.parts().lengthM().orElseThrow(), 1e-12);
        assertEquals(new Bend(1, -0.5), club.today().bend());
        assertEquals(new BendRange(2, 0.5), club.freedom().bendRange());
        assertTrue(club.pinned());
        assertEquals(30, club.targets().loftDeg().orElseThrow());
        assertEquals(62, club.targets().lieDeg().orElseThrow());
        assertEquals(160 * 0.9144, club.targets().carryM().orElseThrow(), 1e-12);
        assertEquals(11 * 0.9144, club.targets().gapWishM().orElseThrow(), 1e-12);
        assertEquals(9 * 0.9144, limit(club, LimitKind.GAP_LEAST), 1e-12);
        assertEquals(13 * 0.9144, limit(club, LimitKind.GAP_MOST), 1e-12);
        assertEquals(150 * 0.9144, limit(club, LimitKind.CARRY_LEAST), 1e-12);
        assertEquals(170 * 0.9144, limit(club, LimitKind.CARRY_MOST), 1e-12);
        assertEquals(42.5, limit(club, LimitKind.LANDING_LEAST));
        assertEquals(OptionalDouble.of(61.5), club.targets().golferLieDeg());
        assertEquals(0.270, club.form().massKg().orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.of(180), club.form().soleForeAftRadiusMm());
        assertEquals(OptionalDouble.of(240), club.form().soleHeelToeRadiusMm());
        assertEquals(OptionalDouble.of(21), club.form().centreOfGravityHeightMm());
        assertEquals(OptionalDouble.of(9.5), club.form().centreOfGravityDepthMm());
        assertEquals(2600e-7, club.form().inertiaKgM2().orElseThrow(), 1e-15);
        assertEquals(Optional.of("Front"), club.kit(), "the kit's own spelling");
        assertEquals(Optional.of("Heavy"), club.today().weighting(), "the kit's own spelling");
        assertTrue(club.inBag());
        assertTrue(club.freedom().optional());
        assertEquals(29.5, club.targets().swingweight().orElseThrow().scalePoints(), 1e-12, "C9.5 is 29.5 above A0");
        assertEquals(31.5, club.parts().measured().orElseThrow().scalePoints(), 1e-12, "D1.5 is 31.5 above A0");
        assertEquals(0.105, club.parts().shaftMassKg().orElseThrow(), 1e-12);
        assertEquals(16.5 * 0.0254, club.parts().shaftBalanceM().orElseThrow(), 1e-12);
        assertEquals(0.048, club.parts().gripMassKg().orElseThrow(), 1e-12);
        assertEquals("Clubs!C2", club.cell());
    }

    @Test
    void neededCellsOnly_haveTheDefaults() {
        Club club =
                clubs(row(null, 1, "Driver", "Driver", 10.5, 58)).book().clubs().get(0);
        assertEquals("Ann", club.golfer(), "the only golfer");
        assertEquals(new StatedHead(10.5, 58, 0, Optional.empty()), club.head());
        assertEquals(OptionalDouble.empty(), club.parts().lengthM());
        assertEquals(Optional.empty(), club.sleeve());
        assertEquals(Bend.NONE, club.today().bend());
        assertEquals(BendRange.NONE, club.freedom().bendRange());
        assertEquals(ClubSketch.NO_TARGETS, club.targets());
        assertEquals(ClubSketch.ASSUMED_FORM, club.form());
        assertEquals(ClubSketch.ASSUMED_PARTS, club.parts());
        assertEquals(Optional.empty(), club.kit());
        assertEquals(Optional.empty(), club.today().weighting());
        assertTrue(club.inBag());
        assertFalse(club.freedom().optional());
    }

    @ParameterizedTest
    @CsvSource({"fairway,WOOD", "Fairway  Wood,WOOD", "WOOD,WOOD", "Hybrid,HYBRID", "putter,PUTTER", "wedge,WEDGE"})
    void kindWords_areRead(String typed, ClubKind expected) {
        assertEquals(
                expected,
                clubs(row("Ann", 1, "Club", typed, 20, 60))
                        .book()
                        .clubs()
                        .get(0)
                        .kind());
    }

    @Test
    void wrongWordsAndMissingCells_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Clubs!A2: golfer must be a name on the sheet Golfers, found \"Anne\". Maybe \"Ann\"?",
                        "Clubs!D2: kind must be driver, wood, hybrid, iron, wedge or putter, found \"irn\". Maybe"
                                + " \"iron\"?",
                        "Clubs!E3: loft must be filled in, found nothing; expected the loft your gauge reads, degrees.",
                        "Clubs!B3: slot must be 1 to 20, found 0."),
                clubs(row("Anne", 1, "7 iron", "irn", 31, 62.5), row("Ann", 0, "8 iron", "iron", null, 63))
                        .problems());
    }

    @Test
    void blankGolferOfSeveral_isAProblem() {
        assertEquals(
                List.of(
                        "Clubs!A2: golfer must be filled in when the book has several, found nothing; expected \"Ann\" or"
                                + " \"Bea\"."),
                clubs(row(null, 1, "7 iron", "iron", 31, 62.5))
                        .set("Golfers!A3", "Bea")
                        .problems());
    }

    @Test
    void clubNameInTwoSlots_isAWarning() {
        TestBook book = clubs(row("Ann", 1, "Wedge", "wedge", 50, 64), row("Ann", 2, "wedge", "wedge", 56, 64));
        assertEquals(2, book.book().clubs().size());
        assertEquals(
                List.of(
                        "Clubs!C3: the club \"wedge\" is also in another slot, see Clubs!C2; shots of that name count for"
                                + " both."),
                book.lines(Message.Severity.WARNING));
    }

    @Test
    void sameSlotAndClubOfAnotherGolfer_isFine() {
        assertEquals(
                List.of(),
                clubs(row("Ann", 1, "Driver", "driver", 10, 58), row("Bea", 1, "Driver", "driver", 10, 58))
                        .set("Golfers!A3", "Bea")
                        .problems());
    }

    @Test
    void bendsOfAWood_areProblemsUnlessZero() {
        assertEquals(List.of(), driverWith("Loft bend", 0).set("Clubs!T2", 0).problems());
        assertEquals(
                List.of(
                        "Clubs!L2: loft bend must be 0 or blank for a driver, found 1; only irons and wedges are bent."),
                driverWith("Loft bend", 1).problems());
        assertEquals(List.of("Clubs!M2"), driverWith("Lie bend", -1).problemCells());
        assertEquals(List.of("Clubs!T2"), driverWith("Bend limit", 2).problemCells());
    }

    @Test
    void bendsOfAnIron_areLimited() {
        assertEquals(new BendRange(4, 0.2), range(ironWith("Bend limit", 4, "Bend step", 0.2)));
        assertEquals(
                List.of(
                        "Clubs!U2: bend limit must be at most 20 bend steps, found 25; expected a larger step or a smaller"
                                + " limit."),
                ironWith("Bend limit", 5, "Bend step", 0.2).problems());
        assertEquals(
                List.of("Clubs!T2: bend limit must be 0 to 8 degrees, found -2. Maybe 2?"),
                ironWith("Bend limit", -2).problems());
        assertEquals(
                List.of("Clubs!U2: bend step must be 0.05 to 8 degrees, found 0."),
                ironWith("Bend limit", 2, "Bend step", 0).problems());
    }

    private static BendRange range(TestBook book) {
        return book.book().clubs().get(0).freedom().bendRange();
    }

    @Test
    void soleRadius_isOneNumberOrTwo() {
        HeadForm one = ironWith("Sole radius", 200).book().clubs().get(0).form();
        assertEquals(OptionalDouble.of(200), one.soleForeAftRadiusMm());
        assertEquals(OptionalDouble.of(250), one.soleHeelToeRadiusMm());
        HeadForm two =
                ironWith("Sole radius", "8 / 10 in").book().clubs().get(0).form();
        assertEquals(203.2, two.soleForeAftRadiusMm().orElseThrow(), 1e-9);
        assertEquals(254, two.soleHeelToeRadiusMm().orElseThrow(), 1e-9);
        assertEquals(
                List.of("Clubs!AC2: sole radius must be one number, or two as 200/250, each 10 to 5000 mm, found"
                        + " \"200/flat\"."),
                ironWith("Sole radius", "200/flat").problems());
    }

    @Test
    void limits_areSaidWithWhatWasPerhapsMeant() {
        assertEquals(
                List.of(
                        "Clubs!F2: lie must be 40 to 80 degrees, found 158. Maybe 58?",
                        "Clubs!I2: length must be 15.8 to 55.1 in, found 455. Maybe 45.5?",
                        "Clubs!V2: loft target must be 0 to 75 degrees, found -10.5. Maybe 10.5?",
                        "Clubs!AB2: head mass must be 100 to 700 g, found 20." + " Maybe 200?"),
                driverWith("Lie", 158)
                        .set("Clubs!I2", 455)
                        .set("Clubs!V2", -10.5)
                        .set("Clubs!AB2", 20)
                        .problems());
    }

    @Test
    void headingsWithoutAClub_isAProblem() {
        assertEquals(
                List.of("Clubs!C2: No club: every row under the headings is empty. Enter a club here."),
                clubs().problems());
    }
}
