package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagPlan;
import org.bagwright.domain.BookOptions;
import org.bagwright.domain.BookPlan;
import org.bagwright.domain.StockLimit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** The planner's own search, as it works on bags that are no chains, too big for one, or short of stock. */
class LocalSearchTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);

    private static BagSearch searching(long seed, long scoreCalculations) {
        return new BagSearch(
                new SearchLimits(seed, 600), new Effort(-1, scoreCalculations, EnvironmentMode.REPRODUCIBLE));
    }

    private static List<List<Integer>> chosen(BookPlan plan) {
        return plan.bags().stream().map(BagPlan::chosen).toList();
    }

    private static Cost cost(BookOptions book, BookPlan plan) {
        return HandScore.cost(book, chosen(plan));
    }

    private static List<BookOptions> smallBooks(int count) {
        return LongStream.range(0, count).mapToObj(TestBooks::small).toList();
    }

    private static BookOptions book(BagOptions... bags) {
        return new BookOptions(List.of(bags), List.of());
    }

    /** Lays a bag by looking at all its choices within what is free. */
    private static BagRelay enumerating(BookOptions book) {
        return (bag, chosen, free) -> {
            List<StockLimit> stock = new ArrayList<>();
            for (int item = 0; item < free.size(); item++) {
                stock.add(TestBooks.limit(item, free.get(item)));
            }
            return Enumeration.best(new BookOptions(List.of(book.bags().get(bag)), stock))
                    .chosen()
                    .get(0);
        };
    }

    @Test
    @Tag("analytic")
    void plan_ofSmallBooksFindsTheBestOfAllChoices() {
        List<BookOptions> books = smallBooks(30);
        for (int place = 0; place < books.size(); place++) {
            BookOptions book = books.get(place);
            BookPlan plan = searching(1, 4_000).plan(book);
            assertEquals(Enumeration.best(book).cost(), cost(book, plan), "book " + place);
        }
    }

    /** Bound and proof may be wrong in one direction only. */
    @Test
    @Tag("analytic")
    void plan_isProvenOnlyWhereItIsBestAndItsBoundHolds() {
        int proven = 0;
        for (BookOptions book : smallBooks(60)) {
            BookPlan plan = new BagSearch(LIMITS, new Effort(1_000_000, 50, EnvironmentMode.REPRODUCIBLE)).plan(book);
            Cost best = Enumeration.best(book).cost();
            assertTrue(!plan.proven() || best.equals(cost(book, plan)));
            boolean asFew = best.breaks() == cost(book, plan).breaks()
                    && best.excess() == cost(book, plan).excess();
            assertTrue(!asFew || plan.boundPoints() <= best.micropoints() / 1e6 + 1e-4);
            proven += plan.proven() ? 1 : 0;
        }
        assertTrue(proven > 2, "proven " + proven);
    }

    @Test
    @Tag("analytic")
    void plan_checkedAtEveryStepRunsClean() {
        List<BookOptions> books = new ArrayList<>(smallBooks(10));
        books.add(TestBooks.full(1, 2, 10));
        books.add(TestBooks.crowded(1));
        for (BookOptions book : books) {
            boolean small = book.bags().get(0).slots().size() < 4;
            BagSearch checked = new BagSearch(
                    LIMITS,
                    new Effort(-1, 100, EnvironmentMode.FULL_ASSERT),
                    own -> small ? enumerating(own) : BagRelay.NONE);
            BookPlan plan = checked.plan(book);
            assertEquals(PlainScore.cost(book, chosen(plan)), cost(book, plan));
        }
    }

    /** With no local search to speak of, laying each bag anew must do all the work where bags share nothing. */
    @Test
    @Tag("analytic")
    void relay_aloneSolvesBagsThatShareNothing() {
        int searched = 0;
        for (BookOptions book : smallBooks(30)) {
            BookOptions apart = new BookOptions(
                    book.bags(),
                    book.stock().stream()
                            .map(limit -> new StockLimit(limit.item(), 1000))
                            .toList());
            BagSearch relaying = new BagSearch(
                    LIMITS, new Effort(-1, 1, EnvironmentMode.REPRODUCIBLE), LocalSearchTest::enumerating);
            Cost best = Enumeration.best(apart).cost();
            assertEquals(best, cost(apart, relaying.plan(apart)));
            searched += best.equals(cost(apart, searching(1, 1).plan(apart))) ? 0 : 1;
        }
        assertTrue(searched > 10, "books that need the relay: " + searched);
    }

    @ParameterizedTest
    @Tag("analytic")
    @ValueSource(ints = {0, 3})
    void plan_keepsItsChangesAndItsBound(int mostChanges) {
        BagOptions bag = TestBags.full(6, 25, OptionalInt.of(mostChanges));
        BookPlan plan = searching(1, 5_000).plan(book(bag));
        BookPlan exact = new BagSearch(LIMITS).plan(book(bag));
        assertTrue(TestBags.changes(bag, plan.bags().get(0).chosen()) <= mostChanges);
        assertTrue(cost(book(bag), exact).compareTo(cost(book(bag), plan)) <= 0);
        assertTrue(plan.boundPoints() <= exact.bags().get(0).score().penaltyPoints());
        assertFalse(plan.proven());
    }

    /** Our own output: how near the search comes to the exact best of a bag of 14 clubs with 50 options each. */
    @Test
    @Tag("regression")
    void plan_ofAFullBagComesNearTheBest() {
        BookOptions book = book(TestBags.full(7, 50, OptionalInt.empty()));
        Cost found = cost(book, searching(1, 100_000).plan(book));
        Cost exact = cost(book, new BagSearch(LIMITS).plan(book));
        assertEquals(exact.breaks(), found.breaks());
        assertTrue(found.micropoints() <= 1.05 * exact.micropoints());
    }

    @Test
    @Tag("analytic")
    void plan_isTheSameForTheSameSeedOnly() {
        BookOptions book = TestBooks.full(8, 2, 20);
        BookPlan plan = searching(1, 2_000).plan(book);
        assertEquals(plan, searching(1, 2_000).plan(book));
        assertNotEquals(plan, searching(2, 2_000).plan(book));
    }

    @Test
    @Tag("analytic")
    void plan_ofABagThatSharesNothingDependsOnNoOther() {
        BagOptions alone = TestBooks.small(1).bags().get(0);
        BookOptions apart =
                new BookOptions(List.of(alone, TestBooks.small(2).bags().get(0)), List.of());
        List<BagPlan> plans = searching(1, 500).plan(apart).bags();
        assertEquals(searching(1, 500).plan(book(alone)).bags().get(0), plans.get(0));
        assertEquals(searching(1, 500).plan(book(apart.bags().get(1))).bags().get(0), plans.get(1));
    }

    @Test
    @Tag("analytic")
    void cappedByTime_tellsWhichEndDecided() {
        BookOptions book = TestBooks.full(11, 2, 60);
        BagSearch hurried =
                new BagSearch(new SearchLimits(1, 0.001), new Effort(-1, 1L << 40, EnvironmentMode.REPRODUCIBLE));
        BookPlan plan = hurried.plan(book);
        BagSearch counted = searching(1, 500);
        counted.plan(book);
        assertAll(
                () -> assertEquals(PlainScore.cost(book, chosen(plan)), cost(book, plan)),
                () -> assertTrue(hurried.cappedByTime()),
                () -> assertFalse(counted.cappedByTime()));
    }

    @Test
    @Tag("analytic")
    void stop_endsASearchWithoutEnd() {
        BagSearch endless = new BagSearch(LIMITS, new Effort(-1, 1L << 40, EnvironmentMode.REPRODUCIBLE));
        endless.stop();
        BookOptions book = TestBooks.full(12, 2, 20);
        assertEquals(2, endless.plan(book).bags().size());
        assertTrue(endless.cappedByTime());
    }
}
