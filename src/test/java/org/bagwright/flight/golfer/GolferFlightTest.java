package org.bagwright.flight.golfer;

import static org.bagwright.flight.golfer.TestBags.MPS_PER_MPH;
import static org.bagwright.flight.golfer.TestBags.M_PER_YD;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is predicted without shots, and in answer to a change of loft. */
class GolferFlightTest {
    private static final List<Club> BAG = TestBags.genericBag();

    private static double carryYd(GolferFlight flight, Club club) {
        return flight.predict(club, club.head().loftDeg()).carryM() / M_PER_YD;
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {70, 75, 80, 85, 90, 95, 100, 105, 110, 115, 120})
    void genericBag_carriesFallFromClubToClub(double driverMph) {
        GolferFlight flight = TestBags.fit(TestBags.golfer(driverMph), BAG, List.of());
        double before = Double.POSITIVE_INFINITY;
        for (Club club : BAG.subList(0, 15)) {
            double carryYd = carryYd(flight, club);
            assertTrue(carryYd < before - 1, club.name() + " " + carryYd + " after " + before);
            before = carryYd;
        }
    }

    /**
     * Common practice, no source: smash about 1.44 for woods, 1.42 for hybrids, 1.36 falling to 1.2 over the middle and
     * short irons.
     */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"driver, 1.45", "3 wood, 1.44", "4 hybrid, 1.42", "7 iron, 1.36", "9 iron, 1.27", "pitching wedge, 1.2"
    })
    void plainAmateur_hasTheUsualSmash(String name, double smash) {
        Club club = TestBags.find(BAG, name);
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        double headMph = 95 + (club.parts().lengthM().getAsDouble() / 0.0254 - 45.25) * 19 / 8.25;
        double ballMph = flight.predict(club, club.head().loftDeg()).ballSpeedMps() / MPS_PER_MPH;
        assertEquals(smash, ballMph / headMph, 0.02);
    }

    /** Carries of a plain amateur, common practice, no source. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"IRON, 32, 37, 145, 155", "WEDGE, 44, 35.5, 110, 120", "WEDGE, 56, 35.25, 75, 90"})
    void plainAmateur_hasTheUsualCarries(
            ClubKind kind, double loftDeg, double lengthIn, double leastYd, double mostYd) {
        Club club = TestBags.club(1, "club", kind, loftDeg, lengthIn);
        GolferFlight flight =
                TestBags.fit(TestBags.golfer(OptionalDouble.empty(), OptionalDouble.of(78)), List.of(club), List.of());
        double carryYd = carryYd(flight, club);
        assertTrue(carryYd > leastYd && carryYd < mostYd, () -> "carry " + carryYd);
    }

    @Tag("analytic")
    @Test
    void moreLoft_launchesHigherSpinsMoreAndIsSlower() {
        ShotOf shot = new ShotOf("driver").ballMph(140).launch(12).spin(2900).carryYd(215);
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of(shot.shot()));
        Club driver = TestBags.find(BAG, "driver");
        ShotPrediction before = flight.predict(driver, 7);
        for (double loftDeg = 7.25; loftDeg < 15; loftDeg += 0.25) {
            ShotPrediction after = flight.predict(driver, loftDeg);
            assertTrue(after.launchDeg() > before.launchDeg());
            assertTrue(after.spinRpm() > before.spinRpm());
            assertTrue(after.ballSpeedMps() < before.ballSpeedMps());
            assertTrue(Math.abs(after.carryM() - before.carryM()) < 3);
            before = after;
        }
    }

    @Tag("analytic")
    @Test
    void wildLofts_stillGiveNumbers() {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        for (Club club : BAG.subList(0, 15)) {
            for (double loftDeg = -10; loftDeg <= 90; loftDeg += 5) {
                ShotPrediction shot = flight.predict(club, loftDeg);
                assertTrue(shot.carryM() >= 0 && shot.carryM() < 400 && shot.spinRpm() >= 0, shot::toString);
            }
        }
    }

    @Tag("analytic")
    @Test
    void putterStrangerAndNoLoft_areRefused() {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        Club stranger = TestBags.club(1, "2 iron", ClubKind.IRON, 17, 39);
        Club driver = BAG.get(0);
        assertThrows(IllegalArgumentException.class, () -> flight.predict(TestBags.find(BAG, "putter"), 3));
        assertThrows(IllegalArgumentException.class, () -> flight.predict(stranger, 17));
        assertThrows(IllegalArgumentException.class, () -> flight.predict(driver, Double.NaN));
    }

    @Tag("analytic")
    @Test
    void emptyBook_namesItsAssumptionsAtTheirCells() {
        GolferFlight flight =
                TestBags.fit(TestBags.golfer(OptionalDouble.empty(), OptionalDouble.empty()), BAG, List.of());
        List<String> texts = TestBags.texts(flight, Message.Severity.ASSUMED);
        assertTrue(
                texts.contains("Golfers!A2: Driver speed is not given, so it is assumed: Ann (93 mph)."),
                texts::toString);
        assertTrue(
                texts.contains(
                        "Golfers!A2: Iron speed is not given: 0.8 of the driver speed is assumed with a 7 iron: Ann (74.4"
                                + " mph)."),
                texts::toString);
        for (Club club : BAG.subList(0, 15)) {
            assertTrue(texts.stream().anyMatch(text -> text.startsWith(club.cell() + ": ")), club.name());
        }
        assertTrue(
                texts.stream().anyMatch(text -> text.contains("Length is blank") && text.contains("35.25 in")),
                texts::toString);
        assertTrue(texts.stream().noneMatch(text -> text.contains("putter")), texts::toString);
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.PROBLEM));
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.WARNING));
    }

    @Tag("analytic")
    @Test
    void spinOutsideTheBallModel_isSaidOfThoseClubs() {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        String text = TestBags.texts(flight, Message.Severity.ASSUMED).stream()
                .filter(one -> one.contains("Bearman-Harvey"))
                .collect(Collectors.joining());
        for (Club club : BAG.subList(0, 15)) {
            double spinRpm = flight.predict(club, club.head().loftDeg()).spinRpm();
            assertEquals(spinRpm < 2000 || spinRpm > 6000, text.contains(club.name()), club.name() + ": " + text);
        }
    }

    @Tag("analytic")
    @Test
    void oddSpeeds_areWarnedOf() {
        GolferFlight flight =
                TestBags.fit(TestBags.golfer(OptionalDouble.of(95), OptionalDouble.of(94)), BAG, List.of());
        List<String> texts = TestBags.texts(flight, Message.Severity.WARNING);
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Golfers!A2: Iron speed is 99 %")), texts::toString);
    }

    @Tag("analytic")
    @Test
    void squareFace_isTheShotWithoutAFace() {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        for (Club club : BAG.subList(0, 15)) {
            ShotPrediction plain = flight.predict(club, club.head().loftDeg());
            assertEquals(plain, flight.predict(club, club.head().loftDeg(), 0));
            assertEquals(0, plain.startClosedDeg());
            assertEquals(0, plain.sidewaysClosedM());
            ShotPrediction hair = flight.predict(club, club.head().loftDeg(), 1e-9);
            assertEquals(plain.ballSpeedMps(), hair.ballSpeedMps(), 1e-9);
            assertEquals(plain.launchDeg(), hair.launchDeg(), 1e-8);
            assertEquals(plain.spinRpm(), hair.spinRpm(), 1e-9);
            // A flight in the plane and one in space are integrated in steps of their own, good to a few millimetres.
            assertEquals(plain.carryM(), hair.carryM(), 5e-4);
        }
    }

    /** A closed face starts the ball less closed than it points, and curves it on to that side. */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4})
    void closedFace_startsAndCurvesTheBallToItsSide(double faceDeg) {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of());
        for (Club club : BAG.subList(0, 15)) {
            ShotPrediction closed = flight.predict(club, club.head().loftDeg(), faceDeg);
            ShotPrediction open = flight.predict(club, club.head().loftDeg(), -faceDeg);
            assertTrue(closed.startClosedDeg() > 0 && closed.startClosedDeg() < faceDeg, club.name());
            double straightM = closed.carryM() * Math.tan(Math.toRadians(closed.startClosedDeg()));
            assertTrue(closed.sidewaysClosedM() > straightM, club.name());
            assertEquals(closed.sidewaysClosedM(), -open.sidewaysClosedM(), 1e-6);
            assertEquals(closed.carryM(), open.carryM(), 1e-6);
        }
        assertThrows(IllegalArgumentException.class, () -> flight.predict(BAG.get(0), 10, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> flight.predict(BAG.get(0), 10, 46));
    }

    /** The wind from the left pushes every ball to the right: open for a right-hander, closed for a left-hander. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"RIGHT, -1", "LEFT, 1"})
    void windFromTheLeft_isClosedOnlyForALeftHander(Hand hand, int sign) {
        Golfer golfer = TestBags.golfer(95);
        Golfer handed = GolferSketch.like(golfer).hand(hand).golfer();
        BookSettings windy = new BookSettings(
                BookSettings.DEFAULT.title(),
                BookSettings.DEFAULT.units(),
                new AirConditions(20, 0, 0.5, 0, 5),
                BookSettings.DEFAULT.ballModel(),
                BookSettings.DEFAULT.lengthLimitM(),
                BookSettings.DEFAULT.matching());
        ShotPrediction shot = GolferFlight.fit(
                        windy, handed, BAG, (club, choice) -> club.head().loftDeg(), List.of())
                .predict(BAG.get(0), 10.5);
        assertTrue(sign * shot.sidewaysClosedM() > 5, shot::toString);
    }
}
