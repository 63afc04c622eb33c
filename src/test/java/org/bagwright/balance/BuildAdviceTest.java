package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.SEVEN_IRON;
import static org.bagwright.balance.BalanceBench.plus;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.bagwright.domain.option.BuildAdvice;
import org.bagwright.domain.option.BuildNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class BuildAdviceTest {
    /**
     * By hand: three points are 5.25 oz in = 148.835 g in. At the head of a 37 in club that is 148.835 / 23 = 6.4711 g; 10 g
     * have to sit at 14 + 14.8835 = 28.8835 in; 5 g would have to sit at 43.8 in, beyond the head.
     */
    @Test
    void threePointsMore_areTheHandCalculation() {
        BuildNumbers now = SEVEN_IRON.build();
        BuildAdvice advice = BuildAdvice.forSwingweight(now, plus(now, 3));
        assertEquals(6.4711, advice.atHeadKg().orElseThrow() * 1000, 5e-5);
        assertEquals(28.8835, advice.placeOnShaftM(0.010).orElseThrow() / M_PER_IN, 5e-5);
        assertEquals(OptionalDouble.empty(), advice.placeOnShaftM(0.005));
    }

    /** By hand: two points less are 99.223 g in; 10 g have to sit 9.9223 in above the fulcrum, under the grip. */
    @Test
    void twoPointsLess_comeOffTheHeadOrGoUnderTheGrip() {
        BuildNumbers now = SEVEN_IRON.build();
        BuildAdvice advice = BuildAdvice.forSwingweight(now, plus(now, -2));
        assertEquals(-99.2233 / 23, advice.atHeadKg().orElseThrow() * 1000, 5e-5);
        assertEquals(14 - 9.9223, advice.placeOnShaftM(0.010).orElseThrow() / M_PER_IN, 5e-5);
        assertEquals(OptionalDouble.empty(), advice.placeOnShaftM(0.005));
    }

    /** By hand: 50 kg cm2 on a club of 100 cm are 5 g at the head; 20 g do it at sqrt(50000 / 20) = 50 cm. */
    @Test
    void inertia_isTheHandCalculation() {
        BuildNumbers now = SEVEN_IRON.withLengthIn(1 / M_PER_IN).build();
        BuildAdvice more = BuildAdvice.forClubInertia(now, now.clubInertiaKgCm2() + 50);
        assertEquals(5, more.atHeadKg().orElseThrow() * 1000, 1e-9);
        assertEquals(0.5, more.placeOnShaftM(0.020).orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.empty(), more.placeOnShaftM(0.004));
        BuildAdvice less = BuildAdvice.forClubInertia(now, now.clubInertiaKgCm2() - 50);
        assertEquals(-5, less.atHeadKg().orElseThrow() * 1000, 1e-9);
        assertEquals(OptionalDouble.empty(), less.placeOnShaftM(0.020));
    }

    @Test
    void clubThatMeetsItsTarget_needsNothing() {
        BuildNumbers now = DRIVER.build();
        assertEquals(
                0, BuildAdvice.forSwingweight(now, now.swingweight()).atHeadKg().orElseThrow(), 0);
        assertEquals(
                0,
                BuildAdvice.forClubInertia(now, now.clubInertiaKgCm2())
                        .atHeadKg()
                        .orElseThrow(),
                1e-15);
    }

    @Test
    void targetThatWouldLeaveNoHead_hasNoAnswer() {
        BuildNumbers now = DRIVER.build();
        assertEquals(
                OptionalDouble.empty(),
                BuildAdvice.forSwingweight(now, plus(now, -126)).atHeadKg());
        assertTrue(BuildAdvice.forSwingweight(now, plus(now, -124)).atHeadKg().isPresent());
        assertEquals(
                OptionalDouble.empty(), BuildAdvice.forClubInertia(now, 200).atHeadKg());
    }

    @Test
    void massThatIsNotAboveZero_isRefused() {
        BuildAdvice advice = BuildAdvice.forClubInertia(DRIVER.build(), 2900);
        assertThrows(IllegalArgumentException.class, () -> advice.placeOnShaftM(0));
        assertThrows(IllegalArgumentException.class, () -> advice.placeOnShaftM(Double.NaN));
    }
}
