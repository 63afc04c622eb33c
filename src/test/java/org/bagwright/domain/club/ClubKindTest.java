package org.bagwright.domain.club;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bagwright.domain.units.Limit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClubKindTest {
    /** Two halves of the mass at the two ends of 127 mm: m (0.0635 m)^2. */
    @Test
    @Tag("analytic")
    void limit_isTheInertiaOfTwoPointsAtTheEnds() {
        double massKg = 0.2;
        double twoPointsKgM2 = 2 * (massKg / 2) * 0.0635 * 0.0635;
        Limit limit = ClubKind.DRIVER.headInertiaLimitKgM2(massKg);
        assertEquals(twoPointsKgM2, limit.mostMeasureUnits(), 1e-15);
        assertTrue(limit.holds(twoPointsKgM2 * 0.999));
        assertFalse(limit.holds(twoPointsKgM2 * 1.001));
        assertFalse(limit.holds(massKg * 0.0049 * 0.0049));
        assertThrows(IllegalArgumentException.class, () -> ClubKind.DRIVER.headInertiaLimitKgM2(Double.NaN));
    }

    /** A wood of 5900 g cm2, the most that the equipment rules allow [read], can be built at 200 g. */
    @Test
    @Tag("published")
    void mostInertiaOfTheRules_isPossible() {
        assertTrue(ClubKind.DRIVER.headInertiaLimitKgM2(0.2).holds(5900e-7));
        assertEquals(127, ClubKind.DRIVER.mostHeelToeMm(), 1e-12);
    }

    /** 200 x 6.35^2 = 8064.5 and 200 x 0.5^2 = 50 g cm2. */
    @ParameterizedTest
    @Tag("analytic")
    @CsvSource({"8064, true", "8065, false", "50.1, true", "49.9, false", "4500, true", "0, false", "NaN, false"})
    void inertiaOfAHeadOf200G_isPossibleBetweenTheBounds(double gCm2, boolean possible) {
        assertEquals(possible, ClubKind.DRIVER.headInertiaLimitKgM2(0.2).holds(gCm2 * 1e-7));
    }

    /** A putter's head may be 7 in from heel to toe [memory]: 400 x 8.89^2 = 31613 g cm2 at the most. */
    @ParameterizedTest
    @Tag("analytic")
    @CsvSource({"PUTTER, 31600, true", "PUTTER, 31620, false", "IRON, 16120, true", "IRON, 16140, false"})
    void longerHeadOfAPutter_mayHaveMore(ClubKind kind, double gCm2, boolean possible) {
        assertEquals(possible, kind.headInertiaLimitKgM2(0.4).holds(gCm2 * 1e-7));
    }
}
