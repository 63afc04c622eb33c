package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.Ball;
import org.bagwright.flight.Launch;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.flight.golfer.TestBags;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.bagwright.flight.golfer.WeightedBlow;
import org.bagwright.flight.golfer.WeightedHead;
import org.bagwright.flight.golfer.WeightedHead.Inertia;
import org.bagwright.flight.golfer.WeightedHead.Shift;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A golfer's shots under another weighting. No published figure for gear effect is at hand: signs, mirrors and limits. */
class WeightedShotTest {
    private static final List<Club> BAG = TestBags.genericBag().subList(0, 15);
    private static final Club DRIVER = BAG.get(0);

    /** A golfer who is off the model in every part. */
    private static final List<Shot> SHOTS = List.of(
            new ShotOf("driver").ballMph(140).launch(13).spin(2500).carryYd(222).shot(),
            new ShotOf("7 iron").ballMph(108).launch(18).spin(6000).carryYd(148).shot());

    private static final GolferFlight FLIGHT = TestBags.fit(TestBags.golfer(95), BAG, SHOTS);

    /** About what heads of the kind have; assumed. */
    private static Inertia inertia(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> new Inertia(2.8e-4, 3e-4, 4.8e-4, 0, 0, 0);
            case WOOD, HYBRID -> new Inertia(1.4e-4, 1.3e-4, 2.5e-4, 0, 0, 0);
            case IRON, WEDGE, PUTTER -> new Inertia(2.4e-4, 0.8e-4, 2.6e-4, 0, 0, 0);
        };
    }

    private static WeightedHead head(Club club, double addedKg, Shift shift) {
        double massKg = ClubToday.of(club, club.head().loftDeg()).headMassKg();
        return new WeightedHead(
                massKg, massKg + addedKg, shift, inertia(club.kind()), WeightedHead.assumedDepthM(club.kind()));
    }

    private static ShotPrediction shot(Club club, double faceDeg, Shift shift) {
        return FLIGHT.predict(club, club.head().loftDeg(), faceDeg, head(club, 0, shift));
    }

    private static ShotPrediction plain(Club club) {
        return FLIGHT.predict(club, club.head().loftDeg());
    }

    private static void assertSame(ShotPrediction expected, ShotPrediction actual, double ratio) {
        assertEquals(expected.ballSpeedMps(), actual.ballSpeedMps(), ratio * expected.ballSpeedMps());
        assertEquals(expected.launchDeg(), actual.launchDeg(), ratio * expected.launchDeg());
        assertEquals(expected.spinRpm(), actual.spinRpm(), ratio * expected.spinRpm());
        assertEquals(expected.carryM(), actual.carryM(), ratio * expected.carryM());
        assertEquals(expected.apexM(), actual.apexM(), ratio * expected.apexM());
        assertEquals(expected.landingDeg(), actual.landingDeg(), ratio * expected.landingDeg());
        assertEquals(expected.startClosedDeg(), actual.startClosedDeg(), ratio);
        assertEquals(expected.sidewaysClosedM(), actual.sidewaysClosedM(), ratio * expected.carryM());
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {0, -3, 2})
    void noChange_isTheShotWithoutIt(double faceDeg) {
        for (Club club : BAG) {
            double loftDeg = club.head().loftDeg() + 1.3;
            Inertia mixed = new Inertia(2.8e-4, 3e-4, 4.8e-4, 2e-5, -3e-5, 1e-5);
            WeightedHead same = new WeightedHead(0.215, 0.215, Shift.NONE, mixed, 0.03);
            assertSame(FLIGHT.predict(club, loftDeg, faceDeg), FLIGHT.predict(club, loftDeg, faceDeg, same), 1e-12);
        }
    }

    @Tag("analytic")
    @Test
    void hairOfAChange_isAHairOfTheShot() {
        for (Club club : BAG) {
            ShotPrediction plain = plain(club);
            ShotPrediction hair =
                    FLIGHT.predict(club, club.head().loftDeg(), 0, head(club, 1e-9, new Shift(1e-9, -1e-9, 1e-9)));
            assertEquals(plain.ballSpeedMps(), hair.ballSpeedMps(), 1e-6);
            assertEquals(plain.launchDeg(), hair.launchDeg(), 1e-6);
            // A nanometre of the centre of mass, times what a millimetre does; the carry as that of a hair of a face.
            assertEquals(plain.spinRpm(), hair.spinRpm(), 1e-3);
            assertEquals(plain.carryM(), hair.carryM(), 0.005);
            assertEquals(0, hair.sidewaysClosedM(), 1e-4);
        }
    }

    /**
     * The centre of gravity toward the heel leaves the blow on the toe side of it: the head turns open, so that the ball
     * starts a little open, and the face drags it into a spin that curves it closed, past the line where the lever from
     * face to centre of gravity is a wood's.
     */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.003, 0.006})
    void centreTowardTheHeel_curvesTheBallClosed(double towardHeelM) {
        for (Club club : BAG) {
            ShotPrediction heel = shot(club, 0, new Shift(0, towardHeelM, 0));
            assertTrue(heel.startClosedDeg() < 0, club.name());
            assertTrue(heel.ballSpeedMps() < plain(club).ballSpeedMps(), club.name());
            double straightM = heel.carryM() * Math.tan(Math.toRadians(heel.startClosedDeg()));
            assertTrue(heel.sidewaysClosedM() > straightM, club.name());
            boolean lever = club.kind() == ClubKind.DRIVER || club.kind() == ClubKind.WOOD;
            assertTrue(!lever || heel.sidewaysClosedM() > 0, club.name());
        }
    }

    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"0.004, 0", "0.002, 2", "-0.007, 1.5"})
    void mirroredShift_curvesTheOtherWayAsFar(double towardHeelM, double faceDeg) {
        for (Club club : BAG) {
            ShotPrediction heel = shot(club, faceDeg, new Shift(-0.001, towardHeelM, -0.002));
            ShotPrediction toe = shot(club, -faceDeg, new Shift(-0.001, -towardHeelM, -0.002));
            assertEquals(heel.sidewaysClosedM(), -toe.sidewaysClosedM(), 1e-6);
            assertEquals(heel.startClosedDeg(), -toe.startClosedDeg(), 1e-9);
            assertEquals(heel.carryM(), toe.carryM(), 1e-6);
            assertEquals(heel.spinRpm(), toe.spinRpm(), 1e-6);
        }
    }

    /**
     * The centre of gravity lower leaves the blow above it: the face turns back under the blow and launches higher, and drags
     * the ball into topspin, which leaves less backspin; higher is the reverse. No wind and a square face: it stays on line.
     */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {0.0005, 0.002, 0.004})
    void lowerCentre_launchesHigherWithLessSpin(double downM) {
        for (Club club : BAG) {
            ShotPrediction low = shot(club, 0, new Shift(0, 0, -downM));
            ShotPrediction high = shot(club, 0, new Shift(0, 0, downM));
            assertTrue(low.launchDeg() > plain(club).launchDeg(), club.name());
            assertTrue(low.spinRpm() < plain(club).spinRpm(), club.name());
            assertTrue(high.launchDeg() < plain(club).launchDeg(), club.name());
            assertTrue(high.spinRpm() > plain(club).spinRpm(), club.name());
            assertEquals(0, low.sidewaysClosedM(), 1e-9);
            assertEquals(0, low.startClosedDeg(), 1e-12);
        }
    }

    /**
     * Ball speed in the ratio of the closed form, {@code 1 / (1 + m/M)} at its upright limit; the lofted part, which goes
     * with {@code 1 / (7/2 + m/M)}, makes up under a tenth of the change.
     */
    @Tag("analytic")
    @Test
    void heavierHead_givesMoreBallSpeed() {
        for (Club club : BAG.subList(0, 5)) {
            double massKg = ClubToday.of(club, club.head().loftDeg()).headMassKg();
            double ballKg = Ball.STANDARD.massKg();
            double gain = (1 + ballKg / massKg) / (1 + ballKg / (massKg + 0.01)) - 1;
            ShotPrediction heavy = FLIGHT.predict(club, club.head().loftDeg(), 0, head(club, 0.01, Shift.NONE));
            double found = heavy.ballSpeedMps() / plain(club).ballSpeedMps() - 1;
            assertEquals(1, found / gain, 0.01, club.name());
            assertTrue(heavy.carryM() > plain(club).carryM(), club.name());
        }
    }

    /**
     * The fit knows the head without its pieces. Where 12 g of pieces lie in it today, a change of 10 g more moves the ball
     * speed by 1.1 % of the change too much, the ratio of {@code 1 + m/M} without the pieces and with them.
     */
    @Tag("analytic")
    @Test
    void piecesInTheHeadToday_hardlyMoveTheChange() {
        double ballKg = Ball.STANDARD.massKg();
        double rightRatio = (1 + ballKg / 0.212) / (1 + ballKg / 0.222) - 1;
        double excessRatio = (1 + ballKg / 0.2) / (1 + ballKg / 0.212);
        Inertia unmoved = new Inertia(1e5, 1e5, 1e5, 0, 0, 0);
        WeightedHead head = new WeightedHead(0.212, 0.222, Shift.NONE, unmoved, 0.035);
        double found = FLIGHT.predict(DRIVER, 10.5, 0, head).ballSpeedMps()
                        / plain(DRIVER).ballSpeedMps()
                - 1;
        assertEquals(rightRatio * excessRatio, found, 0.002 * rightRatio);
    }

    /** The golfer's own efficiency and spin ratio stay in the change: 1 % more ball speed is 1 % more of his. */
    @Tag("analytic")
    @Test
    void change_isScaledLikeTheGolfersOwnShot() {
        ClubToday driver = ClubToday.of(DRIVER, 10.5);
        Delivery usual = new Delivery(42, 1, 2, 1.04, 1, 1);
        Delivery mine = usual.withEfficiencyRatio(0.936).withSpinRatio(1.2);
        WeightedHead head = head(DRIVER, 0.01, new Shift(-0.002, 0, -0.002));
        Launch other = new WeightedBlow(usual, driver, 10.5, 0, head).start().launch();
        Launch own = new WeightedBlow(mine, driver, 10.5, 0, head).start().launch();
        Launch plain = usual.launch(driver, 10.5);
        Launch plainOwn = mine.launch(driver, 10.5);
        assertEquals(other.ballSpeedMps() / plain.ballSpeedMps(), own.ballSpeedMps() / plainOwn.ballSpeedMps(), 1e-6);
        assertEquals(other.spinRpm() / plain.spinRpm(), own.spinRpm() / plainOwn.spinRpm(), 1e-6);
        assertEquals(other.launchDeg() - plain.launchDeg(), own.launchDeg() - plainOwn.launchDeg(), 1e-6);
    }

    @Tag("analytic")
    @Test
    void leftHander_seesTheSameNumbers() {
        Golfer right = TestBags.golfer(95);
        Golfer left = GolferSketch.like(right).hand(Hand.LEFT).golfer();
        GolferFlight flight = TestBags.fit(left, BAG, SHOTS);
        for (Club club : BAG) {
            Shift shift = new Shift(-0.002, 0.004, -0.001);
            assertEquals(
                    shot(club, 1, shift),
                    flight.predict(club, club.head().loftDeg(), 1, head(club, 0, shift)),
                    club.name());
        }
    }

    @Tag("analytic")
    @Test
    void wildWeightings_stillGiveNumbers() {
        for (Club club : BAG) {
            for (double yM = -0.05; yM <= 0.05; yM += 0.025) {
                ShotPrediction shot = FLIGHT.predict(club, 89, 40, head(club, 0.2, new Shift(0.05, yM, -0.05)));
                assertTrue(shot.carryM() >= 0 && shot.carryM() < 400 && shot.spinRpm() >= 0, shot::toString);
            }
        }
    }

    @Tag("analytic")
    @Test
    void putterAndNoLoft_areRefused() {
        Club putter = TestBags.find(TestBags.genericBag(), "putter");
        WeightedHead head = head(DRIVER, 0, Shift.NONE);
        assertThrows(IllegalArgumentException.class, () -> FLIGHT.predict(putter, 3, 0, head));
        assertThrows(IllegalArgumentException.class, () -> FLIGHT.predict(DRIVER, Double.NaN, 0, head));
        assertThrows(IllegalArgumentException.class, () -> FLIGHT.predict(DRIVER, 10, 46, head));
    }
}
