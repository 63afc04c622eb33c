package org.bagwright.planning.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chances and bands against the normal distribution's closed form. */
@Tag("analytic")
class CarryDrawsTest {
    /** Four standard errors of a share of the draws. */
    private static final double MONTE_CARLO = 4 * Math.sqrt(0.25 / CarryDraws.DRAWS);

    private static Uncertain certain(double carryM) {
        return new Uncertain(carryM, 2, 200, 0, 0, 0);
    }

    private static CarryDraws drawn(double daySpeedRatio, Uncertain... clubs) {
        return new CarryDraws(List.of(clubs), daySpeedRatio, 7);
    }

    private static double inside(double middle, double spread, double least, double most) {
        NormalDistribution normal = new NormalDistribution(null, middle, spread);
        return normal.cumulativeProbability(most) - normal.cumulativeProbability(least);
    }

    @Test
    void noSpread_isSure() {
        CarryDraws draws = drawn(0, certain(150), certain(138));
        assertEquals(1, draws.chanceRatio(0, 1, 12, 14));
        assertEquals(1, draws.chanceRatio(0, 1, Double.NEGATIVE_INFINITY, 12));
        assertEquals(0, draws.chanceRatio(0, 1, 12.01, 14));
        assertEquals(150, draws.lowM(0));
        assertEquals(150, draws.highM(0));
    }

    @ParameterizedTest
    @CsvSource({"3, 9, 15", "6, 9, 15", "2, 12, 20", "4, 13, 14", "5, 20, 30"})
    void oneUncertainAverage_hasTheNormalChance(double averageM, double leastM, double mostM) {
        CarryDraws draws = drawn(0, new Uncertain(150, 2, 200, 0, averageM, 0), certain(138));
        assertEquals(inside(12, averageM, leastM, mostM), draws.chanceRatio(0, 1, leastM, mostM), MONTE_CARLO);
    }

    @Test
    void looseLoftAndAverages_addAsSquares() {
        Uncertain longer = new Uncertain(150, -2, 200, 0.5, 3, 9);
        Uncertain shorter = new Uncertain(138, 3, 200, 1, 2, 9);
        double spreadM = Math.sqrt(1 + 9 + 9 + 4);
        assertEquals(inside(12, spreadM, 10, 15), drawn(0, longer, shorter).chanceRatio(0, 1, 10, 15), MONTE_CARLO);
    }

    /** The day's speed moves both clubs alike: only what one gains more than the other changes the gap. */
    @Test
    void speedOfTheDay_movesTheBagTogether() {
        Uncertain longer = new Uncertain(150, 2, 230, 0, 0, 0);
        Uncertain same = new Uncertain(138, 2, 230, 0, 0, 0);
        Uncertain slower = new Uncertain(138, 2, 130, 0, 0, 0);
        assertEquals(1, drawn(0.05, longer, same).chanceRatio(0, 1, 11.999, 12.001));
        assertEquals(inside(12, 5, 9, 15), drawn(0.05, longer, slower).chanceRatio(0, 1, 9, 15), MONTE_CARLO);
    }

    @Test
    void scatterOfSingleShots_widensTheBandButNotTheChance() {
        double before = 0;
        for (double shotM = 0; shotM <= 12; shotM += 3) {
            CarryDraws draws = drawn(0, new Uncertain(150, 2, 200, 0, 2, shotM), certain(138));
            double widthM = draws.highM(0) - draws.lowM(0);
            assertTrue(widthM > before, "width " + widthM);
            before = widthM;
            double edge = new NormalDistribution().inverseCumulativeProbability(0.9);
            assertEquals(2 * edge * Math.hypot(2, shotM), widthM, 0.1 * widthM);
            assertEquals(inside(12, 2, 10, 15), draws.chanceRatio(0, 1, 10, 15), MONTE_CARLO);
        }
    }

    @Test
    void sameSeed_drawsTheSame() {
        Uncertain club = new Uncertain(150, 2, 200, 0.25, 3, 8);
        Uncertain next = new Uncertain(138, 2, 180, 0.25, 3, 8);
        CarryDraws one = new CarryDraws(List.of(club, next), 0.015, 3);
        CarryDraws again = new CarryDraws(List.of(club, next), 0.015, 3);
        CarryDraws other = new CarryDraws(List.of(club, next), 0.015, 4);
        assertEquals(one.chanceRatio(0, 1, 9, 15), again.chanceRatio(0, 1, 9, 15));
        assertEquals(one.lowM(1), again.lowM(1));
        assertNotEquals(one.lowM(1), other.lowM(1));
    }
}
