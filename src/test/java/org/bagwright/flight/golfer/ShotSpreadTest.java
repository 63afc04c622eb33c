package org.bagwright.flight.golfer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.domain.book.Shot;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class ShotSpreadTest {
    /** Deviations -4, -2, 0, 2, 4 yards: variance 40 / 4. */
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
