package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.TestBags.ShotOf;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.flight.golfer.ShotSpread;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The loft of greatest carry, and how far shots scatter. */
class BestLoftTest {
    private static final double DELIVERED_DEG = 12;
    private static final Club DRIVER = TestBags.club(1, "driver", ClubKind.DRIVER, 10.5, 45);

    /** A golfer whose one shot is that of a level 200 g head at 45 m/s and 12 degrees delivered. */
    private static GolferFlight measured() {
        Impact.Head head = new Impact.Head(45, 0.2, Restitution.of(ClubKind.DRIVER));
        Impact.Rebound blow = Impact.strike(head, Ball.STANDARD, DELIVERED_DEG);
        Shot shot = new ShotOf("driver")
                .headMph(45 / TestBags.MPS_PER_MPH)
                .ballMph(blow.ballSpeedMps() / TestBags.MPS_PER_MPH)
                .launch(blow.launchFromPathDeg())
                .spin(blow.spinRpm())
                .attack(0)
                .shot();
        return TestBags.fit(
                TestBags.golfer(OptionalDouble.empty(), OptionalDouble.empty()), List.of(DRIVER), List.of(shot));
    }

    /** Penner 2003, Rep. Prog. Phys. 66, p. 161 [quoted]: 14.9 degrees delivered at 45 m/s and 200 g, allowed 0.3. */
    @Tag("published")
    @Test
    void bestLoftOfAFittedGolfer_isPenners() {
        GolferFlight flight = measured();
        assertEquals(45, flight.headSpeedMps(DRIVER), 1e-9);
        BestLoft best =
                BestLoft.around(loftDeg -> flight.predict(DRIVER, loftDeg).carryM(), 10.5);
        assertEquals(14.9, best.loftDeg() + DELIVERED_DEG - 10.5, 0.3);
        assertFalse(best.atEdgeOfReach());
    }

    @Tag("analytic")
    @Test
    void topOfAParabola_isFound() {
        BestLoft best = BestLoft.around(loftDeg -> 200 - (loftDeg - 13.37) * (loftDeg - 13.37), 10);
        assertEquals(13.37, best.loftDeg(), 0.01);
        assertEquals(200, best.carryM(), 1e-4);
    }

    @Tag("analytic")
    @Test
    void topBeyondReach_isSaidToBeBeyond() {
        assertTrue(BestLoft.around(loftDeg -> 3 * loftDeg, 10).atEdgeOfReach());
        assertTrue(BestLoft.around(loftDeg -> -3 * loftDeg, 40).atEdgeOfReach());
    }

    @Tag("analytic")
    @Test
    void quickerHead_isTheGolferWithThatSpeed() {
        GolferFlight flight = measured();
        double ratio = 1.1;
        Impact.Head head = new Impact.Head(45 * ratio, 0.2, Restitution.of(ClubKind.DRIVER));
        Impact.Rebound blow = Impact.strike(head, Ball.STANDARD, DELIVERED_DEG);
        assertEquals(
                blow.ballSpeedMps(), flight.predictAtSpeed(DRIVER, 10.5, ratio).ballSpeedMps(), 1e-6);
        assertEquals(flight.predict(DRIVER, 10.5), flight.predictAtSpeed(DRIVER, 10.5, 1));
    }

    /** Deviations -4, -2, 0, 2, 4 yards: variance 40 / 4. */
    @Tag("analytic")
    @Test
    void spread_isThatOfTheShotsWithoutTheShank() {
        List<Shot> shots = List.of(carry(146), carry(148), carry(150), carry(152), carry(154), carry(60));
        ShotSpread spread = ShotSpread.of(shots);
        assertEquals(5, spread.carries());
        assertEquals(Math.sqrt(10) * TestBags.M_PER_YD, spread.carryM().orElseThrow(), 1e-9);
        assertTrue(ShotSpread.of(shots.subList(0, 4)).carryM().isEmpty());
    }

    private static Shot carry(double yd) {
        return new ShotOf("driver").carryYd(yd).shot();
    }
}
