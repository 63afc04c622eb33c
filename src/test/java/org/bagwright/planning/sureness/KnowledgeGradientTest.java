package org.bagwright.planning.sureness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.plan.MeasureNext;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a measurement is worth, against the closed form for two alternatives and draws for more. */
@Tag("analytic")
class KnowledgeGradientTest {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double[] NONE = {};
    private static final double NOISE_M2 = 4;

    private static KnowledgeGradient.Value value(BagOptions bag, int hit) {
        Chain chain = new Chain(bag, List.of(0), 100, 0.01);
        Belief belief = new Belief(chain);
        return new KnowledgeGradient(chain, belief.expected())
                .of(outcome -> belief.afterShots(chain.option(hit), NOISE_M2, outcome));
    }

    /**
     * Frazier, Powell and Dayanik 2008 and 2009: with two alternatives a measurement is worth {@code s f(-|d| / s)} with
     * {@code f(z) = z Phi(z) + phi(z)}, d how far apart they are expected to be and s how far the measurement moves that.
     */
    private static double closedForm(double apart, double move) {
        double z = -Math.abs(apart) / move;
        return move * (z * NORMAL.cumulativeProbability(z) + NORMAL.density(z));
    }

    @ParameterizedTest
    @CsvSource({"0, 5, 0", "1, 5, 0", "3, 5, 0", "-2, 6, 0", "2, 5, 3", "0, 1, 10"})
    void twoAlternatives_haveTheClosedForm(double aheadM, double ownM, double sharedM) {
        BagOptions bag = new ToyBag()
                .club(150 + aheadM, new double[] {sharedM}, new double[] {ownM})
                .club(150, new double[] {sharedM}, new double[] {2})
                .bag();
        double outcomeSdM = Math.sqrt(ownM * ownM + sharedM * sharedM + NOISE_M2);
        double moveM = ownM * ownM / outcomeSdM;
        double expected = closedForm(aheadM, moveM);
        assertEquals(expected, value(bag, 0).gainPoints(), 0.02 * moveM);
    }

    /** What moves both alike cannot change the choice. */
    @Test
    void whatAllClubsShare_isWorthNothing() {
        BagOptions bag = new ToyBag()
                .club(150, new double[] {9}, NONE)
                .club(151, new double[] {9}, NONE)
                .bag();
        assertEquals(0, value(bag, 0).gainPoints(), 1e-9);
        assertEquals(0, value(bag, 0).changeRatio());
    }

    @Test
    void certainCarries_areWorthNothing() {
        BagOptions bag =
                new ToyBag().club(150, NONE, NONE).club(151, NONE, NONE).bag();
        assertEquals(0, value(bag, 0).gainPoints());
    }

    /** Four alternatives that vary together, against the mean of 200,000 draws of how the measurement comes out. */
    @Test
    void moreAlternatives_areWorthWhatDrawsSay() {
        double[] carryM = {150, 151.5, 149, 150.5};
        double[][] sharedM = {{3, 1}, {1, 4}, {-2, 3}, {0, -3}};
        ToyBag toy = new ToyBag();
        for (int club = 0; club < carryM.length; club++) {
            toy.club(carryM[club], sharedM[club], new double[] {2 + club});
        }
        double[] moveM = new double[carryM.length];
        double outcomeSdM = Math.sqrt(9 + 1 + 4 + NOISE_M2);
        Arrays.setAll(moveM, club -> (3 * sharedM[club][0] + sharedM[club][1] + (club == 0 ? 4 : 0)) / outcomeSdM);
        Normals normals = new Normals(5);
        double sum = 0;
        int draws = 200_000;
        for (int draw = 0; draw < draws; draw++) {
            double outcome = normals.next();
            double best = Double.NEGATIVE_INFINITY;
            for (int club = 0; club < carryM.length; club++) {
                best = Math.max(best, carryM[club] + outcome * moveM[club]);
            }
            sum += best - 151.5;
        }
        assertEquals(sum / draws, value(toy.bag(), 0).gainPoints(), 0.03);
    }

    /** The club of which least is known is worth most; the one that is known already is not told as worth anything. */
    @Test
    void advice_namesTheClubOfWhichLeastIsKnown() {
        BagOptions bag = new ToyBag()
                .club(150, NONE, new double[] {1})
                .club(150, NONE, new double[] {12})
                .club(149, NONE, new double[] {0.1})
                .bag();
        MeasureNext next = new BagSureness(bag, List.of(0)).measureNext(club -> false);
        MeasureNext.Advice best = next.first().orElseThrow();
        assertEquals("Club 2", best.club());
        assertEquals("5 shots with the Club 2", best.inWords());
        assertEquals(MeasureNext.Worth.MAYBE, best.worth());
        assertEquals(
                "5 shots with the Club 2; may change the plan", next.inWords().orElseThrow());
        assertTrue(next.advice().stream()
                .filter(advice -> advice.club().equals("Club 3"))
                .allMatch(advice -> advice.worth() == MeasureNext.Worth.LITTLE));
    }

    @Test
    void allClubsWithShotsAndLittleToGain_isToldOnce() {
        BagOptions known = new ToyBag()
                .from(CarryOrigin.OWN_HERE)
                .club(150, NONE, new double[] {1})
                .club(140, NONE, new double[] {1})
                .bag();
        BagOptions lent = new ToyBag()
                .from(CarryOrigin.LENT)
                .club(150, NONE, new double[] {1})
                .club(140, NONE, new double[] {1})
                .bag();
        MeasureNext enough = new BagSureness(known, List.of(0)).measureNext(club -> false);
        MeasureNext more = new BagSureness(lent, List.of(0)).measureNext(club -> false);
        assertTrue(enough.enough());
        assertEquals("further measuring gains little", enough.inWords().orElseThrow());
        assertTrue(more.inWords().orElseThrow().endsWith("; little to gain"), more.toString());
    }
}
