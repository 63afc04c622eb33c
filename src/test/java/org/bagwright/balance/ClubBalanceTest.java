package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.units.Swingweight;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class ClubBalanceTest {
    /**
     * By hand: 200 g at 45 in, 60 g at 22 in, 50 g at 3.5 in. Mass 310 g; 9000 + 1320 + 175 = 10495 g in, so the balance is
     * at 33.8548 in; about the fulcrum 10495 - 310 x 14 = 6155 g in = 217.1112 oz in = D0 + 2.0636 points.
     */
    @Test
    void driver_isTheHandCalculation() {
        BuildNumbers build = DRIVER.build();
        assertEquals(0.310, build.totalMassKg(), 1e-12);
        assertEquals(33.8548, build.balancePointM() / M_PER_IN, 5e-5);
        assertEquals(217.1112, build.swingweight().momentOzIn(), 5e-5);
        assertEquals(32.0636, build.swingweight().scalePoints(), 5e-5);
        assertEquals("D2.1", build.swingweight().text());
        assertEquals(45 * M_PER_IN, build.lengthM(), 1e-12);
    }

    /**
     * By hand, g in2. Head: 200 x 45^2 = 405000; shaft: 60 x (22^2 + 45^2/12) = 60 x 652.75 = 39165; grip:
     * 50 x (3.5^2 + 10.5^2/12) = 50 x 21.4375 = 1071.875; together 445236.875 x 6.4516 cm2/in2 = 2872.4902 kg cm2. The head's
     * own: about the axis that leans 32 deg from the vertical it is 4500 (0.65 sin^2 58 + cos^2 58) = 3367.3 g cm2 = 3.3673.
     */
    @Test
    void clubInertia_isTheHandCalculation() {
        assertEquals(2872.4902 + 3.3673, DRIVER.build().clubInertiaKgCm2(), 1e-4);
    }

    /** 40 mm toward the toe are 40 cos 58 = 21.197 mm further down the shaft, 20 mm toward the sole 20 sin 58 = 16.961 mm. */
    @Test
    void pieceTowardToeAndSole_standsFurtherDownTheShaft() {
        BuildNumbers bare = DRIVER.build();
        BuildNumbers toe = DRIVER.balance().build(pieces(piece(10, 0, -40, 0)));
        BuildNumbers sole = DRIVER.balance().build(pieces(piece(10, 0, 0, -20)));
        BuildNumbers front = DRIVER.balance().build(pieces(piece(10, 35, 0, 0)));
        assertEquals(10 * (45 * 25.4 + 21.1968), addedGMm(bare, toe), 5e-4);
        assertEquals(10 * (45 * 25.4 + 16.9610), addedGMm(bare, sole), 5e-4);
        assertEquals(10 * 45 * 25.4, addedGMm(bare, front), 1e-6);
    }

    private static double addedGMm(BuildNumbers before, BuildNumbers after) {
        return 1e6 * (after.totalMassKg() * after.balancePointM() - before.totalMassKg() * before.balancePointM());
    }

    @Test
    void measuredSwingweight_leavesTheOtherNumbersToTheParts() {
        Weighting today = new Weighting("Now", List.of(piece(8, 0, -30, -10)));
        BuildNumbers read = built(DRIVER.measured(new Swingweight(40), today).balance(), today);
        BuildNumbers byParts = built(DRIVER.balance(), today);
        assertEquals(40, read.swingweight().scalePoints(), 0);
        assertEquals(byParts.balancePointM(), read.balancePointM(), 0);
        assertEquals(byParts.clubInertiaKgM2(), read.clubInertiaKgM2(), 0);
        assertEquals(byParts.totalMassKg(), read.totalMassKg(), 0);
    }

    @Test
    void measuredSwingweightOfAClubWithoutAKit_isTheReading() {
        assertEquals(27.5, DRIVER.measured(new Swingweight(27.5)).swingweightPoints(), 0);
    }

    @Test
    void kitThatIsNotTheClubs_isRefused() {
        Weighting today = new Weighting("Now", List.of());
        Weighting other = new Weighting("Then", List.of());
        BalanceBench bench = DRIVER.measured(new Swingweight(30), today);
        Kit without = new Kit("K", List.of(other));
        Optional<Kit> none = Optional.empty();
        assertThrows(IllegalArgumentException.class, () -> ClubBalance.of(bench.club(), none));
        assertThrows(IllegalArgumentException.class, () -> ClubBalance.of(bench.club(), Optional.of(without)));
        assertThrows(IllegalArgumentException.class, () -> ClubBalance.of(DRIVER.club(), Optional.of(without)));
    }

    private static BuildNumbers built(ClubBalance balance, Weighting weighting) {
        return balance.build(Optional.of(weighting));
    }
}
