package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Series;
import org.bagwright.flight.golfer.TestBags;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.bagwright.flight.learning.Posterior.Residuals;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pooled scatter against sums by hand, and the covariance of means of shots that were measured in part. */
@Tag("analytic")
class ScatterTest {
    private static final double[] SLOPES = {1.5, 0.02, -0.05};

    private static ShotGroup group(Shot... shots) {
        return ShotGroup.of(0, Presented.of(30), 0, List.of(shots));
    }

    private static Shot launched(double launchDeg) {
        return new ShotOf("7 iron").launch(launchDeg).shot();
    }

    private static Shot mean(Shot shot, int shots, OptionalDouble spreadM) {
        return new Shot(
                shot.golfer(),
                shot.club(),
                shot.measured(),
                shot.setup(),
                new Series(Optional.empty(), shots, spreadM),
                shot.cell());
    }

    /** Squares 1 + 0 + 1 about 19 and 2 + 2 about 25.41; 10 before any shot of 1.1 degrees and the device's 0.3. */
    @Test
    void launch_isPooledOverTheClubs() {
        ShotGroup one = group(launched(18), launched(19), launched(20));
        ShotGroup other = group(launched(25.41 - Math.sqrt(2)), launched(25.41 + Math.sqrt(2)));
        double expected = (10 * (1.21 + 0.09) + 2 + 4) / (10 + 5 - 2);
        assertEquals(expected, Scatter.of(List.of(one, other)).variance(Quantity.LAUNCH), 1e-12);
    }

    /** Weights 1, 1, 0.2: mean 18.5 + 0.2 / 2.2 (28 - 18.5), squares each by its weight, 2.2 - 1 more shots. */
    @Test
    void strayShot_countsByItsWeight() {
        ShotGroup group = group(launched(18), launched(19), launched(28)).withWeights(new double[] {1, 1, 0.2});
        double mean = (18 + 19 + 0.2 * 28) / 2.2;
        double squares = Math.pow(18 - mean, 2) + Math.pow(19 - mean, 2) + 0.2 * Math.pow(28 - mean, 2);
        double expected = (10 * (1.21 + 0.09) + squares) / (10 + 2.2 - 1);
        assertEquals(expected, Scatter.of(List.of(group)).variance(Quantity.LAUNCH), 1e-12);
        assertEquals(mean, group.mean(Quantity.LAUNCH), 1e-12);
        assertEquals(1 / 2.2, group.share(Quantity.LAUNCH, Quantity.LAUNCH), 1e-12);
    }

    /** Five equal rows are the row that averages them, but for what five rows tell of the scatter. */
    @Test
    void averageOfFive_countsAsFive() {
        Shot shot = launched(20);
        ShotGroup five = group(shot, shot, shot, shot, shot);
        ShotGroup average = group(mean(shot, 5, OptionalDouble.empty()));
        Scatter usual = Scatter.of(List.of());
        assertEquals(five.mean(Quantity.LAUNCH), average.mean(Quantity.LAUNCH), 1e-12);
        assertEquals(usual.covariance(five, SLOPES)[0][0], usual.covariance(average, SLOPES)[0][0], 1e-15);
        assertEquals(
                usual.variance(Quantity.LAUNCH), Scatter.of(List.of(average)).variance(Quantity.LAUNCH), 1e-15);
    }

    /** An average of 5 carries of 100 m with a standard deviation of 4 m: four more shots with squares of 0.04. */
    @Test
    void spreadOfARow_tellsTheScatter() {
        Shot row = mean(new ShotOf("7 iron").carryYd(100 / TestBags.M_PER_YD).shot(), 5, OptionalDouble.of(4));
        double expected = (10 * (0.03 * 0.03 + 0.007 * 0.007) + 4 * 0.04 * 0.04) / (10 + 4);
        assertEquals(expected, Scatter.of(List.of(group(row))).variance(Quantity.CARRY), 1e-12);
    }

