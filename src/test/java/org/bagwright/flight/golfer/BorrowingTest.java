package org.bagwright.flight.golfer;

import static org.bagwright.flight.golfer.TestBags.MPS_PER_MPH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clubs without shots take after the clubs next to them. */
class BorrowingTest {
    private static final List<Club> BAG = TestBags.genericBag();
    private static final GolferFlight PLAIN = TestBags.fit(TestBags.golfer(95), BAG, List.of());

    private static ShotPrediction today(GolferFlight flight, String name) {
        Club club = TestBags.find(BAG, name);
        return flight.predict(club, club.head().loftDeg());
    }

    private static GolferFlight fit(Shot... shots) {
        return TestBags.fit(TestBags.golfer(95), BAG, List.of(shots));
    }

    /** A shot at the plain amateur's ball speed times a factor. */
    private static Shot scaled(String name, double factor) {
        return new ShotOf(name)
                .ballMph(today(PLAIN, name).ballSpeedMps() / MPS_PER_MPH * factor)
                .shot();
    }

    private static double factor(GolferFlight flight, String name) {
        return today(flight, name).ballSpeedMps() / today(PLAIN, name).ballSpeedMps();
    }

    @Tag("analytic")
    @Test
    void clubBetween_borrowsInProportionToLength() {
        GolferFlight flight = fit(scaled("5 iron", 1.04), scaled("9 iron", 0.98));
        // Lengths 38, 37.5, 37, 36.5, 36 in; the lofts move a place by at most 2 mm.
        assertEquals(1.025, factor(flight, "6 iron"), 0.002);
        assertEquals(1.01, factor(flight, "7 iron"), 0.002);
        assertEquals(0.995, factor(flight, "8 iron"), 0.002);
    }

    @Tag("analytic")
    @Test
    void clubsBeyondTheEnds_borrowFromTheNearest() {
        GolferFlight flight = fit(scaled("5 iron", 1.04), scaled("9 iron", 0.98));
        assertEquals(1.04, factor(flight, "4 hybrid"), 1e-9);
        assertEquals(1.04, factor(flight, "driver"), 1e-9);
        assertEquals(0.98, factor(flight, "lob wedge"), 1e-9);
    }

    @Tag("analytic")
    @Test
    void wedgeOfOneLength_borrowsByLoft() {
        GolferFlight flight = fit(scaled("gap wedge", 1.02), scaled("lob wedge", 0.98));
        assertEquals(1.0, factor(flight, "sand wedge"), 1e-6);
    }

    @Tag("analytic")
    @Test
    void borrower_saysFromWhom() {
        GolferFlight flight = fit(scaled("5 iron", 1.04), scaled("9 iron", 0.98));
        List<String> texts = TestBags.texts(flight, Message.Severity.ASSUMED);
        assertTrue(
                texts.stream()
                        .anyMatch(text -> text.startsWith("Clubs!C10: ")
                                && text.contains("ball speed borrowed from 9 iron and 5 iron")),
                texts::toString);
        assertFalse(
                texts.stream().anyMatch(text -> text.startsWith("Clubs!C8: ") && text.contains("ball speed borrowed")));
    }

    @Tag("analytic")
    @Test
    void everyPart_isBorrowed() {
        ShotPrediction plain = today(PLAIN, "7 iron");
        Shot shot = new ShotOf("7 iron")
                .ballMph(plain.ballSpeedMps() / MPS_PER_MPH * 0.97)
                .launch(plain.launchDeg() + 2)
                .spin(plain.spinRpm() * 1.2)
                .carryYd(plain.carryM() / 0.9144 * 0.93)
                .shot();
        GolferFlight flight = fit(shot);
        ShotPrediction eight = today(flight, "8 iron");
        ShotPrediction plainEight = today(PLAIN, "8 iron");
        assertTrue(eight.launchDeg() > plainEight.launchDeg() + 1.5);
        assertTrue(eight.spinRpm() > plainEight.spinRpm() * 1.15);
        assertTrue(eight.ballSpeedMps() < plainEight.ballSpeedMps());
        assertEquals(0.93, eight.carryM() / plainEight.carryM(), 0.01);
    }

    @Tag("analytic")
    @Test
    void carryAlone_isLentAsBallSpeed() {
        ShotPrediction plain = today(PLAIN, "7 iron");
        GolferFlight flight =
                fit(new ShotOf("7 iron").carryYd(plain.carryM() / 0.9144 * 1.06).shot());
        assertEquals(
                1.06, today(flight, "6 iron").carryM() / today(PLAIN, "6 iron").carryM(), 0.01);
        assertTrue(factor(flight, "6 iron") > 1.02);
    }

