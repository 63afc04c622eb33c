package org.bagwright.flight.golfer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.Ball;
import org.bagwright.flight.BestLoft;
import org.bagwright.flight.PointHead;
import org.bagwright.flight.Rebound;
import org.bagwright.flight.Restitution;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The loft of greatest carry of a fitted golfer. */
class GolferBestLoftTest {
    private static final double DELIVERED_DEG = 12;
    private static final Club DRIVER = TestBags.club(1, "driver", ClubKind.DRIVER, 10.5, 45);

    /** A golfer whose 200 shots average that of a level 200 g head at 45 m/s and 12 degrees delivered. */
    private static GolferFlight measured() {
        PointHead head = new PointHead(45, 0.2, Restitution.of(ClubKind.DRIVER));
        Rebound blow = head.strike(Ball.STANDARD, DELIVERED_DEG);
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
        assertEquals(45, flight.headSpeedMps(DRIVER), 0.45);
        BestLoft best =
                BestLoft.around(loftDeg -> flight.predict(DRIVER, loftDeg).carryM(), 10.5);
        assertEquals(14.9, best.loftDeg() + DELIVERED_DEG - 10.5, 0.3);
        assertFalse(best.atEdgeOfReach());
    }

    @Tag("analytic")
    @Test
    void quickerHead_isTheGolferWithThatSpeed() {
        GolferFlight flight = measured();
        double ratio = 1.1;
        double headMps = flight.headSpeedMps(DRIVER);
        double gain = ballMps(headMps * ratio) / ballMps(headMps);
        double slowMps = flight.predict(DRIVER, 10.5).ballSpeedMps();
        // The loft found is not quite the 12 degrees of the blow.
        assertEquals(gain, flight.predictAtSpeed(DRIVER, 10.5, ratio).ballSpeedMps() / slowMps, 1e-4);
        assertEquals(flight.predict(DRIVER, 10.5), flight.predictAtSpeed(DRIVER, 10.5, 1));
    }

    private static double ballMps(double headMps) {
        return new PointHead(headMps, 0.2, Restitution.of(ClubKind.DRIVER))
                .strike(Ball.STANDARD, DELIVERED_DEG)
                .ballSpeedMps();
    }
}
