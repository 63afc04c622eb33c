package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagPlan;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** The planner's own search, as it works on a bag too big for the chain: here every bag is. */
class LocalSearchTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);
    private static final BagSearch EXACT = new BagSearch(LIMITS);

    private static BagSearch searching(long seed, long scoreCalculations) {
        return new BagSearch(
                new SearchLimits(seed, 600), new Effort(-1, scoreCalculations, EnvironmentMode.REPRODUCIBLE));
    }

    @Test
    @Tag("analytic")
    void plan_ofThreeClubsFindsTheBestOfAllChoices() {
        List<BagOptions> bags =
                LongStream.range(0, 50).mapToObj(TestBags::small).toList();
        List<BagPlan> plans = searching(1, 5_000).plan(bags);
        for (int place = 0; place < bags.size(); place++) {
            List<Integer> best = Enumeration.best(bags.get(place));
            assertEquals(
                    BagSearch.score(bags.get(place), best), plans.get(place).score(), "bag " + place);
        }
    }

    @Test
    @Tag("analytic")
    void plan_checkedAtEveryStepRunsClean() {
        List<BagOptions> bags =
                LongStream.range(0, 10).mapToObj(TestBags::small).toList();
        BagSearch checked = new BagSearch(LIMITS, new Effort(-1, 200, EnvironmentMode.FULL_ASSERT));
        List<BagPlan> plans = checked.plan(bags);
        for (int place = 0; place < bags.size(); place++) {
            BagPlan plan = plans.get(place);
            assertEquals(BagSearch.score(bags.get(place), plan.chosen()), plan.score(), "bag " + place);
        }
    }

    @ParameterizedTest
    @Tag("analytic")
    @ValueSource(ints = {0, 3, 8})
    void plan_keepsItsChangesAndItsBound(int mostChanges) {
        BagOptions bag = TestBags.full(6, 40, OptionalInt.of(mostChanges));
        BagPlan plan = searching(1, 20_000).plan(List.of(bag)).get(0);
        BagPlan exact = EXACT.plan(List.of(bag)).get(0);
        assertTrue(TestBags.changes(bag, plan.chosen()) <= mostChanges);
        assertTrue(Enumeration.BY_SCORE.compare(exact.score(), plan.score()) <= 0);
        assertTrue(plan.boundPoints() <= exact.score().penaltyPoints());
        assertFalse(plan.proven());
    }

    /** Our own output: how near the search comes to the exact best of a bag of 14 clubs with 50 options each. */
    @Test
    @Tag("regression")
    void plan_ofAFullBagComesNearTheBest() {
        BagOptions bag = TestBags.full(7, 50, OptionalInt.empty());
        BagPlan plan = searching(1, 100_000).plan(List.of(bag)).get(0);
        BagPlan exact = EXACT.plan(List.of(bag)).get(0);
        assertEquals(exact.score().hardBreaks(), plan.score().hardBreaks());
        assertTrue(plan.score().penaltyPoints() <= 1.05 * exact.score().penaltyPoints());
    }

    @Test
    @Tag("analytic")
    void plan_isTheSameForTheSameSeedOnly() {
        List<BagOptions> bags =
                List.of(TestBags.full(8, 60, OptionalInt.of(5)), TestBags.full(9, 60, OptionalInt.empty()));
        List<BagPlan> plans = searching(1, 3_000).plan(bags);
        assertEquals(plans, searching(1, 3_000).plan(bags));
        assertFalse(plans.equals(searching(2, 3_000).plan(bags)));
    }

    @Test
    @Tag("analytic")
    void plan_searchesOnlyBagsTooBigForTheChain() {
        BagOptions easy = TestBags.small(3);
        BagOptions big = TestBags.full(10, 60, OptionalInt.empty());
        long pairs = new Chain(new SearchBag(easy)).work();
        BagSearch search = new BagSearch(LIMITS, new Effort(pairs, 5_000, EnvironmentMode.REPRODUCIBLE));
        List<BagPlan> plans = search.plan(List.of(easy, big));
        assertEquals(EXACT.plan(List.of(easy)).get(0), plans.get(0));
        assertEquals(searching(1, 5_000).plan(List.of(big)).get(0), plans.get(1));
        assertTrue(plans.get(0).proven());
        assertFalse(plans.get(1).proven());
    }

    @Test
    @Tag("analytic")
    void cappedByTime_tellsWhichEndDecided() {
        List<BagOptions> bags = List.of(TestBags.full(11, 60, OptionalInt.empty()));
        BagSearch hurried =
                new BagSearch(new SearchLimits(1, 0.001), new Effort(-1, 1L << 40, EnvironmentMode.REPRODUCIBLE));
        assertEquals(
                BagSearch.score(bags.get(0), hurried.plan(bags).get(0).chosen()),
                hurried.plan(bags).get(0).score());
        assertTrue(hurried.cappedByTime());
        BagSearch counted = searching(1, 1_000);
        counted.plan(bags);
        assertFalse(counted.cappedByTime());
    }
}
