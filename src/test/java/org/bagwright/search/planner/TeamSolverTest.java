package org.bagwright.search.planner;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.BagSearch;
import org.bagwright.search.Enumeration;
import org.bagwright.search.model.DoubtfulBooks;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** The solver left to its construction and local search: the exact search gets no steps, so that it proves nothing. */
class TeamSolverTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);
    private static final double ENDLESS = 1e9;

    private static BagSearch searching(long seed, double calculationRatio) {
        return new BagSearch(new SearchLimits(seed, 600).counting(1, calculationRatio, 0));
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

    @Tag("analytic")
    @Test
    void plan_ofSmallBooksFindsTheBestOfAllChoices() {
        List<BookOptions> books = smallBooks(30);
        for (int place = 0; place < books.size(); place++) {
            BookOptions book = books.get(place);
            BookPlan plan = searching(1, 100).plan(book);
            assertEquals(Enumeration.best(book).cost(), cost(book, plan), "book " + place);
        }
    }

    @Tag("analytic")
    @Test
    void plan_checkedAtEveryStepRunsClean() {
        List<BookOptions> books = new ArrayList<>(smallBooks(10));
        books.add(TestBooks.full(1, 2, 10));
        books.add(TestBooks.crowded(1));
        books.add(DoubtfulBooks.with(TestBooks.full(1, 2, 10), 1));
        for (BookOptions book : books) {
            BagSearch checked = new BagSearch(LIMITS.counting(2, 3, 100_000).in(EnvironmentMode.FULL_ASSERT));
            BookPlan plan = checked.plan(book);
            assertEquals(PlainScore.cost(book, chosen(plan)), cost(book, plan));
        }
    }

    @Tag("analytic")
    @ParameterizedTest
    @ValueSource(ints = {0, 3})
    void plan_keepsItsChangesAndItsBound(int mostChanges) {
        BagOptions bag = TestBags.full(6, 25, OptionalInt.of(mostChanges));
        BookPlan plan = searching(1, 10).plan(book(bag));
        BookPlan exact = new BagSearch(LIMITS).plan(book(bag));
        assertTrue(TestBags.changes(bag, plan.bags().get(0).chosen()) <= mostChanges);
        assertTrue(cost(book(bag), exact).compareTo(cost(book(bag), plan)) <= 0);
        assertTrue(plan.bounds().penaltyPoints() <= exact.bags().get(0).score().penaltyPoints());
        assertFalse(plan.proven());
    }

    /** Our own output: how near the search comes to the exact best of a bag of 14 clubs with 50 options each. */
    @Tag("regression")
    @Test
    void plan_ofAFullBagComesNearTheBest() {
        BookOptions book = book(TestBags.full(7, 50, OptionalInt.empty()));
        Cost found = cost(book, searching(1, 10).plan(book));
        Cost exact = cost(book, new BagSearch(LIMITS).plan(book));
        assertEquals(exact.breaks(), found.breaks());
        assertTrue(found.micropoints() <= 1.005 * exact.micropoints());
    }

    @Tag("regression")
    @Test
    void plan_isTheSameForTheSameSeedOnly() {
        BookOptions book = TestBooks.full(8, 2, 20);
        BookPlan plan = searching(1, 0.02).plan(book);
        assertEquals(plan, searching(1, 0.02).plan(book));
        assertNotEquals(plan, searching(2, 0.02).plan(book));
    }

    @Tag("analytic")
    @Test
    void plan_ofABagThatSharesNothingDependsOnNoOther() {
        BagOptions alone = TestBooks.small(1).bags().get(0);
        BookOptions apart =
                new BookOptions(List.of(alone, TestBooks.small(2).bags().get(0)), List.of());
        List<BagPlan> plans = searching(1, 10).plan(apart).bags();
        assertEquals(searching(1, 10).plan(book(alone)).bags().get(0), plans.get(0));
        assertEquals(searching(1, 10).plan(book(apart.bags().get(1))).bags().get(0), plans.get(1));
    }

    @Tag("analytic")
    @Test
    void cappedByTime_tellsWhichEndDecided() {
        BookOptions book = TestBooks.full(11, 2, 60);
        BagSearch hurried = new BagSearch(new SearchLimits(1, 0.001).counting(1, ENDLESS, 0));
        BookPlan plan = hurried.plan(book);
        BagSearch counted = searching(1, 10);
        counted.plan(book);
        assertAll(
                () -> assertEquals(PlainScore.cost(book, chosen(plan)), cost(book, plan)),
                () -> assertTrue(hurried.cappedByTime()),
                () -> assertFalse(counted.cappedByTime()));
    }

    @Tag("analytic")
    @Test
    void stop_endsASearchWithoutEnd() {
        BagSearch endless = searching(1, ENDLESS);
        endless.stop();
        BookOptions book = TestBooks.full(12, 2, 20);
        assertEquals(2, endless.plan(book).bags().size());
        assertTrue(endless.cappedByTime());
    }
}
