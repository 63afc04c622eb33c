package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.PlanBounds;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tries to make a plan claim too much by ending searches at any moment. */
@Tag("analytic")
class UnfinishedSearchTest {
    private static final double LONG_S = 600;
    /** The search counts in millionths of a point, each term rounded by itself. */
    private static final double ROUNDING_POINTS = 2e-5;

    private static final int BOOKS = 80;

    private int unproven;
    private int worse;
    private int impossible;
    private int unsettled;
    private int open;

    private static BagSearch any(long seed, double mostS, Random random) {
        SearchLimits usual = new SearchLimits(seed, mostS);
        return new BagSearch(usual.counting(1 + random.nextInt(3), 0.5 * random.nextDouble(), upTo(random, 1_000_000)));
    }

    /** As likely small as large, on a logarithmic scale; 0 too. */
    private static long upTo(Random random, double most) {
        return (long) Math.expm1(random.nextDouble() * Math.log1p(most));
    }

    private void assertTrueStatements(String name, BookOptions book, BagSearch search) {
        BookPlan plan = search.plan(book);
        List<List<Integer>> chosen = plan.bags().stream().map(BagPlan::chosen).toList();
        for (int bag = 0; bag < chosen.size(); bag++) {
            for (int slot = 0; slot < chosen.get(bag).size(); slot++) {
                List<Integer> open = book.bags().get(bag).slots().get(slot).openIndexes();
                assertTrue(open.contains(chosen.get(bag).get(slot)), name + ": open");
            }
        }
        Cost cost = HandScore.cost(book, chosen);
        Cost best = Enumeration.best(book).cost();
        double least = Enumeration.leastMicropoints(book, cost) / 1e6;
        double points = plan.bags().stream()
                .mapToDouble(bag -> bag.score().penaltyPoints())
                .sum();
        assertTrue(
                plan.bounds().penaltyPoints() <= least + ROUNDING_POINTS,
                name + ": bound " + plan.bounds().penaltyPoints() + ", " + least);
        assertTrue(plan.bounds().penaltyPoints() <= points, name + ": bound above its plan");
        PlanBounds bounds = plan.bounds();
        assertTrue(
                new Cost(bounds.hard(), bounds.mustThousandths(), 0).compareTo(best) <= 0,
                name + ": bounds " + bounds + ", " + best);
        impossible += bounds.breakSomething() ? 1 : 0;
        unsettled += best.excess() + best.breaks() > 0 && !bounds.breakSomething() ? 1 : 0;
        assertTrue(!plan.proven() || best.equals(cost), name + ": proven");
        assertEquals(cost.micropoints() / 1e6, points, ROUNDING_POINTS, name + ": points");
        unproven += plan.proven() ? 0 : 1;
        open += plan.bounds().penaltyPoints() < points - ROUNDING_POINTS ? 1 : 0;
        worse += best.equals(cost) ? 0 : 1;
    }

    @Test
    void plan_withAnyLimitOfStepsTellsTheTruth() {
        Random random = new Random(1);
        for (long seed = 0; seed < BOOKS; seed++) {
            assertTrueStatements("book " + seed, TestBooks.small(seed), any(seed, LONG_S, random));
        }
        assertTrue(open > 5, "bounds below their plans " + open);
        assertTrue(unproven > 10, "unproven " + unproven);
        assertTrue(unproven < BOOKS - 10, "unproven " + unproven);
        assertTrue(worse > 1, "not the best " + worse);
        assertTrue(impossible > 5, "musts that cannot be met " + impossible);
        assertTrue(unsettled > 1, "musts that are not settled " + unsettled);
    }

    @Test
    void plan_withAnyCapOfTimeTellsTheTruth() {
        Random random = new Random(2);
        for (long seed = 0; seed < BOOKS; seed++) {
            double mostS = 1e-6 * (1 + upTo(random, 30_000));
            assertTrueStatements("book " + seed, TestBooks.rich(seed), new BagSearch(new SearchLimits(seed, mostS)));
        }
        assertUnfinished();
    }

    @Test
    void plan_stoppedAtAnyMomentTellsTheTruth() throws InterruptedException {
        Random random = new Random(3);
        for (long seed = 0; seed < BOOKS; seed++) {
            BagSearch search = any(seed, LONG_S, random);
            long waitNs = 1_000 * upTo(random, 30_000);
            Thread stopping = new Thread(() -> {
                LockSupport.parkNanos(waitNs);
                search.stop();
            });
            stopping.start();
            assertTrueStatements("book " + seed, TestBooks.small(seed), search);
            stopping.join();
        }
        assertUnfinished();
    }

    /** A bag that pays so much to break nothing counts with that in the bound, though another bag is not settled. */
    @ParameterizedTest
    @ValueSource(doubles = {50, 1e14})
    void bound_countsWhatKeepsTheMustsOfABagThatIsSettled(double points) {
        BagOptions dear = TestBags.bag(TestBags.iron(
                1,
                TestBags.option(150, 0, TestBags.loft(0, 500), true),
                TestBags.option(150, 1, TestBags.loft(points, 0), true)));
        BagOptions large = TestBags.full(3, 100, OptionalInt.empty());
        BookPlan plan = new BagSearch(new SearchLimits(1, LONG_S).counting(1, 0.5, 100))
                .plan(new BookOptions(List.of(dear, large), List.of()));
        assertEquals(List.of(1), plan.bags().get(0).chosen());
        assertFalse(plan.proven());
        assertFalse(plan.bounds().breakSomething());
        assertTrue(
                plan.bounds().penaltyPoints() >= points,
                "bound " + plan.bounds().penaltyPoints());
    }

    /** Searches that all end before they are cut short say nothing of those that do not; counted limits alone leave 16 open. */
    private void assertUnfinished() {
        assertTrue(unproven > 24, "unproven " + unproven);
        assertTrue(open > 24, "bounds below their plans " + open);
    }
}
