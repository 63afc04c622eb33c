package org.bagwright.planning.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.bagwright.domain.option.CarryDoubt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chance of a gap against tables of the normal distribution and against draws. */
@Tag("analytic")
class GoodGapTest {
    /** Textbook values of the normal distribution: 1, 1.2816, 1.96 and 2 standard deviations. */
    @ParameterizedTest
    @CsvSource({
        "12, 1, 11, 13, 0.682689",
        "12, 1, 10.7184484, 13.2815516, 0.8",
        "12, 2, 8.080072, 15.919928, 0.95",
        "12, 3, 6, 18, 0.954500",
        "12, 4, 12, 16, 0.341345",
        "12, 5, -Infinity, 13.65, 0.629300",
        "12, 3, 18, Infinity, 0.022750"
    })
    void chance_isThatOfTheTables(double gapM, double sdM, double leastM, double mostM, double expected) {
        assertEquals(expected, new GoodGap(leastM, mostM).chanceRatio(gapM, sdM), 1e-6);
    }

    @Test
    void certainGap_isSure() {
        assertEquals(1, new GoodGap(12, 14).chanceRatio(12, 0));
        assertEquals(1, new GoodGap(Double.NEGATIVE_INFINITY, 12).chanceRatio(12, 0));
        assertEquals(0, new GoodGap(12.01, 14).chanceRatio(12, 0));
    }

    /** Both carries drawn factor by factor: what the golfer shares moves both, what a club has of its own moves one. */
    @Test
    void chance_isTheShareOfDraws() {
        double[] sharedOne = {4, -1, 0.5};
        double[] sharedTwo = {3, 1, 0.5};
        double[] ownOne = {2, 1};
        double[] ownTwo = {1.5, 0};
        CarryDoubt one = CarryDoubt.of(sharedOne, ownOne);
        CarryDoubt two = CarryDoubt.of(sharedTwo, ownTwo);
        SplittableRandom random = new SplittableRandom(11);
        int draws = 200_000;
        int inside = 0;
        for (int draw = 0; draw < draws; draw++) {
            double gapM = 12;
            for (int factor = 0; factor < 3; factor++) {
                gapM += (sharedOne[factor] - sharedTwo[factor]) * random.nextGaussian();
            }
            for (int factor = 0; factor < 2; factor++) {
                gapM += ownOne[factor] * random.nextGaussian() - ownTwo[factor] * random.nextGaussian();
            }
            inside += gapM >= 10 && gapM <= 15 ? 1 : 0;
        }
        double chance = new GoodGap(10, 15).chanceRatio(12, Math.sqrt(one.gapVarianceM2(two)));
        assertEquals((double) inside / draws, chance, 4 * Math.sqrt(0.25 / draws));
    }
}
