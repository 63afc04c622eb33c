package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.SEVEN_IRON;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.BuildNumbers;
import org.bagwright.domain.ClubKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("published")
class HeadLimitsTest {
    /** 5900 g cm2 + 100 about the vertical axis for woods, the governing bodies' equipment rules [read]. */
    @ParameterizedTest
    @CsvSource({
        "5899.9, false, false",
        "5900, false, false",
        "5900.1, true, false",
        "6000, true, false",
        "6000.1, true, true"
    })
    void inertiaOfAWood_isCheckedAtTheLimit(double gCm2, boolean overLimit, boolean overTolerance) {
        BuildNumbers build = DRIVER.withHeadInertiaGCm2(gCm2).build();
        HeadLimits.InertiaCheck check =
                HeadLimits.inertia(ClubKind.DRIVER, build).orElseThrow();
        assertEquals(gCm2, check.figureKgM2() * 1e7, 1e-9);
        assertEquals(5900, check.limitKgM2() * 1e7, 1e-9);
        assertEquals(100, check.toleranceKgM2() * 1e7, 1e-9);
        assertEquals(overLimit, check.overLimit());
        assertEquals(overTolerance, check.overTolerance());
    }

    /** 20 g 60 mm from the centre of a 200 g head add 200 x 20 / 220 x 6^2 = 654.5 g cm2 to 5500. */
    @Test
    void pieces_canTakeAHeadOverTheLimit() {
        BuildNumbers build = DRIVER.withHeadInertiaGCm2(5500).balance().build(pieces(piece(20, 0, -60, 0)));
        HeadLimits.InertiaCheck check =
                HeadLimits.inertia(ClubKind.DRIVER, build).orElseThrow();
        assertEquals(6154.545, check.figureKgM2() * 1e7, 5e-4);
        assertTrue(check.overTolerance());
    }

    @ParameterizedTest
    @EnumSource(ClubKind.class)
    void inertia_isLimitedForWoodsOnly(ClubKind kind) {
        boolean limited = kind == ClubKind.DRIVER || kind == ClubKind.WOOD || kind == ClubKind.HYBRID;
        assertEquals(limited, HeadLimits.inertia(kind, DRIVER.build()).isPresent());
    }

    /** 18 to 48 in, 46 in under a local rule [read]. */
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
        HeadLimits.LengthCheck check =
                HeadLimits.length(ClubKind.DRIVER, DRIVER.withLengthIn(lengthIn).build(), longestIn * M_PER_IN);
        assertEquals(lengthIn * M_PER_IN, check.figureM(), 1e-12);
        assertEquals(0.457, check.shortestM(), 5e-4);
        assertEquals(longestIn * M_PER_IN, check.longestM().orElseThrow(), 1e-12);
        assertEquals(tooShort, check.tooShort());
        assertEquals(tooLong, check.tooLong());
    }

    @Test
    void putter_hasAShortestLengthButNoLongest() {
        HeadLimits.LengthCheck check =
                HeadLimits.length(ClubKind.PUTTER, SEVEN_IRON.withLengthIn(52).build(), 48 * M_PER_IN);
        assertEquals(OptionalDouble.empty(), check.longestM());
        assertFalse(check.tooLong());
        assertTrue(
                HeadLimits.length(ClubKind.PUTTER, SEVEN_IRON.withLengthIn(17).build(), 48 * M_PER_IN)
                        .tooShort());
    }

    /**
     * All of 200 g at the ends of 127 mm [read] is 200 x 6.35^2 = 8064.5 g cm2; 5 mm from the centre it is
     * 200 x 0.5^2 = 50 g cm2.
     */
    @ParameterizedTest
    @CsvSource({"8064, true", "8065, false", "50.1, true", "49.9, false", "4500, true", "0, false", "NaN, false"})
    void inertiaOfAHeadOf200G_isPossibleBetweenTheBounds(double gCm2, boolean possible) {
        assertEquals(possible, HeadLimits.impossibleInertia(0.2, gCm2 * 1e-7).isEmpty());
    }

    @Test
    void impossibleInertia_saysWhatWasFoundAndExpected() {
        assertEquals(
                Optional.of(
                        "head inertia cannot be that of a head of 200 g, found 9000 g cm2; expected 50 to 8065 g cm2,"
                                + " the most if all of it were at the two ends of a head of 127 mm from heel to toe."),
                HeadLimits.impossibleInertia(0.2, 9000e-7));
        String slip = HeadLimits.impossibleInertia(0.2, 4.5e-7).orElseThrow();
        assertTrue(slip.contains("found 4.5 g cm2"), slip);
        assertTrue(slip.endsWith(" Maybe 4500 was meant, written in kg cm2."), slip);
    }

    /** A putter's head may be 7 in from heel to toe [memory]: 400 x 8.89^2 = 31613 g cm2 at the most. */
    @ParameterizedTest
    @CsvSource({"PUTTER, 31600, true", "PUTTER, 31620, false", "IRON, 16120, true", "IRON, 16140, false"})
    void longerHeadOfAPutter_mayHaveMore(ClubKind kind, double gCm2, boolean possible) {
        assertEquals(
                possible, HeadLimits.impossibleInertia(kind, 0.4, gCm2 * 1e-7).isEmpty());
    }
}
