package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.SEVEN_IRON;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.bagwright.domain.club.ClubKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthCheckTest {
    /** The governing bodies' equipment rules [read]: 18 to 48 in, 46 in under a local rule. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "18, 48, false, false",
        "17.99, 48, true, false",
        "48, 48, false, false",
        "48.01, 48, false, true",
        "46, 46, false, false",
        "46.25, 46, false, true",
        "46.25, 48, false, false"
    })
    void length_isCheckedAtTheLimits(double lengthIn, double longestIn, boolean tooShort, boolean tooLong) {
        LengthCheck check =
                LengthCheck.of(ClubKind.DRIVER, DRIVER.withLengthIn(lengthIn).build(), longestIn * M_PER_IN);
        assertEquals(lengthIn * M_PER_IN, check.figureM(), 1e-12);
        assertEquals(0.457, check.shortestM(), 5e-4);
        assertEquals(longestIn * M_PER_IN, check.longestM().orElseThrow(), 1e-12);
        assertEquals(tooShort, check.tooShort());
        assertEquals(tooLong, check.tooLong());
    }

    /** Putters are exempt from the greatest length, not from the least [read]. */
    @Tag("published")
    @Test
    void putter_hasAShortestLengthButNoLongest() {
        LengthCheck check =
                LengthCheck.of(ClubKind.PUTTER, SEVEN_IRON.withLengthIn(52).build(), 48 * M_PER_IN);
        assertEquals(OptionalDouble.empty(), check.longestM());
        assertFalse(check.tooLong());
        assertTrue(LengthCheck.of(ClubKind.PUTTER, SEVEN_IRON.withLengthIn(17).build(), 48 * M_PER_IN)
                .tooShort());
    }
}
