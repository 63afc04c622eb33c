package org.bagwright.flight.golfer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.units.Limit;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Impossible shots are named at their own cells and left out, and one bad shot spoils no other. */
class ShotProblemsTest {
    private static final List<Club> BAG = TestBags.genericBag();

    /** The messages about shots that do not count; no shot is a reason to refuse a book. */
    private static List<String> problems(Shot... shots) {
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of(shots));
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.PROBLEM));
        return leftOut(flight);
    }

    private static List<String> leftOut(GolferFlight flight) {
        return TestBags.texts(flight, Message.Severity.WARNING).stream()
                .filter(text -> text.contains("so not counted"))
                .toList();
    }

    private static ShotOf at(String club) {
        return new ShotOf(club).at("Shots!C7");
    }

    private static void assertProblem(Shot shot, String words) {
        List<String> found = problems(shot);
        assertTrue(
                found.size() == 1
                        && found.get(0).startsWith("Shots!C7: ")
                        && found.get(0).contains(words),
                found::toString);
    }

    /** Zero loft, restitution 1: ball over head speed 2 / (1 + m / M) = 1.6264 for 45.93 g on 200 g. */
    @Tag("analytic")
    @Test
    void ballSpeed_isNamedJustBeyondThePerfectBlow() {
        assertEquals(
                List.of(), problems(at("driver").headMph(100).ballMph(162.6).shot()));
        assertProblem(at("driver").headMph(100).ballMph(162.7).shot(), "above that of a perfect hit");
        assertProblem(at("driver").ballMph(156).shot(), "head speed 95 mph");
    }

    @Tag("analytic")
    @Test
    void ballSpeedWithALaunch_isHeldToTheLoftThatTheLaunchShows() {
        assertEquals(
                List.of(),
                problems(at("9 iron").headMph(80).ballMph(110).launch(24).shot()));
        assertProblem(at("9 iron").headMph(80).ballMph(125).launch(24).shot(), "above that of a perfect hit");
    }

    @Tag("analytic")
    @Test
    void launch_isNamedWhereNoDeliveredLoftGivesIt() {
        assertProblem(at("lob wedge").attack(-10).launch(70).shot(), "higher than any delivered loft");
        assertProblem(at("driver").launch(45).shot(), "Maybe it was another club");
        assertProblem(at("driver").attack(8).launch(5).shot(), "below the path of the head");
    }

    @Tag("analytic")
    @Test
    void carry_isNamedBeyondWhatTheBallCanFly() {
        // 40 m/s: 163.2 m = 178.4 yd in a vacuum at 45 degrees.
        double ballMph = 40 / TestBags.MPS_PER_MPH;
        assertEquals(
                List.of(), problems(at("9 iron").ballMph(ballMph).carryYd(178.3).shot()));
        assertProblem(at("9 iron").ballMph(ballMph).carryYd(178.6).shot(), "farther than this ball can fly");
        assertProblem(
                at("9 iron").ballMph(ballMph).launch(24).spin(6000).carryYd(178).shot(), "farther than this ball");
    }

    @Tag("analytic")
    @Test
    void spin_isNamedWhereTheLaunchDeniesIt() {
        assertProblem(at("7 iron").launch(20).spin(0).shot(), "does not fit the launch");
        assertProblem(at("driver").attack(5).launch(6).spin(3000).shot(), "does not fit the launch");
    }

    @Tag("analytic")
    @Test
    void everyBadShot_isNamedAndTheGoodOnesStillCount() {
        Shot bad = at("driver").headMph(95).ballMph(190).carryYd(230).shot();
        Shot alsoBad = new ShotOf("7 iron").at("Shots!C8").launch(69).shot();
        Shot good = new ShotOf("driver").at("Shots!C9").ballMph(138).shot();
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of(bad, alsoBad, good));
        List<String> found = leftOut(flight);
        assertEquals(2, found.size(), found::toString);
        assertTrue(found.get(0).startsWith("Shots!C7") && found.get(1).startsWith("Shots!C8"), found::toString);
        assertEquals(
                TestBags.fit(TestBags.golfer(95), BAG, List.of(good)).predict(BAG.get(0), 10.5),
                flight.predict(BAG.get(0), 10.5));
    }

    @Tag("analytic")
    @Test
    void shotsThatCannotCount_areWarnedOf() {
        Shot topped = new ShotOf("driver").at("Shots!B3").launch(-2).carryYd(20).shot();
        Shot putt = new ShotOf("putter").at("Shots!B4").ballMph(12).shot();
        Shot unknown = new ShotOf("1 iron").at("Shots!B5").ballMph(120).shot();
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of(topped, putt, unknown));
        List<String> texts = TestBags.texts(flight, Message.Severity.WARNING);
        assertEquals(3, texts.size(), texts::toString);
        assertEquals(
                TestBags.fit(TestBags.golfer(95), BAG, List.of()).predict(BAG.get(0), 10.5),
                flight.predict(BAG.get(0), 10.5));
    }

    @Tag("analytic")
    @Test
    void unusualShots_areWarnedOfAndStillCount() {
        Shot weak = new ShotOf("7 iron")
                .ballMph(80)
                .launch(20)
                .spin(5000)
                .carryYd(95)
                .shot();
        GolferFlight flight = TestBags.fit(TestBags.golfer(95), BAG, List.of(weak));
        List<String> texts = TestBags.texts(flight, Message.Severity.WARNING);
        assertTrue(
                texts.stream()
                        .anyMatch(text -> text.startsWith(
                                "Clubs!C10: Ball speed of the shots far from what the head speed gives: 7 iron (7")),
                texts::toString);
        assertEquals(List.of(), TestBags.texts(flight, Message.Severity.PROBLEM));
        double plainMps = TestBags.fit(TestBags.golfer(95), BAG, List.of())
                .predict(BAG.get(8), 30)
                .ballSpeedMps();
        double foundMps = flight.predict(BAG.get(8), 30).ballSpeedMps();
        assertTrue(foundMps < 0.9 * plainMps && foundMps > 80 * TestBags.MPS_PER_MPH, "found " + foundMps);
    }

    /** Any numbers inside the limits of the sheet, any of them missing, up to six shots a golfer. */
    @Tag("analytic")
    @Test
    void anyShotsInTheLimits_giveMessagesAndFiniteShots() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            List<Shot> shots = new ArrayList<>();
            for (int count = random.nextInt(7); count > 0; count--) {
                shots.add(anyShot(random));
            }
            GolferFlight flight = TestBags.fit(TestBags.golfer(60 + 70 * random.nextDouble()), BAG, shots);
            for (Club club : BAG.subList(0, 15)) {
                ShotPrediction shot = flight.predict(club, club.head().loftDeg());
                assertTrue(
                        shot.carryM() >= 0 && shot.spinRpm() >= 0 && shot.ballSpeedMps() > 0,
                        () -> shots + " give " + shot);
            }
        }
    }

    private static Shot anyShot(Random random) {
        return new Shot(
                "Ann",
                BAG.get(random.nextInt(15)).name(),
                new Shot.Measured(
                        maybe(random, Limit.HEAD_SPEED_MPS),
                        maybe(random, Limit.BALL_SPEED_MPS),
                        maybe(random, Limit.LAUNCH_DEG),
                        maybe(random, Limit.SPIN_RPM),
                        maybe(random, Limit.ATTACK_DEG),
                        maybe(random, Limit.CARRY_M)),
                "Shots!B2");
    }

    private static OptionalDouble maybe(Random random, Limit limit) {
        double width = limit.mostMeasureUnits() - limit.leastMeasureUnits();
        double value = limit.leastMeasureUnits() + width * random.nextDouble();
        return random.nextBoolean() ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
