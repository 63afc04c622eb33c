package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.bagwright.Tries;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.HardRule;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.BrokenRule;
import org.bagwright.search.model.LimitedBooks;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Plans of whole books against looking at every choice, each scored by the plain formula. */
@Tag("analytic")
class BookSearchTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);
    private static final int BOOKS = 500;
    private static final int RICH_BOOKS = 50;
    /** The search counts in millionths of a point, each term rounded by itself. */
    private static final double ROUNDING_POINTS = 2e-5;

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
    void plan_ofFiveHundredBooksIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(BOOKS); seed++) {
            assertProvenBest("book " + seed, TestBooks.small(seed));
        }
    }

    @Test
    void plan_ofBooksWithCandidatesAnEmptySlotAndStockIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(RICH_BOOKS); seed++) {
            assertProvenBest("book " + seed, TestBooks.rich(seed));
        }
    }

    @Test
    void plan_ofFiftyBooksWithLimitsIsTheBestOfAllChoicesAndProven() {
        for (long seed = 0; seed < Tries.of(RICH_BOOKS); seed++) {
            assertProvenBest("book " + seed, LimitedBooks.draw(seed));
        }
    }

    /** Guards the test above: each kind of limit is stated, broken by some choice, and changes some plan. */
    @Test
    void limitedBooks_holdEveryKindOfLimitAndReach() {
        for (LimitKind kind : LimitKind.values()) {
            long stated = count(
                    LimitedBooks::draw,
                    RICH_BOOKS,
                    book -> anyOption(book, option -> option.setup()
                            .flatMap(setup -> setup.wishes().limits().of(kind))
                            .isPresent()));
            assertTrue(stated > 20, kind + " is stated in " + stated + " books");
            if (kind.quantity() != LimitKind.Quantity.GAP) {
                long broken = count(
                        LimitedBooks::draw,
                        RICH_BOOKS,
                        book -> anyOption(book, option -> option.terms().limitBreaks(kind) > 0));
                assertTrue(broken > 20, kind + " is broken by options of " + broken + " books");
            }
            long binds = count(LimitedBooks::draw, RICH_BOOKS, book -> binds(book, kind));
            assertTrue(binds > 1, kind + " changes the best plan of " + binds + " books");
        }
        assertTrue(count(
                        LimitedBooks::draw,
                        RICH_BOOKS,
                        book -> anyBag(book, bag -> bag.reachAim().must()))
                > 10);
    }

    /** Whether the best plan of the book would be another without limits of a kind. */
    private static boolean binds(BookOptions book, LimitKind kind) {
        List<BagOptions> free = book.bags().stream()
                .map(bag -> bag.keeping(rule ->
                        !(rule instanceof HardRule.Kept kept && kept.limit().kind() == kind)))
                .toList();
        return !Enumeration.best(new BookOptions(free, book.stock()))
                .chosen()
                .equals(Enumeration.best(book).chosen());
    }

    private static long count(LongFunction<BookOptions> draw, int books, Predicate<BookOptions> holds) {
        return LongStream.range(0, books).mapToObj(draw).filter(holds).count();
    }

    private static boolean anyBag(BookOptions book, Predicate<BagOptions> holds) {
        return book.bags().stream().anyMatch(holds);
    }

    private static boolean anySlot(BookOptions book, Predicate<SlotOptions> holds) {
        return anyBag(book, bag -> bag.slots().stream().anyMatch(holds));
    }

    private static boolean anyOption(BookOptions book, Predicate<Option> holds) {
        return anySlot(book, slot -> slot.options().stream().anyMatch(holds));
    }

    /** Whether the best plan of the book would be another with stock without end. */
    private static boolean stockBinds(BookOptions book) {
        BookOptions ample = new BookOptions(
                book.bags(),
                book.stock().stream()
                        .map(limit -> new StockLimit(limit.item(), 1000))
                        .toList());
        return !Enumeration.best(ample).cost().equals(Enumeration.best(book).cost());
    }

    /** Guards the first test: its books must hold what could go wrong. */
    @Test
    void smallBooks_holdEverySortOfConstraint() {
        List<Predicate<BookOptions>> sorts = List.of(
                book -> anySlot(book, slot -> slot.clubs().size() > 1),
                book -> anyOption(book, Option::isEmpty),
                book -> book.bags().size() > 1 && stockBinds(book),
                book -> anyBag(book, bag -> bag.mostChanges().isPresent()),
                book -> anyOption(book, option -> option.terms().totalBreaks() > 0),
                book -> anyBag(book, bag -> bag.gapAim().must()),
                book -> anyBag(book, bag -> bag.spreadAim().must()),
                book -> anyBag(book, bag -> bag.spreadAim().importancePoints() > 0),
                book -> anySlot(book, slot -> !slot.main().kind().carries()),
                book -> anySlot(book, slot -> slot.main().targets().gapWishM().isPresent()),
                book -> anyOption(book, option -> !option.open()));
        for (int sort = 0; sort < sorts.size(); sort++) {
            long books = count(TestBooks::small, BOOKS, sorts.get(sort));
            assertTrue(books > 50, "books of sort " + sort + ": " + books);
        }
    }

    /** Guards the second test. */
    @Test
    void richBooks_holdCandidatesAnEmptySlotAndStockEach() {
        assertAll(
                () -> assertEquals(RICH_BOOKS, count(TestBooks::rich, RICH_BOOKS, book -> book.bags().stream()
                        .allMatch(bag -> bag.slots().get(0).clubs().size() > 1
                                && bag.slots().get(1).options().stream().anyMatch(Option::isEmpty)))),
                () -> assertTrue(count(TestBooks::rich, RICH_BOOKS, BookSearchTest::stockBinds) > 20));
    }

    /** An iron that costs 6 points as it is and less with a piece; one number for each piece of the stock. */
    private static BagOptions gaining(double... gainPoints) {
        List<Option> options = new ArrayList<>();
        options.add(gaining(0, gainPoints.length, -1));
        for (int item = 0; item < gainPoints.length; item++) {
            options.add(gaining(gainPoints[item], gainPoints.length, item));
        }
        return TestBags.bag(
                TestBags.iron(1, options.toArray(Option[]::new)),
                TestBags.iron(2, TestBooks.with(TestBags.carrying(140), Optional.empty(), none(gainPoints.length))));
    }

    private static List<Integer> none(int items) {
        return java.util.Collections.nCopies(items, 0);
    }

    private static Option gaining(double gainPoints, int items, int takenItem) {
        List<Integer> takes = new ArrayList<>(none(items));
        if (takenItem >= 0) {
            takes.set(takenItem, 1);
        }
        Terms terms = Terms.of(Measure.SWINGWEIGHT, 6 - gainPoints, 0);
        return TestBooks.with(TestBags.option(150, takenItem < 0 ? 0 : 1, terms, true), Optional.empty(), takes);
    }

    private static StockLimit onePiece(double massKg) {
        OptionalDouble mass = OptionalDouble.of(massKg);
        return new StockLimit(
                new StockItem(StockItem.Kind.PIECE, Optional.empty(), mass, 1, "Stock!A" + Math.round(massKg * 1e4)),
                1);
    }

    @Test
    void threeGolfersWhoAllLikeTheOneTwelveGramPiece_oneGetsItAndTheTotalIsLeast() {
        BookOptions book = new BookOptions(List.of(gaining(3), gaining(5), gaining(4)), List.of(onePiece(0.012)));
        BookPlan plan = new BagSearch(LIMITS).plan(book);
        assertEquals(List.of(List.of(0, 0), List.of(1, 0), List.of(0, 0)), chosen(plan));
        assertEquals(13, plan.bounds().penaltyPoints());
        assertProvenBest("one piece", book);
    }

    /** Whoever likes the 12 g piece most does nearly as well with the 10 g piece, and so leaves it to another. */
    @Test
    void whoLikesTheTwelveGramPieceMost_leavesItWhereTheTotalIsLessFor() {
        BookOptions book = new BookOptions(
                List.of(gaining(5, 4.9), gaining(4, 0.5), gaining(3, 0.2)), List.of(onePiece(0.012), onePiece(0.01)));
        assertEquals(List.of(List.of(2, 0), List.of(1, 0), List.of(0, 0)), chosen(new BagSearch(LIMITS).plan(book)));
        assertProvenBest("two pieces", book);
    }

    @Test
    void everyStepEqualsEnumerationForItsNumberOfChanges() {
        BagSearch search = new BagSearch(LIMITS);
        int compared = 0;
        for (long seed = 0; seed < Tries.of(200); seed++) {
            BookOptions book = TestBooks.small(seed);
            BagOptions bag = book.bags().get(0);
            List<Integer> ample = book.stock().stream().map(limit -> 1000).toList();
            BookOptions alone = new BookOptions(List.of(bag), List.of());
            BagPlan best = search.plan(alone).bags().get(0);
            BagSteps steps = search.steps(bag, ample, best, true);
            assertTrue(steps.settled(), "seed " + seed);
            for (int changes = 0; changes < steps.plans().size(); changes++) {
                if (changes <= bag.mostChanges().orElse(Integer.MAX_VALUE)) {
                    BookOptions limited =
                            new BookOptions(List.of(bag.withMostChanges(OptionalInt.of(changes))), List.of());
                    Cost cost = HandScore.cost(
                            limited, List.of(steps.plans().get(changes).chosen()));
                    assertEquals(Enumeration.best(limited).cost(), cost, "seed " + seed + ", " + changes + " changes");
                    compared++;
                }
            }
        }
        assertTrue(compared > Tries.of(300), compared + " steps");
    }

    @Test
    void brokenRulesOfTheScoreAddUpToWhatThePlanBreaks() {
        Set<String> rules = new TreeSet<>();
        BagSearch search = new BagSearch(LIMITS);
        for (long seed = 0; seed < Tries.of(300); seed++) {
            BookOptions book = TestBooks.small(seed);
            BookPlan plan = search.plan(book);
            Cost cost = HandScore.cost(
                    book, plan.bags().stream().map(BagPlan::chosen).toList());
            List<BrokenRule> broken = plan.proof().broken();
            broken.forEach(each -> rules.add(each.rule()));
            assertEquals(
                    cost.excess(), broken.stream().mapToLong(BrokenRule::hard).sum(), "seed " + seed);
            assertEquals(
                    cost.breaks(),
                    broken.stream().mapToLong(BrokenRule::mustThousandths).sum(),
                    "seed " + seed);
            assertTrue(
                    broken.stream().noneMatch(each -> each.bags().isEmpty()), "every rule has a place, seed " + seed);
        }
        assertTrue(rules.size() >= 4, rules.toString());
    }

    private static Option taking(double points, int pieces) {
        Option bare = TestBags.option(100, 0, TestBags.loft(points, 0), true);
        return TestBooks.with(bare, Optional.empty(), List.of(pieces));
    }

    /** They share a stock, and the points of one are so many that those of the other are lost beside them. */
    @Test
    void golfersOfVeryDifferentSizeInOneTeam_eachGetTheBest() {
        BagOptions large = TestBags.bag(TestBags.iron(1, taking(1e13, 1), taking(2e13, 0)));
        BagOptions small = TestBags.bag(TestBags.iron(1, taking(5, 1), taking(3, 0), taking(1, 0)));
        BookOptions book = new BookOptions(List.of(large, small), List.of(TestBooks.limit(0, 1)));
        List<List<Integer>> chosen = new BagSearch(LIMITS)
                .plan(book).bags().stream().map(BagPlan::chosen).toList();
        assertEquals(List.of(List.of(0), List.of(2)), chosen);
    }
}
