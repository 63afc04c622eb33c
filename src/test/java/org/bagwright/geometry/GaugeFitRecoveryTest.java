package org.bagwright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.gauge.Repeatability;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Made-up readings with noise, by seed: the truth comes back as often as the error bars say. */
@Tag("analytic")
class GaugeFitRecoveryTest {
    private static final double NORMAL_95 = 1.959963984540054;
    private static final int CASES = 1000;
    private static final double BLUNDER_DEG = 1.5;

    /**
     * Bends of 0.5 to 2 degrees, 3 to 8 readings of loft and lie at different marks: in 93 to 97 of 100 cases the truth
     * lies within 1.96 standard errors. 1000 cases tell such a rate to 0.7.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 11", "0.25, 12"})
    void error_bars_hold_the_truth_at_their_stated_rate(double noiseDeg, long seed) {
        Random random = new Random(seed);
        Tally loft = new Tally();
        Tally lie = new Tally();
        Tally bend = new Tally();
        Tally clock = new Tally();
        for (int i = 0; i < CASES; i++) {
            Gauge truth = Gauge.random(random);
            GaugedClub found = noisyFit(truth, random, noiseDeg, 3 + random.nextInt(6));
            loft.count(truth.loftDeg(), found.design().loft());
            lie.count(truth.lieDeg(), found.design().lie());
            bend.count(truth.bendDeg(), found.sleeve().orElseThrow().bend());
            clock.count(truth.offsetH(), found.sleeve().orElseThrow().clockOffset());
        }
        loft.assertHonest("loft");
        lie.assertHonest("lie");
        bend.assertHonest("bend");
        clock.assertHonest("clock");
    }

    private static GaugedClub noisyFit(Gauge truth, Random random, double noiseDeg, int count) {
        List<Reading> readings = truth.readings(random, noiseDeg, Gauge.marks(random, count));
        return GaugeFit.fit(Gauge.club(), Optional.of(Gauge.STATED), readings, noiseDeg);
    }

    private static final class Tally {
        private int determined;
        private int inside;

        void count(double truth, GaugedNumber found) {
            if (!found.held()) {
                determined++;
                double off = Math.abs(found.valueMeasureUnits() - truth);
                inside += off <= NORMAL_95 * found.standardErrorMeasureUnits().orElseThrow() ? 1 : 0;
            }
        }

        void assertHonest(String what) {
            assertTrue(determined > 0.98 * CASES, what + " determined in " + determined);
            // Nearly three standard errors of a share of so many cases.
            assertEquals(0.95, (double) inside / determined, 0.02, what);
        }
    }

    /** One number of one reading 1.5 degrees off among 6 to 8 readings, the gauge good to 0.25. */
    @Test
    void blunder_is_flagged_and_no_other_reading() {
        Random random = new Random(21);
        int alone = 0;
        for (int i = 0; i < CASES; i++) {
            int count = 6 + random.nextInt(3);
            List<Reading> readings = clean(random, count);
            int planted = random.nextInt(count);
            double blunderDeg = random.nextBoolean() ? BLUNDER_DEG : -BLUNDER_DEG;
            GaugedClub found = fit(Gauge.blundered(readings, planted, random.nextBoolean(), blunderDeg));
            boolean caught = found.readings().get(planted).flagged();
            alone += caught && flags(found) == 1 ? 1 : 0;
        }
        assertTrue(alone >= 0.95 * CASES, "only the planted one in " + alone);
    }

    @Test
    void clean_sets_are_seldom_flagged() {
        Random random = new Random(22);
        int flagged = 0;
        for (int i = 0; i < CASES; i++) {
            flagged += flags(fit(clean(random, 3 + random.nextInt(6)))) > 0 ? 1 : 0;
        }
        assertTrue(flagged < 0.05 * CASES, "flagged in " + flagged);
    }

    /** With the blunder left out the numbers are as good as from the other readings alone. */
    @Test
    void fit_leaves_the_flagged_reading_out() {
        List<Reading> readings = new Gauge(9.5, 58, 1.5, 0).readings(new Random(5), 0, 0, 1, 2, 3, 4, 5, 6);
        GaugedClub found = fit(Gauge.blundered(readings, 3, true, BLUNDER_DEG));
        assertTrue(found.readings().get(3).flagged());
        assertEquals(BLUNDER_DEG, found.readings().get(3).loftResidualDeg().orElseThrow(), 1e-6);
        assertEquals(1.5, found.sleeve().orElseThrow().bend().valueMeasureUnits(), 1e-6);
    }

    @Test
    void two_blunders_are_both_flagged() {
        List<Reading> readings = new Gauge(9.5, 58, 1.5, 0).readings(new Random(5), 0, 0, 1, 2, 3, 4, 5, 6, 7);
        List<Reading> one = Gauge.blundered(readings, 1, true, 2.5);
        GaugedClub found = fit(Gauge.blundered(one, 6, false, -2.5));
        assertEquals(2, flags(found));
        assertTrue(found.readings().get(1).flagged() && found.readings().get(6).flagged());
    }

    private static List<Reading> clean(Random random, int count) {
        return Gauge.random(random).readings(random, Repeatability.USUAL_DEG, Gauge.marks(random, count));
    }

    private static GaugedClub fit(List<Reading> readings) {
        return GaugeFit.fit(Gauge.club(), Optional.of(Gauge.STATED), readings, Repeatability.USUAL_DEG);
    }

    private static long flags(GaugedClub found) {
        return found.readings().stream().filter(GaugedReading::flagged).count();
    }
}
