package org.bagwright.flight.golfer;

import static org.bagwright.flight.golfer.TestBags.MPS_PER_MPH;
import static org.bagwright.flight.golfer.TestBags.M_PER_YD;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.bagwright.flight.learning.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What shots make of the prediction with their own club. */
class CalibrationTest {
    private static final List<Club> BAG = TestBags.genericBag();
    private static final BallFlight FLIGHTS = new BallFlight(AirConditions.DEFAULT, BallModelKind.BEARMAN_HARVEY);

    private static ShotPrediction today(GolferFlight flight, String name) {
        Club club = TestBags.find(BAG, name);
        return flight.predict(club, club.head().loftDeg());
    }

    private static GolferFlight fit(double driverMph, Shot... shots) {
        return TestBags.fit(TestBags.golfer(driverMph), BAG, List.of(shots));
    }

    /** Exact shots of what is expected before any shot, with every quantity or some: reproduced to 0.05 yd. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"75, 1", "93, 3", "95, 12", "113, 5"})
    void exactShotsOfTheModel_areReproduced(double driverMph, int count) {
        GolferFlight plain = fit(driverMph);
        Random random = new Random(11);
        List<Shot> shots = new ArrayList<>();
        for (Club club : BAG.subList(0, 15)) {
            boolean hit = random.nextInt(3) > 0;
            for (int i = 0; hit && i < count; i++) {
                shots.add(exact(plain, club, random));
            }
        }
        GolferFlight flight = TestBags.fit(TestBags.golfer(driverMph), BAG, shots);
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.WARNING));
        for (Club club : BAG.subList(0, 15)) {
            for (double aboutDeg = -2; aboutDeg <= 2; aboutDeg++) {
                double loftDeg = club.head().loftDeg() + aboutDeg;
                ShotPrediction before = plain.predict(club, loftDeg);
                ShotPrediction after = flight.predict(club, loftDeg);
                assertEquals(before.carryM() / M_PER_YD, after.carryM() / M_PER_YD, 1e-5, club.name());
                assertEquals(before.launchDeg(), after.launchDeg(), 1e-7, club.name());
                assertEquals(1, after.spinRpm() / before.spinRpm(), 1e-8, club.name());
            }
        }
    }

    private static Shot exact(GolferFlight plain, Club club, Random random) {
        ShotPrediction shot = plain.predict(club, club.head().loftDeg());
        Launch launch = new Launch(shot.ballSpeedMps(), shot.launchDeg(), shot.spinRpm());
        return switch (random.nextInt(4)) {
            case 0 ->
                full(club.name(), launch, shot.carryM())
                        .headMph(plain.headSpeedMps(club) / MPS_PER_MPH)
                        .shot();
            case 1 -> new ShotOf(club.name()).carryYd(shot.carryM() / M_PER_YD).shot();
            case 2 ->
                new ShotOf(club.name())
                        .ballMph(shot.ballSpeedMps() / MPS_PER_MPH)
                        .carryYd(shot.carryM() / M_PER_YD)
                        .shot();
            default -> full(club.name(), launch, shot.carryM()).shot();
        };
    }

    /** A golfer off what is expected in all: the more shots, the nearer; of 40 no more is left than a device may be off. */
    @Tag("analytic")
    @Test
    void consistentShots_areMetTheBetterTheMore() {
        Launch launch = new Launch(107 * MPS_PER_MPH, 17.5, 6200);
        double carryM = FLIGHTS.fly(launch, 1.03).carryM();
        Shot shot = full("7 iron", launch, carryM).shot();
        double before = Double.POSITIVE_INFINITY;
        for (int count : new int[] {1, 4, 10, 40}) {
            ShotPrediction found =
                    today(fit(95, Collections.nCopies(count, shot).toArray(Shot[]::new)), "7 iron");
            double left = Math.abs(Math.log(found.ballSpeedMps() / launch.ballSpeedMps()))
                    + Math.abs(Math.log(found.carryM() / carryM));
            assertTrue(left < before, count + " shots leave " + left);
            before = left;
        }
        double deviceMayBeOff = Quantity.BALL_SPEED.discrepancy() + Quantity.CARRY.discrepancy();
        assertTrue(before < deviceMayBeOff, "left " + before);
    }

    /**
     * Tour men 2015, averages of the governing bodies' distance report [quoted]: one row that averages them leaves no more
     * than what one device may be off.
     */
    @Tag("published")
    @Test
    void tourMen_areMetOnceMeasured() {
        Shot one = new ShotOf("driver")
                .headMph(113.2)
                .ballMph(167.7)
                .launch(10.8)
                .spin(2599)
                .shot();
        Shot many = new Shot(
                one.golfer(),
                one.club(),
                one.measured(),
                one.setup(),
                new Shot.Series(Optional.empty(), 200, OptionalDouble.empty()),
                one.cell());
        ShotPrediction shot = today(fit(113.2, many), "driver");
        assertEquals(167.7, shot.ballSpeedMps() / MPS_PER_MPH, 0.003 * 167.7);
        assertEquals(10.8, shot.launchDeg(), 0.25);
        assertEquals(2599, shot.spinRpm(), 0.02 * 2599);
    }

