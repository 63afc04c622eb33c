package org.bagwright.search.model;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.bagwright.Tries;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.search.planner.ConstraintScorer;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.HandScore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class PlainScoreTest {
    /**
     * Worked by hand from {@code importance x (deviation / tolerance)^2} with the default aims. A driver 0.75 deg of
     * loft off (1 x (0.75/0.5)^2 = 2.25 points) and 2 deg of lie off (0.5 x (2/1)^2 = 2); a wood with one change (0.05)
     * and 0.3 points of swingweight; their gap 216 - 198 = 18 m, wish 16 m: 2 x (2 / 2.7432)^2 = 1.063102263 points. A
     * putter adds nothing.
     */
    @Test
    void score_isTheSumWorkedByHand() {
        Aims aims = Aims.defaults();
        Terms driver = Terms.of(aims, Map.of(Measure.LOFT, 0.75, Measure.LIE, -2.0));
        Terms wood = Terms.of(Measure.SWINGWEIGHT, 0.3, 0).plus(Terms.of(Measure.CHANGE, 0.05, 0));
        BagOptions bag = TestBags.bag(
                aims.of(Measure.GAP),
                OptionalInt.empty(),
                16,
                List.of(
                        TestBags.club(ClubKind.DRIVER, 1, List.of(TestBags.option(216, 0, driver, true))),
                        TestBags.club(ClubKind.WOOD, 2, List.of(TestBags.option(198, 1, wood, true))),
                        TestBags.club(
                                ClubKind.PUTTER, 3, List.of(TestBags.option(Double.NaN, 0, TestBags.FREE, true)))));
        BagScore score = new PlainScore(bag, List.of(0, 0, 0)).score();
        assertEquals(2.25 + 2 + 0.05 + 0.3 + 1.063102263, score.penaltyPoints(), 1e-9);
        assertEquals(0, score.hardBreaks());
        GapTerm gap = new PlainScore(bag, List.of(0, 0, 0)).state().gaps().get(0);
        assertEquals(new GapTerm(0, 1, 18, 16, 0, Terms.of(Measure.GAP, gap.penaltyPoints(), 0), 0), gap);
    }

    /** A gap of -2 m, wish 10 m, must within 3 m: 12/3 - 1 = 3 tolerances beyond, and 1000 + 2000 mm for the carries. */
    @Test
    void gaps_tellWhatTheyBreak() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_MUST,
                OptionalInt.empty(),
                10,
                List.of(TestBags.iron(1, TestBags.carrying(150)), TestBags.iron(2, TestBags.carrying(152))));
        GapTerm expected = new GapTerm(0, 1, -2, 10, 0, Terms.of(Measure.GAP, 2 * 16, 3000), 3000);
        assertEquals(
                List.of(expected), new PlainScore(bag, List.of(0, 0)).state().gaps());
        assertEquals(new BagScore(6000, 32), new PlainScore(bag, List.of(0, 0)).score());
    }

    /** Left out: 150 to 138 with a wish of 10 is 2 m off; (2/3)^2 x 2 = 0.888889 points. */
    @Test
    void gaps_passOverAnEmptySlot() {
        BagOptions bag = TestBags.bag(
                TestBags.iron(1, TestBags.carrying(150)),
                TestBags.iron(2, TestBags.carrying(140), TestBooks.none(2, 1)),
                TestBags.iron(3, TestBags.carrying(138)));
        GapTerm gap = new PlainScore(bag, List.of(0, 1, 0)).state().gaps().get(0);
        assertEquals(new GapTerm(0, 2, 12, 10, 0, Terms.of(Measure.GAP, gap.penaltyPoints(), 0), 0), gap);
        assertEquals(new Cost(0, 0, 888_889), new PlainScore(bag, List.of(0, 1, 0)).cost());
        assertEquals(2, new PlainScore(bag, List.of(0, 0, 0)).state().gaps().size());
    }

    /**
     * Three irons of 30, 31 and 35, mean 32: -2, -1 and 3; tolerance 2, importance 1: 1 + 0.25 + 2.25 points; the must
     * breaks by half a tolerance. A wood alone in its group is its own mean.
     */
    @Test
    void spreads_areFromTheMeanOfTheGroup() {
        BagOptions bag = TestBooks.matched(
                new Aim(Measure.SPREAD, 2, 1, true),
                TestBooks.matched(1, "wood", 40),
                TestBooks.matched(2, "iron", 30),
                TestBooks.matched(3, "iron", 31),
                TestBooks.matched(4, "iron", 35));
        assertEquals(
                List.of(
                        new SpreadTerm(0, "wood", 0, 0, 0),
                        new SpreadTerm(1, "iron", -2, 1, 0),
                        new SpreadTerm(2, "iron", -1, 0.25, 0),
                        new SpreadTerm(3, "iron", 3, 2.25, 500)),
                new PlainScore(bag, List.of(0, 0, 0, 0)).state().spreads());
        assertEquals(new BagScore(500, 3.5), new PlainScore(bag, List.of(0, 0, 0, 0)).score());
    }

    /** Two bags take 2 and 1 of the first item, of which there are 2, and 1 and 1 of the second, of which there is 0. */
    @Test
    void cost_ofABookCountsThePiecesBeyondTheStock() {
        BookOptions book = new BookOptions(
                List.of(TestBooks.taking(List.of(2, 1)), TestBooks.taking(List.of(1, 1))),
                List.of(TestBooks.limit(0, 2), TestBooks.limit(1, 0)));
        assertEquals(new Cost(1 + 2, 0, 0), PlainScore.cost(book, List.of(List.of(0), List.of(0))));
    }

    @Test
    void score_ofClosedOptionsAndTooManyChangesCountsTheBreaks() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_AIM,
                OptionalInt.of(1),
                10,
                List.of(
                        TestBags.iron(1, TestBags.carrying(150), TestBags.option(150, 2, TestBags.FREE, false)),
                        TestBags.iron(2, TestBags.carrying(140), TestBags.option(140, 1, TestBags.FREE, true))));
        assertEquals(new BagScore(0, 0), new PlainScore(bag, List.of(0, 1)).score());
        assertEquals(new BagScore(1000 + 1000, 0), new PlainScore(bag, List.of(1, 0)).score());
        assertEquals(new BagScore(1000 + 2000, 0), new PlainScore(bag, List.of(1, 1)).score());
    }

    @Test
    void score_ofAnAbsurdTermStaysFiniteAndLarge() {
        Aim narrow = new Aim(Measure.GAP, 1e-9, 1, true);
        BagOptions bag = TestBags.bag(
                narrow,
                OptionalInt.empty(),
                10,
                List.of(TestBags.iron(1, TestBags.carrying(150)), TestBags.iron(2, TestBags.carrying(20))));
        BagScore score = new PlainScore(bag, List.of(0, 0)).score();
        assertEquals(10_000_000_000_000L, score.hardBreaks());
        // The last digits of so large a number.
        assertEquals(1.44e22, score.penaltyPoints(), 1e12);
    }

    @Test
    void score_ofAChoiceOfTheWrongLengthIsRefused() {
        BagOptions bag = TestBags.bag(TestBags.iron(1, TestBags.carrying(150)));
        assertThrows(IllegalArgumentException.class, () -> new PlainScore(bag, List.of(0, 0)).score());
    }

    @Test
    void score_isThePlannersScoreOnTwentyThousandRandomChoices() {
        ConstraintScorer planner = new ConstraintScorer(new SearchLimits(1, 600));
        Random random = new Random(20);
        List<BookOptions> books = new ArrayList<>(
                LongStream.range(0, 100).mapToObj(TestBooks::small).toList());
        LongStream.range(0, 100)
                .mapToObj(seed -> DoubtfulBooks.with(TestBooks.small(seed), seed))
                .forEach(books::add);
        books.add(DoubtfulBooks.with(TestBooks.full(2, 2, 20), 2));
        books.addAll(List.of(TestBooks.full(1, 2, 20), TestBooks.crowded(2), TestBooks.crowded(3)));
        int excess = 0;
        int broken = 0;
        for (int draw = 0; draw < Tries.of(20_000); draw++) {
            BookOptions book = books.get(draw % books.size());
            List<List<Integer>> chosen = TestBooks.anyChoice(book, random);
            PlanningProblem problem = TestBags.problem(book, chosen);
            Cost byHand = HandScore.cost(book, chosen);
            assertEquals(byHand, planner.cost(problem), "the planner on draw " + draw);
            assertEquals(byHand, PlainScore.cost(book, chosen), "the plain sum on draw " + draw);
            excess += byHand.excess() > 0 ? 1 : 0;
            broken += byHand.breaks() > 0 ? 1 : 0;
        }
        int withExcess = excess;
        int withBreaks = broken;
        assertAll(
                () -> assertTrue(withExcess > 500 && withExcess < 19_000, "choices with excess: " + withExcess),
                () -> assertTrue(withBreaks > 500 && withBreaks < 19_000, "choices with a break: " + withBreaks));
    }
}
