package org.bagwright.planning.sureness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.LimitedBooks;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The dynamic program against trying every choice, each scored by the search's plain score. */
@Tag("analytic")
class ChainSearchTest {
    private static final double OUTRANKING_POINTS = 1e6;
    private static final int ALL = 10_000;
    /** Each term of the plain score is rounded up to a thousandth. */
    private static final long ROUNDED_THOUSANDTHS = 20;

    @Test
    void best_isTheBestOfAllChoices() {
        int unbroken = 0;
        int limited = 0;
        for (long seed = 1; seed <= 150; seed++) {
            for (BagOptions drawn : LimitedBooks.draw(seed).bags()) {
                BagOptions bag = withoutSpread(drawn);
                BagScore expected = bestOfAll(bag);
                BagScore found = score(bag, chosen(bag));
                long moreThousandths = found.hardBreaks() - expected.hardBreaks();
                assertTrue(moreThousandths <= ROUNDED_THOUSANDTHS, seed + ": " + found + " " + expected);
                if (expected.hardBreaks() == 0) {
                    assertEquals(expected.penaltyPoints(), found.penaltyPoints(), 1e-9, "seed " + seed);
                    unbroken++;
                    limited += bag.mostChanges().isPresent() ? 1 : 0;
                }
            }
        }
        assertTrue(
                unbroken > 30 && limited > 5, unbroken + " without a break, " + limited + " with a limit of changes");
    }

    /** Full bags are too many to enumerate: the proven plan of the search is the best. */
    @Test
    void best_ofAFullBagIsTheProvenPlan() {
        for (long seed = 1; seed <= 4; seed++) {
            OptionalInt most = seed % 2 == 0 ? OptionalInt.empty() : OptionalInt.of(6);
            BagOptions bag = withoutSpread(TestBags.full(seed, 30, most));
            BagSearch search = new BagSearch(new SearchLimits(1, 60));
            BagScore proven = search.plan(new BookOptions(List.of(bag), List.of()))
                    .bags()
                    .get(0)
                    .score();
            BagScore found = score(bag, chosen(bag));
            assertEquals(proven.penaltyPoints(), found.penaltyPoints(), 1e-6, "seed " + seed);
        }
    }

    @Test
    void pointsOfAChoice_areThoseOfThePlainScore() {
        BagOptions bag = withoutSpread(TestBags.full(5, 10, OptionalInt.empty()));
        Chain chain = new Chain(bag, bag.today(), ALL, OUTRANKING_POINTS);
        int[] today = IntStream.range(0, chain.slotCount())
                .map(slot -> chain.numberOf(slot, bag.today().get(slot)))
                .toArray();
        BagScore score = score(bag, bag.today());
        double points = chain.points(new Belief(chain).expected(), today);
        assertEquals(score.penaltyPoints(), points % OUTRANKING_POINTS, 1e-6);
    }

    /** Thinning keeps the planned option and today's, and of options that carry alike the cheapest. */
    @Test
    void thinning_keepsThePlanAndTheCheapest() {
        BagOptions bag = withoutSpread(TestBags.full(3, 200, OptionalInt.empty()));
        List<Integer> planned = bag.slots().stream().map(slot -> 77).toList();
        Chain chain = new Chain(bag, planned, 20, OUTRANKING_POINTS);
        for (int slot = 0; slot < chain.slotCount(); slot++) {
            assertTrue(chain.firstOf(slot + 1) - chain.firstOf(slot) <= 22);
            assertEquals(77, chain.option(chain.numberOf(slot, 77)).index());
            assertEquals(0, chain.option(chain.numberOf(slot, 0)).index());
        }
        double all = best(new Chain(bag, planned, ALL, OUTRANKING_POINTS));
        double thinned = best(new Chain(bag, planned, 40, OUTRANKING_POINTS));
        assertTrue(thinned >= all - 1e-9 && thinned < all + 1, thinned + " " + all);
    }

    private static double best(Chain chain) {
        World world = new Belief(chain).expected();
        return chain.points(world, new ChainSearch(chain).best(world));
    }

    private static List<Integer> chosen(BagOptions bag) {
        List<Integer> anyOpen =
                bag.slots().stream().map(slot -> slot.openIndexes().get(0)).toList();
        Chain chain = new Chain(bag, anyOpen, ALL, OUTRANKING_POINTS);
        int[] best = new ChainSearch(chain).best(new Belief(chain).expected());
        return IntStream.of(best)
                .mapToObj(number -> chain.option(number).index())
                .toList();
    }

    private static BagScore bestOfAll(BagOptions bag) {
        int least = bag.slots().stream()
                .mapToInt(slot -> slot.openIndexes().stream()
                        .mapToInt(index -> slot.options().get(index).changes())
                        .min()
                        .orElseThrow())
                .sum();
        int most = Math.max(least, bag.mostChanges().orElse(Integer.MAX_VALUE));
        return choices(bag, List.of()).stream()
                .filter(chosen -> TestBags.changes(bag, chosen) <= most)
                .map(chosen -> score(bag, chosen))
                .min(Comparator.comparingLong(BagScore::hardBreaks).thenComparingDouble(BagScore::penaltyPoints))
                .orElseThrow();
    }

    private static List<List<Integer>> choices(BagOptions bag, List<Integer> chosen) {
        if (chosen.size() == bag.slots().size()) {
            return List.of(chosen);
        }
        List<List<Integer>> all = new ArrayList<>();
        for (int index : bag.slots().get(chosen.size()).openIndexes()) {
            List<Integer> longer = new ArrayList<>(chosen);
            longer.add(index);
            all.addAll(choices(bag, longer));
        }
        return all;
    }

    private static BagScore score(BagOptions bag, List<Integer> chosen) {
        return BagSearch.state(bag, chosen).score();
    }

    /** Nothing of spread, and no points of carry, which are drawn without a target here. */
    private static BagOptions withoutSpread(BagOptions bag) {
        Aims aims =
                bag.aims().mapped(aim -> aim.measure() == Measure.SPREAD ? new Aim(Measure.SPREAD, 1, 0, false) : aim);
        List<SlotOptions> slots = bag.slots().stream()
                .map(slot -> new SlotOptions(
                        slot.slot(),
                        slot.clubs(),
                        slot.options().stream()
                                .map(ChainSearchTest::withoutCarry)
                                .toList(),
                        slot.todayIndex(),
                        slot.openIndexes()))
                .toList();
        return new BagOptions(bag.golfer(), slots, bag.gapWishM(), aims);
    }

    private static Option withoutCarry(Option option) {
        Terms terms = option.terms();
        return new Option(
                option.key(),
                option.setup(),
                option.changes(),
                terms.plus(Terms.of(Measure.CARRY, -terms.points(Measure.CARRY), -terms.breaks(Measure.CARRY))),
                option.closedReasons(),
                option.takes());
    }
}