    @Tag("analytic")
    @Test
    void partialShots_moveWhatTheyTell() {
        ShotPrediction plain = today(fit(95), "6 iron");
        ShotPrediction ball = today(fit(95, new ShotOf("6 iron").ballMph(112).shot()), "6 iron");
        assertTrue(between(plain.ballSpeedMps(), ball.ballSpeedMps(), 112 * MPS_PER_MPH));
        ShotPrediction launch = today(fit(95, new ShotOf("6 iron").launch(19).shot()), "6 iron");
        assertTrue(between(plain.launchDeg(), launch.launchDeg(), 19));
        ShotPrediction spin = today(fit(95, new ShotOf("6 iron").spin(5555).shot()), "6 iron");
        assertTrue(between(plain.spinRpm(), spin.spinRpm(), 5555));
        ShotPrediction carry = today(fit(95, new ShotOf("6 iron").carryYd(167).shot()), "6 iron");
        assertTrue(between(plain.carryM(), carry.carryM(), 167 * M_PER_YD));
        assertTrue(carry.ballSpeedMps() > plain.ballSpeedMps() * 1.01);
    }

    /** At least half of the way from what was expected to what was measured, and not beyond. */
    private static boolean between(double expected, double found, double measured) {
        double share = (found - expected) / (measured - expected);
        return share > 0.5 && share < 1;
    }

    /** A blow that no golfer of that speed hits is named, and does not become his carry. */
    @Tag("analytic")
    @Test
    void loneShotFarFromAll_isNamed() {
        Shot shot = new ShotOf("driver").carryYd(40).shot();
        GolferFlight flight = fit(120, shot);
        double plainM = today(fit(120), "driver").carryM();
        assertTrue(today(flight, "driver").carryM() > 0.5 * plainM);
        assertEquals(
                List.of("Shots!B2: Far from what the golfer's row and other clubs tell, so it counts little: driver."),
                TestBags.texts(flight, Message.Severity.WARNING));
    }

    private static List<Shot> irons(double... ballMph) {
        List<Shot> shots = new ArrayList<>();
        for (double mph : ballMph) {
            shots.add(new ShotOf("7 iron")
                    .ballMph(mph)
                    .launch(20)
                    .spin(5200)
                    .carryYd(1.4 * mph)
                    .shot());
        }
        return shots;
    }

    private static Shot shank() {
        return new ShotOf("7 iron")
                .at("Shots!B9")
                .ballMph(72)
                .launch(14)
                .spin(4000)
                .carryYd(70)
                .shot();
    }

    /** Among five shots, and among three, which the other clubs judge: the carry moves by less than 1.5 yd. */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8})
    void shank_hardlyMovesTheCarryAndIsNamed(int good) {
        List<Shot> shots =
                new ArrayList<>(irons(104, 105, 107, 103, 106, 104, 105, 104).subList(0, good));
        shots.add(new ShotOf("driver").ballMph(137).carryYd(214).shot());
        shots.add(new ShotOf("driver").ballMph(138).carryYd(216).shot());
        GolferFlight without = TestBags.fit(TestBags.golfer(95), BAG, shots);
        shots.add(shank());
        GolferFlight with = TestBags.fit(TestBags.golfer(95), BAG, shots);
        double withoutYd = today(without, "7 iron").carryM() / M_PER_YD;
        assertEquals(withoutYd, today(with, "7 iron").carryM() / M_PER_YD, 1.5);
        assertEquals(
                List.of("Shots!B9: Far from the other shots with the same club, so it counts little: 7 iron."),
                TestBags.texts(with, Message.Severity.WARNING));
    }

    @Tag("analytic")
    @Test
    void scatteredShots_allCount() {
        List<Shot> shots = irons(99, 102, 105, 108);
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, shots);
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.WARNING));
        // The mean of the four, from which the speed of the golfer's head draws it a little.
        assertEquals(103.5, today(flight, "7 iron").ballSpeedMps() / MPS_PER_MPH, 0.2);
    }

    /** A head speed tells of its club most, of the others in part, as the club's own share of the doubt is. */
    @Tag("analytic")
    @Test
    void measuredHeadSpeed_movesItsClubMost() {
        GolferFlight plain = fit(95);
        GolferFlight flight = fit(95, new ShotOf("7 iron").headMph(80).shot());
        double own = ratio(flight, plain, "7 iron");
        double next = ratio(flight, plain, "9 iron");
        assertTrue(own > 1.01 && own < 80.0 / 76, "own " + own);
        assertTrue(next > 1 + 0.4 * (own - 1) && next < own, "next " + next);
    }

    private static double ratio(GolferFlight flight, GolferFlight plain, String name) {
        return today(flight, name).ballSpeedMps() / today(plain, name).ballSpeedMps();
    }

    private static ShotOf full(String club, Launch launch, double carryM) {
        return new ShotOf(club)
                .ballMph(launch.ballSpeedMps() / MPS_PER_MPH)
                .launch(launch.launchDeg())
                .spin(launch.spinRpm())
                .carryYd(carryM / M_PER_YD);
    }
}
