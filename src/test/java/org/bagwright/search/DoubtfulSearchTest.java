package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.bagwright.Tries;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.model.DoubtfulBooks;
import org.bagwright.search.model.LimitedBooks;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Plans of books with doubtful carries against looking at every choice, each scored by the plain formula. */
@Tag("analytic")
class DoubtfulSearchTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);
    /** The search counts in millionths of a point, each term rounded by itself. */
    private static final double ROUNDING_POINTS = 2e-5;

    private static final int BOOKS = 300;
    private static final int RICH_BOOKS = 50;

    private static List<List<Integer>> chosen(BookPlan plan) {
        return plan.bags().stream().map(BagPlan::chosen).toList();
    }

    private static void assertProvenBest(String name, BookOptions book) {
        BookPlan plan = new BagSearch(LIMITS).plan(book);
        Cost best = Enumeration.best(book).cost();
        double points = plan.bags().stream()
                .mapToDouble(bag -> bag.score().penaltyPoints())
                .sum();
        assertEquals(best, HandScore.cost(book, chosen(plan)), name);
        assertTrue(plan.proven(), name + ": proven");
        assertEquals(points, plan.bounds().penaltyPoints(), name + ": bound");
        assertEquals(best.micropoints() / 1e6, points, ROUNDING_POINTS, name + ": points");
    }

    @Test
    void plan_ofBooksWithDoubtIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(BOOKS); seed++) {
            assertProvenBest("book " + seed, DoubtfulBooks.with(TestBooks.small(seed), seed));
        }
    }

    @Test
    void plan_ofBooksWithDoubtCandidatesEmptySlotsAndStockIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(RICH_BOOKS); seed++) {
            assertProvenBest("book " + seed, DoubtfulBooks.with(TestBooks.rich(seed), seed));
        }
    }

    @Test
    void plan_ofBooksWithDoubtAndLimitsIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(RICH_BOOKS); seed++) {
            assertProvenBest("book " + seed, DoubtfulBooks.with(LimitedBooks.draw(seed), seed));
        }
    }

    @Test
    void plan_byTheBestGuessIsThatOfTheBookWithoutDoubt() {
        int differs = 0;
        for (long seed = 0; seed < Tries.of(100); seed++) {
            BookOptions bare = TestBooks.small(seed);
            BookOptions doubtful = DoubtfulBooks.with(bare, seed);
            BookPlan byBestGuess = new BagSearch(LIMITS).plan(DoubtfulBooks.byBestGuess(doubtful));
            BookPlan without = new BagSearch(LIMITS).plan(bare);
            assertEquals(without.bags(), byBestGuess.bags(), "book " + seed);
            assertEquals(without.bounds(), byBestGuess.bounds(), "book " + seed);
            differs += chosen(new BagSearch(LIMITS).plan(doubtful)).equals(chosen(without)) ? 0 : 1;
        }
        assertTrue(differs > Tries.of(10), "books whose plan the doubt changes: " + differs);
    }

    @Test
    void steps_withDoubtEqualEnumerationForTheirNumberOfChanges() {
        BagSearch search = new BagSearch(LIMITS);
        for (long seed = 0; seed < Tries.of(100); seed++) {
            BookOptions book = DoubtfulBooks.with(TestBooks.small(seed), seed);
            BagOptions bag = book.bags().get(0);
            List<Integer> ample = book.stock().stream().map(limit -> 1000).toList();
            BagPlan best =
                    search.plan(new BookOptions(List.of(bag), List.of())).bags().get(0);
            BagSteps steps = search.steps(bag, ample, best, true);
            for (int changes = 0; changes < steps.plans().size(); changes++) {
                if (changes <= bag.mostChanges().orElse(Integer.MAX_VALUE)) {
                    BookOptions limited =
                            new BookOptions(List.of(bag.withMostChanges(OptionalInt.of(changes))), List.of());
                    Cost cost = HandScore.cost(
                            limited, List.of(steps.plans().get(changes).chosen()));
                    assertEquals(Enumeration.best(limited).cost(), cost, "seed " + seed + ", " + changes + " changes");
                }
            }
        }
    }

    /** Variances so large that within the search a term is cut off until it counts in larger points. */
    @Test
    void plan_withDoubtFarBeyondTheToleranceIsProvenBest() {
        Aim exact = new Aim(Measure.GAP, 1e-3, 1000, false).onWhatIsLikely(true);
        BagOptions bag = TestBags.bag(
                exact,
                OptionalInt.empty(),
                10,
                List.of(
                        TestBags.iron(1, doubtful(150, 4), doubtful(149, 2), doubtful(150.5, 3)),
                        TestBags.iron(2, doubtful(140, 3), doubtful(139, 1))));
        BookPlan plan = new BagSearch(LIMITS).plan(new BookOptions(List.of(bag), List.of()));
        assertEquals(List.of(1, 1), chosen(plan).get(0));
        assertTrue(plan.proven());
        assertEquals(1000 * (4 + 1) / 1e-6, plan.bounds().penaltyPoints(), 1);
    }

    /** Alike in all but what is known of the carry: the one whose doubt its neighbour shares wins, wherever it is. */
    @Test
    void options_withTheSameCarryAndAnotherDoubtAreNotAlike() {
        Aim aim = new Aim(Measure.GAP, 3, 2, false).onWhatIsLikely(true);
        Option shared = withDoubt(150, CarryDoubt.of(new double[] {3}, new double[0]));
        Option own = withDoubt(150, CarryDoubt.of(new double[0], new double[] {3}));
        Option less = withDoubt(150, CarryDoubt.of(new double[0], new double[] {2}));
        Option next = withDoubt(140, CarryDoubt.of(new double[] {3}, new double[0]));
        List<List<Option>> orders =
                List.of(List.of(shared, own, less), List.of(own, shared, less), List.of(less, own, shared));
        for (List<Option> order : orders) {
            BagOptions bag = TestBags.bag(
                    aim,
                    OptionalInt.empty(),
                    10,
                    List.of(TestBags.iron(1, order.toArray(Option[]::new)), TestBags.iron(2, next)));
            BookPlan plan = new BagSearch(LIMITS).plan(new BookOptions(List.of(bag), List.of()));
            assertEquals(List.of(order.indexOf(shared), 0), chosen(plan).get(0));
            assertEquals(0, plan.bags().get(0).score().penaltyPoints());
        }
        BagOptions two = TestBags.bag(
                aim, OptionalInt.empty(), 10, List.of(TestBags.iron(1, own, less), TestBags.iron(2, doubtful(140, 0))));
        BookPlan plan = new BagSearch(LIMITS).plan(new BookOptions(List.of(two), List.of()));
        assertEquals(List.of(1, 0), chosen(plan).get(0));
        assertEquals(2 * 4 / 9.0, plan.bags().get(0).score().penaltyPoints(), 1e-12);
    }

    /** The search that proves nothing: the moves weigh the doubt as the score does. */
    @Test
    void plan_bySearchAloneFindsTheBestOfSmallBooksWithDoubt() {
        for (long seed = 0; seed < 30; seed++) {
            BookOptions book = DoubtfulBooks.with(TestBooks.small(seed), seed);
            BookPlan plan = new BagSearch(LIMITS.counting(1, 100, 0)).plan(book);
            assertEquals(Enumeration.best(book).cost(), HandScore.cost(book, chosen(plan)), "book " + seed);
        }
    }

    /** Larger than can be enumerated: two independent ways, of which the one that proves is never the worse. */
    @Test
    void plan_ofWholeBagsWithDoubtIsProvenAndNoWorseThanBySearchAlone() {
        BookOptions book = DoubtfulBooks.with(TestBooks.full(3, 2, 12), 3);
        BookPlan proven = new BagSearch(LIMITS).plan(book);
        assertTrue(proven.proven());
        BookPlan searched = new BagSearch(LIMITS.counting(1, 100, 0)).plan(book);
        assertTrue(HandScore.cost(book, chosen(proven)).compareTo(HandScore.cost(book, chosen(searched))) <= 0);
        assertTrue(book.bags().stream().anyMatch(bag -> bag.gapAim().onWhatIsLikely()));
    }

    private static Option doubtful(double carryM, double sdM) {
        return withDoubt(carryM, CarryDoubt.of(new double[0], new double[] {sdM}));
    }

    private static Option withDoubt(double carryM, CarryDoubt doubt) {
        return DoubtfulBooks.with(TestBags.carrying(carryM), doubt);
    }
}
