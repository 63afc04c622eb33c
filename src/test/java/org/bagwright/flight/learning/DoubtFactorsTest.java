package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.MathArrays;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.flight.golfer.TestBags;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The doubts of carries in factors against {@code g Sigma g'} of a golfer with shots of three of five clubs. */
@Tag("analytic")
class DoubtFactorsTest {
    private static final List<Club> BAG = TestBags.genericBag();
    private static final ModelSketch SKETCH =
            new ModelSketch(BAG.get(0), BAG.get(1), BAG.get(6), BAG.get(8), BAG.get(13));
    private static final Learning GOLFER = SKETCH.learn(
            SKETCH.group(
                    0,
                    new ShotOf("driver")
                            .ballMph(139)
                            .launch(12)
                            .spin(2700)
                            .carryYd(215)
                            .shot()),
            SKETCH.group(2, new ShotOf("5 iron").ballMph(115).carryYd(165).shot()),
            SKETCH.group(
                    3, new ShotOf("7 iron").headMph(77).launch(19).carryYd(147).shot()));

    /** The carry of each club 2 degrees to either side and at its stated loft. */
    private static List<double[]> all() {
        List<double[]> slopes = new ArrayList<>();
        for (int club = 0; club < 5; club++) {
            for (double aboutDeg = -2; aboutDeg <= 2; aboutDeg += 2) {
                double loftDeg = SKETCH.clubs.get(club).club().loftDeg() + aboutDeg;
                slopes.add(SKETCH.carrySlopesM(GOLFER, club, loftDeg));
            }
        }
        return slopes;
    }

    private static DoubtFactors factors(List<double[]> kept) {
        return new DoubtFactors(GOLFER.posterior(), SKETCH.unknowns, 5, kept);
    }

    private static double variance(double[] one, double[] less) {
        return GOLFER.posterior().variance(MathArrays.ebeSubtract(one, less));
    }

    @Test
    void carry_hasItsWholeVariance() {
        DoubtFactors factors = factors(all());
        for (int i = 0; i < 15; i++) {
            double expected = GOLFER.posterior().variance(all().get(i));
            assertEquals(1, factors.of(i / 3, all().get(i)).varianceM2() / expected, 1e-9);
        }
    }

    /** Two settings of four clubs: no more directions than are kept, so that gaps and changes are exact. */
    @Test
    void directionsThatSuffice_giveExactGapsAndChanges() {
        List<double[]> all = all();
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            if (i % 3 != 1) {
                kept.add(all.get(i));
            }
        }
        assertEquals(CarryDoubt.SHARED, kept.size());
        DoubtFactors factors = factors(kept);
        for (int i = 0; i < kept.size(); i++) {
            for (int j = 0; j < i; j++) {
                CarryDoubt one = factors.of(i / 2, kept.get(i));
                CarryDoubt other = factors.of(j / 2, kept.get(j));
                double found = i / 2 == j / 2 ? one.changeVarianceM2(other) : one.gapVarianceM2(other);
                assertEquals(1, found / variance(kept.get(i), kept.get(j)), 1e-7, i + " and " + j);
            }
        }
    }

    /** With more directions than are kept a gap is off by no more than twice the geometric mean of what is left. */
    @Test
    void directionsLeftOut_areBounded() {
        List<double[]> all = all();
        DoubtFactors factors = factors(all);
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < i; j++) {
                CarryDoubt one = factors.of(i / 3, all.get(i));
                CarryDoubt other = factors.of(j / 3, all.get(j));
                double exact = variance(all.get(i), all.get(j));
                double left = Math.abs(leftM(one) * leftM(other));
                if (i / 3 == j / 3) {
                    double found = one.changeVarianceM2(other);
                    assertTrue(found <= exact * (1 + 1e-9) + 1e-9 && exact - found <= 4 * left + 1e-9);
                } else {
                    assertTrue(Math.abs(one.gapVarianceM2(other) - exact) <= 2 * left + 1e-9 * exact);
                }
                assertTrue(left < 0.01 * one.varianceM2(), "little is left out");
            }
        }
    }

    private static double leftM(CarryDoubt doubt) {
        return doubt.ownM(doubt.ownCount() - 1);
    }
}
