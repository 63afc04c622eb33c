package org.bagwright.domain.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bagwright.SampleBags;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.search.BagSearch;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The figures against sums by hand. */
@Tag("analytic")
class BagResultTest {
    private static final double GAP_TOLERANCE_M = 3 * 0.9144;

    /** Today 200, 190, 150 m with a wish of 20: off by -10 and 20. */
    @Test
    void unevenness_isTheRootMeanSquareOfGapLessWish() {
        BagResult bag = SampleBags.golferA();
        assertEquals(Math.sqrt((100 + 400) / 2.0), bag.today().unevennessM().orElseThrow(), 1e-9);
        // planned 210, 185, 145: off by 5 and 20
        assertEquals(Math.sqrt((25 + 400) / 2.0), bag.planned().unevennessM().orElseThrow(), 1e-9);
        // without the fairway wood 210, 145: off by 45
        BagState fewer = bag.others().get(1).state();
        assertEquals(45, fewer.unevennessM().orElseThrow(), 1e-9);
    }

    @Test
    void bagWithoutAGap_hasNoUnevenness() {
        BagOptions options = SampleBags.bag("Golfer C", Hand.RIGHT, List.of(SampleBags.putter("Golfer C", 1)));
        assertTrue(BagSearch.state(options, List.of(0)).unevennessM().isEmpty());
    }

    @Test
    void worstMiss_isTheWidestGap() {
        BagResult bag = SampleBags.golferA();
        Miss today = bag.worstMiss(bag.today()).orElseThrow();
        assertEquals(Measure.GAP, today.measure());
        assertEquals(1, today.index());
        assertEquals(20 / GAP_TOLERANCE_M, today.toleranceRatio(), 1e-9);
    }

    /** One club with targets: loft 0.75 off at 0.5, lie 1 off at 1, carry 6 yd off at 5 yd. */
    @Test
    void worstMiss_looksAtEveryMeasureInItsOwnTolerance() {
        assertEquals(1.5, miss(30.75, 63, 150, Measure.LOFT), 1e-9);
        assertEquals(1.6, miss(30.75, 60.4, 150, Measure.LIE), 1e-9);
        assertEquals(2.2, miss(30.75, 60.4, 150 + 11 * 0.9144, Measure.CARRY), 1e-9);
        assertEquals(0, miss(30, 62, 150, Measure.LOFT), 1e-9);
    }

    private static double miss(double loftDeg, double lieDeg, double carryM, Measure expected) {
        Club iron = SampleBags.club("Golfer C", 1, "7 iron", ClubKind.IRON)
                .targets(new Targets(
                        OptionalDouble.of(30),
                        OptionalDouble.of(62),
                        OptionalDouble.of(150),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.empty()))
                .made();
        BagOptions options = SampleBags.bag(
                "Golfer C",
                Hand.RIGHT,
                List.of(SampleBags.slot(iron, SampleBags.shot(iron, Bend.NONE, loftDeg, lieDeg, carryM, 0))));
        BagState state = BagSearch.state(options, List.of(0));
        Miss miss = BagResult.of(options, state, state).worstMiss(state).orElseThrow();
        assertEquals(expected, miss.measure());
        return miss.toleranceRatio();
    }

    /** The second club misses its must of lie and is pinned otherwise, and flies as far as the first. */
    @Test
    void brokenMustsAndLimits_areNamed() {
        Club long7 = SampleBags.club("Golfer C", 1, "7 iron", ClubKind.IRON).made();
        Club short8 = SampleBags.club("Golfer C", 2, "8 iron", ClubKind.IRON).made();
        Option good = SampleBags.shot(long7, Bend.NONE, 30, 62, 150, 0);
        Option sound = SampleBags.shot(short8, Bend.NONE, 34, 62, 150, 0);
        Option broken = new Option(
                sound.key(), sound.setup(), 0, Terms.of(Measure.LIE, 4, 1000), Set.of(ClosedReason.PIN), sound.takes());
        BagOptions options = SampleBags.bag(
                "Golfer C", Hand.RIGHT, List.of(SampleBags.slot(long7, good), SampleBags.slot(short8, broken)));
        BagState state = BagSearch.state(options, List.of(0, 0));
        BagResult bag = BagResult.of(options, state, state);
        assertEquals(List.of("lie", "order of carries", "pin"), List.copyOf(bag.broken(state)));
        assertEquals(1000 + 1000 + 1000, state.score().hardBreaks());
        assertEquals(List.of(Measure.LIE), bag.terms(state).broken());
        assertTrue(SampleBags.golferB().broken(SampleBags.golferB().planned()).isEmpty());
    }

    @Test
    void headRoom_isTheGreatestGain() {
        assertEquals(3.25, SampleBags.golferA().headRoomPoints().orElseThrow(), 1e-12);
        assertTrue(SampleBags.golferB().headRoomPoints().isEmpty());
    }
}
