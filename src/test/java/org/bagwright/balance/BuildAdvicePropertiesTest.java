package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.SEVEN_IRON;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.bagwright.balance.BalanceBench.plus;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import org.bagwright.domain.option.BuildAdvice;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.units.Swingweight;

@Tag("analytic")
class BuildAdvicePropertiesTest {
    @Property(tries = 200, seed = "51")
    void massAtTheHead_givesExactlyTheTarget(
            @ForAll @DoubleRange(min = 16, max = 50) double lengthIn,
            @ForAll @DoubleRange(min = 0, max = 12) double points,
            @ForAll @DoubleRange(min = 0, max = 200) double kgCm2) {
        ClubBalance balance = DRIVER.withLengthIn(lengthIn).balance();
        BuildNumbers now = balance.build(pieces(piece(4, -20, 15, -8)));
        Swingweight target = plus(now, points);
        double grams = 1000 * BuildAdvice.forSwingweight(now, target).atHeadKg().orElseThrow();
        assertEquals(target.scalePoints(), with(balance, grams).swingweight().scalePoints(), 1e-9);

        double targetKgCm2 = now.clubInertiaKgCm2() + kgCm2;
        double inertiaGrams =
                1000 * BuildAdvice.forClubInertia(now, targetKgCm2).atHeadKg().orElseThrow();
        assertEquals(targetKgCm2, with(balance, inertiaGrams).clubInertiaKgCm2(), 1e-9);
    }

    private static BuildNumbers with(ClubBalance balance, double massG) {
        return balance.build(pieces(piece(4, -20, 15, -8), piece(massG, 0, 0, 0)));
    }

    /** Taking off is a lighter head. */
    @Property(tries = 200, seed = "52")
    void massOffTheHead_givesExactlyTheTarget(@ForAll @DoubleRange(min = -30, max = 0) double points) {
        BuildNumbers now = SEVEN_IRON.build();
        Swingweight target = plus(now, points);
        double grams = 1000 * BuildAdvice.forSwingweight(now, target).atHeadKg().orElseThrow();
        assertEquals(target.scalePoints(), SEVEN_IRON.withHeadG(270 + grams).swingweightPoints(), 1e-9);
    }

    /** The mass becomes part of the shaft, which is then heavier and balances elsewhere. */
    @Property(tries = 200, seed = "53")
    void massOnTheShaft_givesExactlyTheTarget(
            @ForAll @DoubleRange(min = -4, max = 8) double points,
            @ForAll @DoubleRange(min = 20, max = 60) double massG) {
        BuildNumbers now = DRIVER.build();
        Swingweight target = plus(now, points);
        double placeIn = BuildAdvice.forSwingweight(now, target)
                        .placeOnShaftM(massG / 1000)
                        .orElseThrow()
                / M_PER_IN;
        BalanceBench heavier = DRIVER.withShaft(60 + massG, (60 * 22 + massG * placeIn) / (60 + massG));
        assertEquals(target.scalePoints(), heavier.swingweightPoints(), 1e-9);

        double inertia = now.clubInertiaKgCm2() + 60;
        double placeM = BuildAdvice.forClubInertia(now, inertia)
                .placeOnShaftM(massG / 1000)
                .orElseThrow();
        assertEquals(inertia, now.clubInertiaKgCm2() + 1e4 * massG / 1000 * placeM * placeM, 1e-9);
    }
}
