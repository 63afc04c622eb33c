package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.Tries;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Plans of three clubs with tolerances of a millionth to a thousand and importances of a thousandth to a million, against
 * every choice, each summed exactly in decimal numbers.
 */
@Tag("analytic")
class ExtremeAimsTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);
    private static final int BOOKS = Tries.of(2000);
    private static final double RELATIVE = 1e-9;

    @Test
    void plan_isTheBestOfAllChoicesWhateverTheAims() {
        BagSearch search = new BagSearch(LIMITS);
        int huge = 0;
        for (long seed = 0; seed < BOOKS; seed++) {
            BagOptions bag = bag(new Random(seed));
            BookPlan plan = search.plan(new BookOptions(List.of(bag), List.of()));
            Best best = best(bag, bag.mostChanges().orElse(Integer.MAX_VALUE));
            double points = plan.bags().get(0).score().penaltyPoints();
            String name = "book " + seed;
            assertEquals(best.breaks, plan.bags().get(0).score().hardBreaks(), name);
            assertEquals(best.points.doubleValue(), points, RELATIVE * Math.max(1e-3, points), name);
            assertTrue(plan.proven(), name);
            assertEquals(points, plan.bounds().penaltyPoints(), RELATIVE * points, name);
            huge += points > 1e7 ? 1 : 0;
        }
        assertTrue(huge > BOOKS / 20, huge + " books above ten million points");
    }

    @Test
    void stepsAndPlanOfOneBag_areTheBestOfAllChoicesWithSoManyChanges() {
        BagSearch search = new BagSearch(LIMITS);
        for (long seed = 0; seed < BOOKS / 10; seed++) {
            BagOptions bag = bag(new Random(seed));
            BagPlan plan =
                    search.plan(new BookOptions(List.of(bag), List.of())).bags().get(0);
            List<BagPlan> steps = search.steps(bag, List.of(), plan, true).plans();
            assertFalse(steps.isEmpty(), "book " + seed);
            BagScore last = steps.get(steps.size() - 1).score();
            assertEquals(plan.score().hardBreaks(), last.hardBreaks(), "book " + seed);
            assertEquals(
                    plan.score().penaltyPoints(),
                    last.penaltyPoints(),
                    RELATIVE * Math.max(1e-3, last.penaltyPoints()),
                    "book " + seed);
            for (int changes = 0; changes < steps.size(); changes++) {
                Best best = best(bag, changes);
                double points = steps.get(changes).score().penaltyPoints();
                String name = "book " + seed + ", " + changes + " changes";
                assertEquals(best.breaks, steps.get(changes).score().hardBreaks(), name);
                assertEquals(best.points.doubleValue(), points, RELATIVE * Math.max(1e-3, points), name);
            }
        }
    }

    /** Within a penalty of a hundred million million points, three points of another golfer count no less. */
    @Test
    void bagThatCostsLittle_isPlannedToThePointInATeamThatCostsHugely() {
        BagOptions little = bag(5, 3, 4);
        assertEquals(List.of(List.of(0), List.of(1)), teamPlan(bag(1e14, 2e14), little));
        assertEquals(
                List.of(List.of(1), List.of(0)), teamPlan(bag(2e14, 1e14), little), "the dear bag has the one piece");
    }

    /** The plan of two bags between which one piece of the stock could run short. */
    private static List<List<Integer>> teamPlan(BagOptions... bags) {
        BookOptions book = new BookOptions(List.of(bags), List.of(TestBooks.limit(0, 1)));
        BookPlan plan = new BagSearch(LIMITS).plan(book);
        assertTrue(plan.proven());
        return plan.bags().stream().map(BagPlan::chosen).toList();
    }

    /** A bag of one iron whose options cost so many points; all but the first, today's, take a piece of the stock. */
    private static BagOptions bag(double... points) {
        List<Option> options = new ArrayList<>();
        for (int option = 0; option < points.length; option++) {
            int taken = Math.min(option, 1);
            Option bare = TestBags.option(150, taken, TestBags.loft(points[option], 0), true);
            options.add(TestBooks.with(bare, Optional.empty(), List.of(taken)));
        }
        return TestBags.bag(TestBags.iron(1, options.toArray(Option[]::new)));
    }

    /** The least breaks and the least penalty with as few. */
    private record Best(long breaks, BigDecimal points) {}

    private static Best best(BagOptions bag, int mostChanges) {
        Best best = new Best(Long.MAX_VALUE, BigDecimal.ZERO);
        for (List<Integer> chosen : choices(bag)) {
            if (changes(bag, chosen) > mostChanges) {
                continue;
            }
            BagState state = BagSearch.state(bag, chosen);
            BigDecimal points = bag.chosen(chosen).stream()
                    .map(option -> new BigDecimal(option.terms().totalPoints()))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            for (GapTerm gap : state.gaps()) {
                points = points.add(new BigDecimal(gap.penaltyPoints()));
            }
            for (SpreadTerm spread : state.spreads()) {
                points = points.add(new BigDecimal(spread.penaltyPoints()));
            }
            points = points.add(new BigDecimal(reachPoints(bag, chosen)));
            long breaks = state.score().hardBreaks();
            if (breaks < best.breaks || (breaks == best.breaks && points.compareTo(best.points) < 0)) {
                best = new Best(breaks, points);
            }
        }
        return best;
    }

    /** Every slot flies, so the first is the longest; tolerance 3 yd, importance 1. */
    private static double reachPoints(BagOptions bag, List<Integer> chosen) {
        double todayM = bag.chosen(bag.today()).get(0).carryM().orElseThrow();
        double carryM = bag.chosen(chosen).get(0).carryM().orElseThrow();
        return Math.pow(Math.max(0, todayM - carryM) / 2.7432, 2);
    }

    private static int changes(BagOptions bag, List<Integer> chosen) {
        return bag.chosen(chosen).stream().mapToInt(Option::changes).sum();
    }

    private static List<List<Integer>> choices(BagOptions bag) {
        List<List<Integer>> choices = List.of(List.of());
        for (SlotOptions slot : bag.slots()) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> start : choices) {
                for (int option : slot.openIndexes()) {
                    List<Integer> more = new ArrayList<>(start);
                    more.add(option);
                    longer.add(more);
                }
            }
            choices = longer;
        }
        return choices;
    }

    /** Loft stands for every measure that a club has by itself: the search adds them all up in one sum. */
    private static BagOptions bag(Random random) {
        Aim gap = aim(random, Measure.GAP);
        Aim loft = aim(random, Measure.LOFT);
        Aim spread = random.nextBoolean() ? aim(random, Measure.SPREAD) : new Aim(Measure.SPREAD, 1, 0, false);
        List<SlotOptions> slots = IntStream.rangeClosed(1, 3)
                .mapToObj(slot -> TestBags.club(ClubKind.IRON, slot, options(random, loft, 200 - 15 * slot)))
                .toList();
        OptionalInt mostChanges = random.nextInt(4) == 0 ? OptionalInt.of(random.nextInt(4)) : OptionalInt.empty();
        BagOptions bag = TestBags.bag(gap, mostChanges, log(random, 1, 100), slots);
        return new BagOptions(bag.golfer(), slots, bag.gapWishM(), TestBags.aims(gap, spread));
    }

    private static Aim aim(Random random, Measure measure) {
        return new Aim(measure, log(random, 1e-6, 1e3), log(random, 1e-3, 1e6), random.nextInt(4) == 0);
    }

    private static List<Option> options(Random random, Aim loft, double carryM) {
        List<Option> options = new ArrayList<>();
        for (int option = 0; option < 1 + random.nextInt(16); option++) {
            double offDeg = random.nextInt(3) == 0 ? 0 : log(random, 1e-3, 30);
            Option bare = TestBags.option(
                    carryM + 20 * random.nextDouble(),
                    Math.min(option, 2),
                    TestBags.loft(loft.penaltyPoints(offDeg), loft.hardBreakThousandths(offDeg)),
                    true);
            MatchValue match = new MatchValue("iron", 20 + 5 * random.nextDouble());
            options.add(TestBooks.with(bare, Optional.of(match), List.of()));
        }
        return options;
    }

    private static double log(Random random, double least, double most) {
        return Math.exp(Math.log(least) + random.nextDouble() * Math.log(most / least));
    }
}