    @Tag("analytic")
    @Test
    void attackOfTheDriver_staysWithTheDriver() {
        ShotPrediction plain = today(PLAIN, "driver");
        GolferFlight flight =
                fit(new ShotOf("driver").attack(4).launch(plain.launchDeg() + 3).shot());
        assertEquals(plain.launchDeg() + 3, today(flight, "driver").launchDeg(), 1e-9);
        assertTrue(TestBags.texts(flight, Message.Severity.ASSUMED).stream()
                .anyMatch(text -> text.startsWith("Clubs!C3: ")
                        && text.contains("path of the head is assumed: 3 wood (-1.5 degrees)")));
    }

    @Tag("analytic")
    @Test
    void lending_isLinearBetweenAndConstantBeyond() {
        ClubInterpolation lending = new ClubInterpolation();
        lending.add(0.9, 1.0, "short");
        lending.add(1.1, 2.0, "long");
        assertEquals(1.0, lending.at(0.8));
        assertEquals(1.25, lending.at(0.95), 1e-12);
        assertEquals(2.0, lending.at(1.1));
        assertEquals(2.0, lending.at(1.3));
        assertEquals(List.of("short", "long"), lending.lendersAt(1));
        assertEquals(List.of("long"), lending.lendersAt(1.2));
    }

    @Tag("analytic")
    @Test
    void speedLine_goesThroughDriverAndIronAndIsBounded() {
        HeadSpeeds speeds = new HeadSpeeds(
                TestBags.golfer(OptionalDouble.of(100), OptionalDouble.of(78)).speeds(), Optional.empty());
        assertEquals(100, speeds.driverMps() / MPS_PER_MPH, 1e-9);
        assertEquals(78, speeds.ironMps() / MPS_PER_MPH, 1e-9);
        Club middle = TestBags.club(1, "x", ClubKind.WOOD, 20, 41);
        assertEquals(89, speeds.atMps(ClubToday.of(middle, 20)) / MPS_PER_MPH, 1e-9);
        Club tiny = TestBags.club(1, "x", ClubKind.WEDGE, 60, 17);
        assertEquals(39, speeds.atMps(ClubToday.of(tiny, 60)) / MPS_PER_MPH, 1e-9);
    }

    /** The handbook's generic iron set: loft, head mass, length. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "20, 249, 38.5",
        "23, 256, 38",
        "26, 263, 37.5",
        "30, 270, 37",
        "34.5, 277, 36.5",
        "39, 284, 36",
        "44, 291, 35.5"
    })
    void ironWithoutLengthAndMass_isThatOfTheGenericSet(double loftDeg, double headG, double lengthIn) {
        Club iron = TestBags.club(1, "iron", ClubKind.IRON, loftDeg, OptionalDouble.empty());
        ClubToday today = ClubToday.of(iron, loftDeg);
        assertEquals(lengthIn, today.lengthM() / 0.0254, 1e-9);
        assertEquals(headG, 1000 * today.headMassKg(), 1e-6);
    }

    /** A club whose measured carry is nine tenths of the model's flies nine tenths as far to the side too. */
    @Tag("analytic")
    @Test
    void measuredCarry_shrinksTheWayAsideAsMuch() {
        Club driver = BAG.get(0);
        ShotPrediction plain = today(PLAIN, "driver");
        GolferFlight shorter = fit(new ShotOf("driver")
                .ballMph(plain.ballSpeedMps() / MPS_PER_MPH)
                .carryYd(0.9 * plain.carryM() / 0.9144)
                .shot());
        ShotPrediction full = PLAIN.predict(driver, driver.head().loftDeg(), 2);
        ShotPrediction closed = shorter.predict(driver, driver.head().loftDeg(), 2);
        assertEquals(0.9, closed.carryM() / full.carryM(), 1e-3);
        assertEquals(0.9, closed.sidewaysClosedM() / full.sidewaysClosedM(), 1e-3);
    }

    /** Common knowledge of fitters: at the same launch, hitting up spins the ball less than hitting down. */
    @Tag("analytic")
    @Test
    void measuredAttack_changesTheSpinAtTheSameLaunch() {
        double[] spins = java.util.stream.DoubleStream.of(-4, 0, 4)
                .map(attack -> today(
                                fit(new ShotOf("driver")
                                        .launch(12)
                                        .attack(attack)
                                        .shot()),
                                "driver")
                        .spinRpm())
                .toArray();
        assertTrue(spins[0] > spins[1] * 1.1 && spins[1] > spins[2] * 1.1, java.util.Arrays.toString(spins));
    }

    /** A carry by itself is taken for the ball speed that gives it; what no ball speed can give is met all the same. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"170", "215", "30"})
    void carryAlone_isMet(double carryYd) {
        GolferFlight met = fit(new ShotOf("driver").headMph(95).carryYd(carryYd).shot());
        assertEquals(carryYd, today(met, "driver").carryM() / 0.9144, 1e-3);
    }
}
