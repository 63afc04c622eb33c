package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.golfer.TestBags;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One club and one quantity in which the model is a straight line: the normal model with known variances, as in Gelman and
 * others, Bayesian Data Analysis, section 2.5 [memory]. With a mean {@code y} that has the variance {@code v} about a value
 * of prior mean m and variance t, the posterior mean is {@code m + t / (t + v) (y - m)}, the variance {@code t v / (t + v)}.
 */
class OneClubTest {
    private static final Club IRON = TestBags.club(1, "7 iron", ClubKind.IRON, 30, 37);
    private static final Club DRIVER = TestBags.club(1, "driver", ClubKind.DRIVER, 10.5, 45.25);

    /** Scatter of head speed: 1 % of the golfer and 1 % of the device, 10 shots' worth of it before any. */
    private static final double USUAL_SPEED = 10 * (0.01 * 0.01 + 0.01 * 0.01);

    private static double mean(double[] values) {
        return DoubleStream.of(values).average().orElseThrow();
    }

    private static double squares(double[] values) {
        double mean = mean(values);
        return DoubleStream.of(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
    }

    /** Head speeds 2 % and so above what is usual, in turn 1 % above and below their mean. */
    private static double[] lnSpeeds(double usual, int shots) {
        double[] values = new double[shots];
        for (int i = 0; i < shots; i++) {
            values[i] = usual + 0.02 + (shots == 1 ? 0 : i % 2 == 0 ? 0.01 : -0.01);
        }
        return values;
    }

    /** Of the prior for his whole bag (1.5 %), for its slope (1 % for each 4 in from 39 in) and for the club (0.8 %). */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6, 10, 40, 400})
    void headSpeed_isTheNormalModelOfTheTextbook(int shots) {
        ModelSketch sketch = new ModelSketch(IRON);
        double usual = sketch.clubs.get(0).usual()[Argument.LN_HEAD_SPEED.ordinal()];
        double[] told = lnSpeeds(usual, shots);
        Shot[] rows = DoubleStream.of(told)
                .mapToObj(ln -> new ShotOf("7 iron")
                        .headMph(Math.exp(ln) / TestBags.MPS_PER_MPH)
                        .shot())
                .toArray(Shot[]::new);
        Learning learning = sketch.learn(sketch.group(0, rows));
        double byLength = 0.01 * (37 - 39) / 4;
        double prior = 0.015 * 0.015 + byLength * byLength + 0.008 * 0.008;
        double scatter = (USUAL_SPEED + squares(told)) / (10 + shots - 1);
        double device = 0.006 * 0.006;
        double noise = Math.max(0.05 * scatter, scatter - 1e-4);
        double ofMean = (Math.min(noise, ballExecution()) + 1e-4) / shots + device + 0.01 * 0.01;
        double share = prior / (prior + ofMean);
        double found = sketch.clubs.get(0).arguments(learning.posterior().mean())[Argument.LN_HEAD_SPEED.ordinal()];
        assertEquals(usual + share * (mean(told) - usual), found, 1e-10);
        double variance = learning.posterior().variance(sketch.slopes(0, Argument.LN_HEAD_SPEED));
        assertEquals(prior * ofMean / (prior + ofMean), variance, 1e-12);
    }

    /** The golfer's own scatter of ball speed without any: 1.4 %. */
    private static double ballExecution() {
        return 0.014 * 0.014;
    }

    /** What is not taken away by more shots: the device (0.6 %) and the day (1 %). */
    @Tag("analytic")
    @Test
    void moreShots_leaveLessOfWhatWasExpected() {
        double before = Double.POSITIVE_INFINITY;
        for (int shots = 1; shots <= 512; shots *= 2) {
            ModelSketch sketch = new ModelSketch(IRON);
            double usual = sketch.clubs.get(0).usual()[Argument.LN_HEAD_SPEED.ordinal()];
            Shot[] rows = new Shot[shots];
            Arrays.fill(
                    rows,
                    new ShotOf("7 iron")
                            .headMph(Math.exp(usual + 0.02) / TestBags.MPS_PER_MPH)
                            .shot());
            double[] at = sketch.learn(sketch.group(0, rows)).posterior().mean();
            double left = usual + 0.02 - sketch.clubs.get(0).arguments(at)[Argument.LN_HEAD_SPEED.ordinal()];
            assertTrue(left < before && left > 0);
            before = left;
        }
    }

    /** An attack of a driver: 2 degrees before any shot; scatter 1 degree, device 0.5 and 0.5 that no shots take away. */
    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(ints = {1, 4, 25})
    void attack_isTheNormalModelOfTheTextbook(int shots) {
        ModelSketch sketch = new ModelSketch(DRIVER);
        Shot[] rows = new Shot[shots];
        Arrays.fill(rows, new ShotOf("driver").attack(3).shot());
        Learning learning = sketch.learn(sketch.group(0, rows));
        double scatter = 10 * (1 + 0.25) / (10 + shots - 1);
        double ofMean = (Math.max(0.05 * scatter, scatter - 0.25) + 0.25) / shots + 0.25;
        double found = sketch.clubs.get(0).arguments(learning.posterior().mean())[Argument.ATTACK_DEG.ordinal()];
        assertEquals(4 / (4 + ofMean) * 3, found, 1e-10);
        double variance = learning.posterior().variance(sketch.slopes(0, Argument.ATTACK_DEG));
        assertEquals(4 * ofMean / (4 + ofMean), variance, 1e-10);
    }
}
