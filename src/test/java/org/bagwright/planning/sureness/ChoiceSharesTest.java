package org.bagwright.planning.sureness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.bagwright.domain.plan.ChoiceSureness;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of draws against the chance that one normal number is above another. */
@Tag("analytic")
class ChoiceSharesTest {
    private static final double[] NONE = {};
    /** Four standard errors of a share of the draws. */
    private static final double MONTE_CARLO = 4 * Math.sqrt(0.25 / ChoiceShares.DRAWS);

    private static ChoiceSureness first(ToyBag toy, long seed) {
        return new ChoiceShares(toy.bag(), List.of(0), seed).all().get(0);
    }

    /** Club 1 is best where its carry is above that of club 2: the gap is normal with the root of the sum of squares. */
    @ParameterizedTest
    @CsvSource({"0, 3, 4, 0", "2, 3, 4, 0", "-5, 3, 4, 0", "2, 3, 4, 20", "1, 0, 2, 5"})
    void share_isTheChanceThatOneNormalIsAboveAnother(double aheadM, double ownM, double otherM, double sharedM) {
        ToyBag toy = new ToyBag()
                .club(150 + aheadM, new double[] {sharedM}, new double[] {ownM})
                .club(150, new double[] {sharedM}, new double[] {otherM});
        double chance = new NormalDistribution(null, 0, Math.hypot(ownM, otherM)).cumulativeProbability(aheadM);
        assertEquals(chance, first(toy, 1).plannedRatio(), MONTE_CARLO);
    }

    /** Settings of one club share what is not known of the club, so that the longer of them stays the longer. */
    @Test
    void optionsOfOneClub_moveTogether() {
        ToyBag toy = new ToyBag().club(151, NONE, new double[] {8}).option(150, NONE, new double[] {8});
        assertEquals(1, first(toy, 1).plannedRatio());
    }

    @Test
    void certainCarries_areSure() {
        ToyBag toy = new ToyBag().club(150, NONE, NONE).club(151, NONE, NONE);
        assertEquals(0, first(toy, 1).plannedRatio());
        assertEquals(List.of(new ChoiceSureness.Share(1, 1)), first(toy, 1).best());
    }

    /** A tenth of a metre less between settings of one club that cost the same: nobody could tell them apart. */
    @Test
    void alikeOptions_countAsOne() {
        ToyBag toy = new ToyBag().club(150, NONE, new double[] {1}).option(150.05, NONE, new double[] {1});
        assertEquals(1, first(toy, 1).plannedRatio());
    }

    @Test
    void shares_addUpToAll() {
        ToyBag toy = new ToyBag()
                .club(150, NONE, new double[] {5})
                .club(151, NONE, new double[] {5})
                .club(152, NONE, new double[] {5});
        ChoiceSureness sureness = first(toy, 3);
        assertEquals(
                1,
                sureness.best().stream()
                        .mapToDouble(ChoiceSureness.Share::caseRatio)
                        .sum(),
                1e-12);
        assertEquals(2, sureness.best().get(0).option());
    }

    @Test
    void seed_decidesTheDraws() {
        ToyBag toy = new ToyBag().club(150, NONE, new double[] {5}).club(151, NONE, new double[] {5});
        assertEquals(first(toy, 1), first(toy, 1));
        assertNotEquals(first(toy, 1), first(toy, 2));
    }

    @Test
    void words_tellCases() {
        assertEquals("best in 79 of 100 likely cases", new ChoiceSureness(0, 0.79, List.of()).inWords());
    }
}
