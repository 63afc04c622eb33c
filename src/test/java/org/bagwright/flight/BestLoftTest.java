package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class BestLoftTest {
    @Test
    void topOfAParabola_isFound() {
        BestLoft best = BestLoft.around(loftDeg -> 200 - (loftDeg - 13.37) * (loftDeg - 13.37), 10);
        assertEquals(13.37, best.loftDeg(), 1e-6);
        assertEquals(200, best.carryM(), 1e-9);
    }

    @Test
    void topBeyondReach_isSaidToBeBeyond() {
        assertTrue(BestLoft.around(loftDeg -> 3 * loftDeg, 10).atEdgeOfReach());
        assertTrue(BestLoft.around(loftDeg -> -3 * loftDeg, 40).atEdgeOfReach());
    }
}
