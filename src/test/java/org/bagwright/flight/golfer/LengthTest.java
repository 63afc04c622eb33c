package org.bagwright.flight.golfer;

import static org.bagwright.flight.golfer.TestBags.MPS_PER_MPH;
import static org.bagwright.flight.golfer.TestBags.M_PER_IN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.ClubSketch;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.bagwright.flight.learning.ClubToday;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What another length does to a club of today: head speed alone. */
class LengthTest {
    /** Kenny, Wallace and Otto 2008, Sports Biomechanics 7(3), 322-332 [read]: 102 mm more, 1.8 m/s of ball speed. */
    private static final double BALL_MPS_PER_IN = 1.8 / 102 * 25.4;

    private static final List<Club> BAG = TestBags.genericBag();

    /** The generic bag and, at the end, a club that might take the place of one of its clubs. */
    private static List<Club> with(Club other) {
        List<Club> bag = new ArrayList<>(BAG);
        bag.add(other);
        return bag;
    }

    private static Club candidate(String of, double moreIn) {
        Club today = TestBags.find(BAG, of);
        double lengthM = today.parts().lengthM().getAsDouble() + moreIn * M_PER_IN;
        return new ClubSketch("Ann", today.slot(), "other", today.kind(), "Clubs!C99")
                .head(today.head())
                .lengthM(lengthM)
                .onBench()
                .made();
    }

    private static ShotPrediction shot(GolferFlight flight, Club club) {
        return flight.predict(club, club.head().loftDeg());
    }

    /**
     * Kenny, Wallace and Otto 2008 [read] for any club and speed, within a hundredth of it: head speed, not ball speed, grows
     * in proportion.
     */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "driver, 80, 1",
        "driver, 93, 1",
        "driver, 113, 1",
        "driver, 93, -1",
        "driver, 93, 2",
        "3 wood, 93, 1",
        "3 hybrid, 93, 1",
        "7 iron, 93, 0.5",
        "pitching wedge, 93, -0.5"
    })
    void anInch_addsThePublishedBallSpeedAndNothingElse(String name, double driverMph, double moreIn) {
        Club other = candidate(name, moreIn);
        GolferFlight flight = TestBags.fit(TestBags.golfer(driverMph), with(other), List.of());
        Club today = TestBags.find(BAG, name);
        ShotPrediction now = shot(flight, today);
        ShotPrediction then = shot(flight, other);
        assertEquals(BALL_MPS_PER_IN * moreIn, then.ballSpeedMps() - now.ballSpeedMps(), 0.005);
        double headRatio = flight.headSpeedMps(other) / flight.headSpeedMps(today);
        ShotPrediction faster = flight.predictAtSpeed(today, today.head().loftDeg(), headRatio);
        assertEquals(faster.ballSpeedMps(), then.ballSpeedMps(), 1e-9);
        assertEquals(faster.launchDeg(), then.launchDeg(), 1e-9);
        assertEquals(faster.spinRpm(), then.spinRpm(), 1e-6);
        assertEquals(now.launchDeg(), then.launchDeg(), 0.005);
    }

    /** The same figure [read] in the unit of the trade: 1.0 mph of ball speed an inch, within a hundredth of it. */
    @Tag("published")
    @Test
    void aLongerDriver_isOneMilePerHourFaster() {
        Club other = candidate("driver", 1);
        GolferFlight flight = TestBags.fit(TestBags.golfer(93), with(other), List.of());
        double moreMph =
                (shot(flight, other).ballSpeedMps() - shot(flight, BAG.get(0)).ballSpeedMps()) / MPS_PER_MPH;
        assertEquals(1.0, moreMph, 0.01);
    }

    /** Another head in the same place: the speed of today's club, and its own length from there. */
    @Tag("analytic")
    @Test
    void anotherHead_hasTheSpeedOfTodaysClubOfItsSlot() {
        Club head = ClubSketch.like(candidate("driver", 0)).head(9, 58).made();
        Club longer = ClubSketch.like(candidate("driver", 1)).head(9, 58).made();
        GolferFlight plain = TestBags.fit(TestBags.golfer(93), with(head), List.of());
        GolferFlight more = TestBags.fit(TestBags.golfer(93), with(longer), List.of());
        assertEquals(plain.headSpeedMps(BAG.get(0)), plain.headSpeedMps(head), 1e-12);
        assertEquals(
                BALL_MPS_PER_IN,
                shot(more, longer).ballSpeedMps() - shot(plain, head).ballSpeedMps(),
                0.005);
    }

    /** The golfer's driver speed is that of the driver in his bag, wherever the rows are in the book. */
    @Tag("analytic")
    @Test
    void driverSpeed_isThatOfTheDriverInTheBag() {
        List<Club> bag = new ArrayList<>(BAG);
        bag.add(0, candidate("driver", 2));
        GolferFlight flight = TestBags.fit(TestBags.golfer(93), bag, List.of());
        assertEquals(93, flight.headSpeedMps(BAG.get(0)) / MPS_PER_MPH, 1e-9);
    }

    /** A measured candidate is expected at its own head speed, so that one shot at that speed changes nothing. */
    @Tag("analytic")
    @Test
    void measuredCandidate_keepsItsOwnSpeed() {
        Club other = candidate("driver", 1);
        ShotOf shot = new ShotOf("other").headMph(95).ballMph(137).launch(12).spin(2900);
        GolferFlight flight = TestBags.fit(TestBags.golfer(93), with(other), List.of(shot.shot()));
        assertEquals(95, flight.headSpeedMps(other) / MPS_PER_MPH, 0.5);
    }

    @Tag("analytic")
    @Test
    void lengthPart_isNoneForTodaysClubsAndGrowsWithLength() {
        Club other = candidate("driver", 1);
        List<ClubToday> clubs = ClubToday.bag(with(other), club -> club.head().loftDeg());
        HeadSpeeds speeds = HeadSpeeds.of(TestBags.golfer(93).speeds(), clubs);
        ClubToday driver = clubs.get(0);
        ClubToday longer = clubs.get(clubs.size() - 1);
        clubs.subList(0, clubs.size() - 1).forEach(club -> assertEquals(0, speeds.lnLengthRatio(club)));
        assertEquals(Math.log(speeds.atMps(longer) / speeds.atMps(driver)), speeds.lnLengthRatio(longer), 1e-15);
        assertTrue(speeds.lnLengthRatio(longer) > 0.007 && speeds.lnLengthRatio(longer) < 0.009);
        ClubToday cut =
                new ClubToday(driver.club(), driver.loftDeg(), driver.lengthM() - M_PER_IN, driver.headMassKg());
        // Not quite a straight line: an inch of 44 is more than one of 45.
        assertEquals(-speeds.lnLengthRatio(longer), speeds.lnLengthRatio(cut), 1e-4);
    }

    /** A blank head mass is that of today's club where the head is the same: a longer shaft makes no head lighter. */
    @Tag("analytic")
    @Test
    void sameHead_hasTheSameAssumedMass() {
        List<ClubToday> clubs =
                ClubToday.bag(with(candidate("3 wood", 1)), club -> club.head().loftDeg());
        ClubToday today = clubs.get(1);
        ClubToday longer = clubs.get(clubs.size() - 1);
        assertTrue(longer.sameHead(today));
        assertEquals(ClubKind.WOOD, longer.kind());
        assertEquals(today.headMassKg(), longer.headMassKg());
    }
}
