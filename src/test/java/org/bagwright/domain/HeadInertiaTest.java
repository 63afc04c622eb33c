package org.bagwright.domain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class HeadInertiaTest {
    /** Two halves of the mass at the two ends of 127 mm: m (0.0635 m)^2. */
    @Test
    @Tag("analytic")
    void limit_isTheInertiaOfTwoPointsAtTheEnds() {
        double massKg = 0.2;
        double twoPointsKgM2 = 2 * (massKg / 2) * 0.0635 * 0.0635;
        Limit limit = HeadInertia.limitKgM2(ClubKind.DRIVER, massKg);
        assertEquals(twoPointsKgM2, limit.mostMeasureUnits(), 1e-15);
        assertTrue(limit.holds(twoPointsKgM2 * 0.999));
        assertFalse(limit.holds(twoPointsKgM2 * 1.001));
        assertFalse(limit.holds(massKg * 0.0049 * 0.0049));
        assertThrows(IllegalArgumentException.class, () -> HeadInertia.limitKgM2(ClubKind.DRIVER, Double.NaN));
    }

    /** A wood of 5900 g cm2, the most that the equipment rules allow [read], can be built at 200 g. */
    @Test
    @Tag("published")
    void mostInertiaOfTheRules_isPossible() {
        assertTrue(HeadInertia.limitKgM2(ClubKind.DRIVER, 0.2).holds(5900e-7));
        assertEquals(127, HeadInertia.mostHeelToeMm(ClubKind.DRIVER), 1e-12);
    }
}
