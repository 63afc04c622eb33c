package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Shot;
import org.bagwright.flight.golfer.TestBags;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What each shot counts, {@code min(1, 5 / (4 + D))}, by hand. */
@Tag("analytic")
class ShotWeightsTest {
    private static ShotGroup group(double... ballMph) {
        Shot[] shots = new Shot[ballMph.length];
        for (int i = 0; i < shots.length; i++) {
            shots[i] = new ShotOf("7 iron").ballMph(ballMph[i]).shot();
        }
        return ShotGroup.of(0, Presented.of(30), 0, List.of(shots));
    }

    /** Four passes, each with the scatter by the weights before it: squares by weight about the weighted mean. */
    @Test
    void scoresFromTheMedian_areTakenFourTimes() {
        double[] ln = {Math.log(100), Math.log(101), Math.log(102), Math.log(103), Math.log(90)};
        double[] weights = {1, 1, 1, 1, 1};
        for (int pass = 0; pass < 4; pass++) {
            double sum = 0;
            double mean = 0;
            for (int i = 0; i < 5; i++) {
                sum += weights[i];
                mean += weights[i] * ln[i];
            }
            mean /= sum;
            double squares = 10 * (0.014 * 0.014 + 0.004 * 0.004);
            for (int i = 0; i < 5; i++) {
                squares += weights[i] * (ln[i] - mean) * (ln[i] - mean);
            }
            double variance = squares / (10 + sum - 1);
            for (int i = 0; i < 5; i++) {
                double off = ln[i] - Math.log(101);
                weights[i] = Math.min(1, 5 / (4 + off * off / variance));
            }
        }
        ShotGroup found =
                ShotWeights.fromMedians(List.of(group(100, 101, 102, 103, 90))).get(0);
        assertArrayEquals(weights, found.weights(), 1e-12);
        assertTrue(found.weights()[4] < 0.25);
    }

    /** The larger score of ball speed and carry judges; launch, spin and head speed do not. */
    @Test
    void largerScore_judges() {
        ShotOf far = new ShotOf("7 iron").ballMph(101).carryYd(110).launch(19);
        Shot good = new ShotOf("7 iron").ballMph(101).carryYd(150).launch(19).shot();
        Shot high = new ShotOf("7 iron")
                .ballMph(101)
                .carryYd(150)
                .launch(39)
                .spin(9000)
                .shot();
        ShotGroup group = ShotGroup.of(0, Presented.of(30), 0, List.of(good, good, good, high, far.shot()));
        double[] weights = ShotWeights.fromMedians(List.of(group)).get(0).weights();
        assertArrayEquals(new double[] {1, 1, 1, 1}, Arrays.copyOf(weights, 4));
        assertTrue(weights[4] < 0.15);
    }

    /** One shot 3 standard deviations off, where nothing is in doubt: score 9, weight 5 / 13. */
    @Test
    void againstTheOtherClubs_withoutDoubt() {
        Scatter scatter = Scatter.of(List.of());
        double[] expected = new double[Quantity.COUNT];
        double[] doubts = new double[Quantity.COUNT];
        Arrays.fill(doubts, 1e-12);
        double standard = Math.sqrt(scatter.variance(Quantity.BALL_SPEED));
        expected[Quantity.BALL_SPEED.ordinal()] = Math.log(100 * TestBags.MPS_PER_MPH) - 3 * standard;
        ShotGroup judged = ShotWeights.against(group(100), scatter, expected, doubts);
        assertEquals(5.0 / 13, judged.weights()[0], 1e-6);
    }

    /** Of three shots two are strays and agree: those that the other clubs expect win all the same. */
    @Test
    void twoStraysOfThree_areSeenByTheOtherClubs() {
        double[] expected = new double[Quantity.COUNT];
        double[] doubts = new double[Quantity.COUNT];
        Arrays.fill(doubts, 0.01 * 0.01);
        expected[Quantity.BALL_SPEED.ordinal()] = Math.log(100 * TestBags.MPS_PER_MPH);
        ShotGroup group = group(100.5, 80, 80);
        double[] weights = ShotWeights.against(group, Scatter.of(List.of()), expected, doubts)
                .weights();
        assertTrue(weights[0] > 0.9 && weights[1] < 0.25 && weights[2] < 0.25, Arrays.toString(weights));
    }
}