    /** Two shots with ball speed and carry, a third with carry alone; execution of one shot without the device's noise. */
    @Test
    void covarianceOfMeans_isTheSumByHand() {
        Shot both = new ShotOf("7 iron").ballMph(105).carryYd(150).shot();
        ShotGroup group = group(both, both, new ShotOf("7 iron").carryYd(150).shot());
        double[][] found = Scatter.of(List.of()).covariance(group, SLOPES);
        double ball = 0.014 * 0.014;
        double ownCarry = 0.03 * 0.03 - 1.5 * 1.5 * ball - 0.02 * 0.02 * 1.21 - 0.05 * 0.05 * 0.06 * 0.06;
        double carry = 0.03 * 0.03 - ownCarry + Math.max(0.05 * 0.03 * 0.03, ownCarry);
        assertEquals((ball + 0.004 * 0.004) / 2 + 0.003 * 0.003, found[0][0], 1e-15);
        assertEquals((carry + 0.007 * 0.007) / 3 + 0.004 * 0.004, found[1][1], 1e-15);
        assertEquals(2 * 1.5 * ball / (2 * 3), found[0][1], 1e-15);
        assertEquals(found[0][1], found[1][0], 1e-18);
    }

    /** Blanks in any pattern and weights of any size give a covariance; one more quantity never adds doubt. */
    @Test
    void blanksInAnyPattern_giveATrueCovariance() {
        Random random = new Random(7);
        for (int trial = 0; trial < 300; trial++) {
            Shot[] more = new Shot[1 + random.nextInt(6)];
            Shot[] less = new Shot[more.length];
            double[] weights = new double[more.length];
            Quantity dropped = Quantity.values()[random.nextInt(Quantity.COUNT)];
            for (int i = 0; i < more.length; i++) {
                boolean[] blank = new boolean[Quantity.COUNT];
                for (int j = 0; j < blank.length; j++) {
                    blank[j] = random.nextBoolean();
                }
                more[i] = mean(shot(blank), 1 + random.nextInt(5), OptionalDouble.empty());
                blank[dropped.ordinal()] = true;
                less[i] = mean(shot(blank), more[i].series().shots(), OptionalDouble.empty());
                weights[i] = 0.01 + 0.99 * random.nextDouble();
            }
            double[] direction = random.doubles(9, -1, 1).toArray();
            double[][] slopes = new double[Quantity.COUNT][];
            for (int i = 0; i < Quantity.COUNT; i++) {
                slopes[i] = random.doubles(9, -0.1, 0.1).toArray();
            }
            double with = variance(group(more).withWeights(weights), slopes, direction);
            double without = variance(group(less).withWeights(weights), slopes, direction);
            assertTrue(with <= without * (1 + 1e-9), with + " after " + without);
        }
    }

    private static Shot shot(boolean[] blank) {
        double[] usual = {76, 104, 19, 5500, -3, 145};
        ShotOf shot = new ShotOf("7 iron");
        if (!blank[0]) shot.headMph(usual[0]);
        if (!blank[1]) shot.ballMph(usual[1]);
        if (!blank[2]) shot.launch(usual[2]);
        if (!blank[3]) shot.spin(usual[3]);
        if (!blank[4]) shot.attack(usual[4]);
        if (!blank[5]) shot.carryYd(usual[5]);
        return shot.shot();
    }

    private static double variance(ShotGroup group, double[][] slopes, double[] direction) {
        List<Quantity> measured = group.measured();
        if (measured.isEmpty()) {
            return ModelSketch.square(direction);
        }
        double[][] covariance = Scatter.of(List.of()).covariance(group, SLOPES);
        double[] roots = new EigenDecomposition(MatrixUtils.createRealMatrix(covariance)).getRealEigenvalues();
        assertTrue(roots[roots.length - 1] > 0, "positive definite");
        double[][] told =
                measured.stream().map(quantity -> slopes[quantity.ordinal()]).toArray(double[][]::new);
        Residuals residuals = Residuals.of(0, new double[told.length], told, covariance);
        return Posterior.of(new double[direction.length], List.of(residuals)).variance(direction);
    }
}
