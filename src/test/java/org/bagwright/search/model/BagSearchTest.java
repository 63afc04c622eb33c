package org.bagwright.search.model;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.PlanBounds;
import org.bagwright.domain.plan.PlanProof;
import org.bagwright.search.BagSearch;
import org.bagwright.search.Enumeration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BagSearchTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 60);
    private static final Comparator<BagScore> BY_SCORE =
            Comparator.comparingLong(BagScore::hardBreaks).thenComparingDouble(BagScore::penaltyPoints);
    private static final Terms BROKEN = TestBags.loft(9, 2500);

    private static BagPlan plan(BagOptions bag) {
        return TestBags.plan(new BagSearch(LIMITS), List.of(bag)).bags().get(0);
    }

    /** The plan of a bag by itself, which must be proven. */
    private static BagPlan proven(BagOptions bag) {
        BookPlan plan = TestBags.plan(new BagSearch(LIMITS), List.of(bag));
        assertTrue(plan.proven());
        assertEquals(plan.bags().get(0).score().penaltyPoints(), plan.bounds().penaltyPoints());
        return plan.bags().get(0);
    }

    private static List<BagOptions> smallBags(int count) {
        return LongStream.range(0, count).mapToObj(TestBags::small).toList();
    }

    @Tag("analytic")
    @Test
    void plan_isTheBestOfAllChoicesOnTwoHundredBags() {
        List<BagOptions> bags = smallBags(200);
        BookPlan plan = TestBags.plan(new BagSearch(LIMITS), bags);
        assertTrue(plan.proven());
        List<BagPlan> plans = plan.bags();
        for (int place = 0; place < bags.size(); place++) {
            BagPlan found = plans.get(place);
            List<Integer> best = Enumeration.best(bags.get(place));
            BagScore score = new PlainScore(bags.get(place), best).score();
            assertEquals(score, found.score(), "bag " + place);
            assertEquals(
                    TestBags.changes(bags.get(place), best),
                    TestBags.changes(bags.get(place), found.chosen()),
                    "bag " + place);
        }
    }

    /** Guards the test above: its bags must hold what could go wrong. */
    @Tag("analytic")
    @Test
    void smallBags_holdEverySortOfLimit() {
        List<BagOptions> bags = smallBags(200);
        List<BagPlan> plans = TestBags.plan(new BagSearch(LIMITS), bags).bags();
        long broken =
                plans.stream().filter(plan -> plan.score().hardBreaks() > 0).count();
        long limited =
                bags.stream().filter(bag -> bag.mostChanges().isPresent()).count();
        long withPutter = bags.stream()
                .filter(bag -> bag.slots().stream()
                        .anyMatch(slot -> !slot.main().kind().carries()))
                .count();
        long closedToday = bags.stream()
                .filter(bag -> bag.slots().stream()
                        .anyMatch(club -> !club.today().open()
                                && club.openIndexes().size() < club.options().size()))
                .count();
        assertAll(
                () -> assertTrue(broken > 20 && broken < 180, "broken " + broken),
                () -> assertTrue(limited > 50 && limited < 180, "limited " + limited),
                () -> assertTrue(withPutter > 20, "with putter " + withPutter),
                () -> assertTrue(closedToday >= 10, "today closed in " + closedToday));
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 1, 4, 20})
    void plan_ofAFullBagIsProven(int mostChanges) {
        OptionalInt most = mostChanges < 0 ? OptionalInt.empty() : OptionalInt.of(mostChanges);
        BagOptions bag = TestBags.full(3, 100, most);
        BagSearch search = new BagSearch(LIMITS);
        BookPlan book = TestBags.plan(search, List.of(bag));
        BagPlan plan = book.bags().get(0);
        assertTrue(book.proven());
        assertFalse(search.cappedByTime());
        assertEquals(new PlainScore(bag, plan.chosen()).score(), plan.score());
        assertTrue(mostChanges < 0 || TestBags.changes(bag, plan.chosen()) <= mostChanges);
        assertTrue(BY_SCORE.compare(plan.score(), new PlainScore(bag, TestBags.today(bag)).score()) <= 0);
    }

    /** More changes can only help; a bag with as many as the free plan takes gets the free plan. */
    @Tag("analytic")
    @Test
    void plan_getsNoWorseWithMoreChangesAllowed() {
        BagPlan free = plan(TestBags.full(4, 60, OptionalInt.empty()));
        int taken = TestBags.changes(TestBags.full(4, 60, OptionalInt.empty()), free.chosen());
        List<BagOptions> bags = IntStream.rangeClosed(0, taken)
                .mapToObj(most -> TestBags.full(4, 60, OptionalInt.of(most)))
                .toList();
        List<BagPlan> plans = TestBags.plan(new BagSearch(LIMITS), bags).bags();
        for (int most = 1; most <= taken; most++) {
            BagScore fewer = plans.get(most - 1).score();
            assertTrue(BY_SCORE.compare(plans.get(most).score(), fewer) <= 0, "most changes " + most);
        }
        assertEquals(free, plans.get(taken));
    }

    @Tag("regression")
    @Test
    void plan_isTheSameTwiceAndInAnyCompany() {
        List<BagOptions> bags = List.of(TestBags.full(5, 40, OptionalInt.of(6)), TestBags.small(8));
        BagSearch search = new BagSearch(LIMITS);
        List<BagPlan> plans = TestBags.plan(search, bags).bags();
        assertEquals(plans, TestBags.plan(search, bags).bags());
        assertEquals(plans, List.of(plan(bags.get(0)), plan(bags.get(1))));
    }

    /** Even where today's bag breaks a must that a change would meet. */
    @Tag("analytic")
    @Test
    void plan_withNoChangesAllowedIsTodaysBag() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_MUST,
                OptionalInt.of(0),
                10,
                List.of(
                        TestBags.iron(
                                1, TestBags.option(150, 0, BROKEN, true), TestBags.option(150, 1, TestBags.FREE, true)),
                        TestBags.iron(2, TestBags.carrying(160), TestBags.option(140, 1, TestBags.FREE, true))));
        BagPlan plan = proven(bag);
        assertEquals(TestBags.today(bag), plan.chosen());
        assertTrue(plan.score().hardBreaks() > 0);
    }

    @Tag("analytic")
    @Test
    void plan_leavesAClosedSettingOfToday() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_AIM,
                OptionalInt.of(0),
                10,
                List.of(TestBags.iron(
                        1,
                        TestBags.option(150, 0, TestBags.FREE, false),
                        TestBags.option(150, 2, TestBags.FREE, true),
                        TestBags.option(150, 1, TestBags.loft(5, 0).plus(Terms.of(Measure.CHANGE, 0.05, 0)), true))));
        assertEquals(new BagPlan(List.of(2), new BagScore(1000, 5.05)), proven(bag));
    }

    @Tag("analytic")
    @Test
    void plan_breaksAsLittleAsItCanWhereItMustBreak() {
        BagOptions bag = TestBags.bag(TestBags.iron(
                1,
                TestBags.option(150, 0, TestBags.loft(0, 300), true),
                TestBags.option(150, 1, TestBags.loft(8, 200), true),
                TestBags.option(150, 1, TestBags.loft(7, 200), true)));
        assertEquals(new BagPlan(List.of(2), new BagScore(200, 7)), proven(bag));
    }

    @Tag("analytic")
    @Test
    void plan_prefersFewerChangesThenTheEarlierOption() {
        BagOptions bag = TestBags.bag(TestBags.iron(
                1,
                TestBags.option(150, 0, TestBags.loft(1, 0), true),
                TestBags.option(151, 2, TestBags.FREE, true),
                TestBags.option(152, 1, TestBags.FREE, true),
                TestBags.option(153, 1, TestBags.FREE, true)));
        assertEquals(List.of(2), plan(bag).chosen());
    }

    @Tag("analytic")
    @Test
    void plan_ofPuttersOnlyHasNoGaps() {
        BagOptions bag = TestBags.bag(TestBags.club(
                ClubKind.PUTTER,
                1,
                List.of(
                        TestBags.option(Double.NaN, 0, Terms.of(Measure.LIE, 1, 0), true),
                        TestBags.option(Double.NaN, 1, TestBags.FREE, true))));
        assertEquals(new BagPlan(List.of(1), new BagScore(0, 0)), proven(bag));
    }

    @Tag("analytic")
    @Test
    void plan_ofNoBagsIsEmpty() {
        assertEquals(
                new BookPlan(List.of(), new PlanProof(new PlanBounds(0, 0, 0), true, List.of())),
                TestBags.plan(new BagSearch(LIMITS), List.of()));
    }

    @Tag("analytic")
    @Test
    void plan_withoutACarryIsRefused() {
        BagOptions bag = TestBags.bag(TestBags.iron(
                1,
                TestBags.option(
                        TestBags.club(ClubKind.IRON, 1, OptionalDouble.empty()), Double.NaN, 0, TestBags.FREE, true)));
        assertThrows(IllegalArgumentException.class, () -> plan(bag));
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void limits_needTime(double mostS) {
        assertThrows(IllegalArgumentException.class, () -> new SearchLimits(1, mostS));
    }
}
