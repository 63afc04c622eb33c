package org.bagwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.bagwright.domain.Aim;
import org.bagwright.domain.Aims;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagScore;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.ClubOptions;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Measure;
import org.bagwright.domain.OwnTerms;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;

@Tag("analytic")
class PlainScoreTest {
    /**
     * Worked by hand from {@code importance x (deviation / tolerance)^2} with the default aims. A driver 0.75 deg of
     * loft off (1 x (0.75/0.5)^2 = 2.25 points) and 2 deg of lie off (0.5 x (2/1)^2 = 2); a wood as wanted but with one
     * change (0.05); their gap 216 - 198 = 18 m, wish 16 m: 2 x (2 / 2.7432)^2 = 1.063102263 points. A putter adds nothing.
     */
    @Test
    void score_isTheSumWorkedByHand() {
        Aims aims = Aims.defaults();
        OwnTerms driver = new OwnTerms(
                aims.of(Measure.LOFT).penaltyPoints(0.75), aims.of(Measure.LIE).penaltyPoints(-2), 0, 0, 0, 0);
        OwnTerms wood = new OwnTerms(0, 0, 0, 0, 0.05, 0);
        BagOptions bag = TestBags.bag(
                aims.of(Measure.GAP),
                OptionalInt.empty(),
                16,
                List.of(
                        TestBags.club(ClubKind.DRIVER, 1, List.of(TestBags.option(216, 0, driver, true))),
                        TestBags.club(ClubKind.WOOD, 2, List.of(TestBags.option(198, 1, wood, true))),
                        TestBags.club(
                                ClubKind.PUTTER, 3, List.of(TestBags.option(Double.NaN, 0, TestBags.FREE, true)))));
        BagScore score = BagSearch.score(bag, List.of(0, 0, 0));
        assertEquals(2.25 + 2 + 0.05 + 1.063102263, score.penaltyPoints(), 1e-9);
        assertEquals(0, score.hardBreaks());
        GapTerm gap = BagSearch.gaps(bag, List.of(0, 0, 0)).get(0);
        assertEquals(1.063102263, gap.penaltyPoints(), 1e-9);
        assertEquals(new GapTerm(0, 1, 18, 16, gap.penaltyPoints(), 0), gap);
    }

    /** A gap of -2 m, wish 10 m, must within 3 m: 12/3 - 1 = 3 tolerances beyond, and 1000 + 2000 mm for the carries. */
    @Test
    void gaps_tellWhatTheyBreak() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_MUST,
                OptionalInt.empty(),
                10,
                List.of(TestBags.iron(1, TestBags.carrying(150)), TestBags.iron(2, TestBags.carrying(152))));
        GapTerm expected = new GapTerm(0, 1, -2, 10, 2 * 16, 3000 + 3000);
        assertEquals(List.of(expected), BagSearch.gaps(bag, List.of(0, 0)));
        assertEquals(new BagScore(6000, 32), BagSearch.score(bag, List.of(0, 0)));
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
        assertEquals(new BagScore(0, 0), BagSearch.score(bag, List.of(0, 1)));
        assertEquals(new BagScore(1000 + 1000, 0), BagSearch.score(bag, List.of(1, 0)));
        assertEquals(new BagScore(1000 + 2000, 0), BagSearch.score(bag, List.of(1, 1)));
    }

    @Test
    void score_ofAnAbsurdTermStaysFiniteAndLarge() {
        Aim narrow = new Aim(Measure.GAP, 1e-9, 1, true);
        BagOptions bag = TestBags.bag(
                narrow,
                OptionalInt.empty(),
                10,
                List.of(TestBags.iron(1, TestBags.carrying(150)), TestBags.iron(2, TestBags.carrying(20))));
        BagScore score = BagSearch.score(bag, List.of(0, 0));
        assertEquals(10_000_000_000_000L, score.hardBreaks());
        assertEquals(1.44e22, score.penaltyPoints(), 1e12);
    }

    @Test
    void score_ofAChoiceOfTheWrongLengthIsRefused() {
        BagOptions bag = TestBags.bag(TestBags.iron(1, TestBags.carrying(150)));
        assertThrows(IllegalArgumentException.class, () -> BagSearch.score(bag, List.of(0, 0)));
    }

    @Test
    void score_isThePlannersScoreOnTenThousandRandomChoices() {
        SolutionManager<Bench, HardSoftLongScore> planner =
                SolutionManager.create(SolverFactory.create(SolverSettings.scoring(EnvironmentMode.REPRODUCIBLE)));
        Random random = new Random(20);
        List<BagOptions> bags = new ArrayList<>(
                LongStream.range(0, 100).mapToObj(TestBags::small).toList());
        bags.add(TestBags.full(1, 50, OptionalInt.of(5)));
        bags.add(tooManyClubs());
        int broken = 0;
        for (int draw = 0; draw < 10_000; draw++) {
            BagOptions bag = bags.get(draw % bags.size());
            List<Integer> chosen = TestBags.anyChoice(bag, random);
            HardSoftLongScore score = planner.update(TestBags.bench(List.of(bag), List.of(chosen)));
            Cost plain = PlainScore.cost(bag, chosen);
            assertEquals(HardSoftLongScore.of(-plain.breaks(), -plain.micropoints()), score);
            broken += plain.breaks() > 0 ? 1 : 0;
        }
        assertTrue(broken > 500 && broken < 9_500, "choices with a break: " + broken);
    }

    private static BagOptions tooManyClubs() {
        List<ClubOptions> clubs = new ArrayList<>();
        for (int slot = 1; slot <= 16; slot++) {
            clubs.add(TestBags.iron(slot, TestBags.carrying(240 - 10 * slot), TestBags.changed(1)));
        }
        return TestBags.bag(TestBags.GAP_MUST, OptionalInt.of(2), 10, clubs);
    }
}
