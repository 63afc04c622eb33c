package org.bagwright.search;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.domain.Aim;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.ClubOptions;
import org.bagwright.domain.Measure;
import org.bagwright.domain.OwnTerms;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;

/** Each rule below, at and above its limit; the expected numbers are worked out by hand from the penalty's formula. */
@Tag("analytic")
class BagConstraintProviderTest {
    private final ConstraintVerifier<BagConstraintProvider, Bench> verifier = ConstraintVerifier.build(
                    new BagConstraintProvider(), Bench.class, ClubSeat.class)
            .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);

    private void assertPenalty(
            BiFunction<BagConstraintProvider, ConstraintFactory, Constraint> rule, long expected, BagOptions... bags) {
        List<List<Integer>> today = Stream.of(bags).map(TestBags::today).toList();
        List<ClubSeat> seats = TestBags.bench(List.of(bags), today).seats();
        verifier.verifyThat(rule).given(seats.toArray()).penalizesBy(expected);
    }

    private static BagOptions withTerms(OwnTerms... terms) {
        return TestBags.bag(IntStream.range(0, terms.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.option(200 - 10 * place, 0, terms[place], true)))
                .toArray(ClubOptions[]::new));
    }

    private static BagOptions withCarries(Aim gapAim, double wishM, double... carriesM) {
        List<ClubOptions> clubs = IntStream.range(0, carriesM.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.carrying(carriesM[place])))
                .toList();
        return TestBags.bag(gapAim, OptionalInt.empty(), wishM, clubs);
    }

    private static BagOptions withChanges(OptionalInt mostChanges, int... changes) {
        List<ClubOptions> clubs = IntStream.range(0, changes.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.changed(changes[place])))
                .collect(Collectors.toList());
        return TestBags.bag(TestBags.GAP_AIM, mostChanges, 10, clubs);
    }

    @Test
    void openOption_breaks1000ForEachClosedOne() {
        ClubOptions open = TestBags.iron(1, TestBags.carrying(150));
        ClubOptions closed = TestBags.iron(2, TestBags.option(140, 0, TestBags.FREE, false));
        assertPenalty(BagConstraintProvider::openOption, 0, TestBags.bag(open));
        assertPenalty(BagConstraintProvider::openOption, 1000, TestBags.bag(open, closed));
        assertPenalty(BagConstraintProvider::openOption, 2000, TestBags.bag(closed, closed));
    }

    @Test
    void ownMust_breaksWhatTheOptionsBreak() {
        assertPenalty(BagConstraintProvider::ownMust, 0, withTerms(new OwnTerms(9, 9, 9, 9, 9, 0)));
        assertPenalty(BagConstraintProvider::ownMust, 1, withTerms(new OwnTerms(0, 0, 0, 0, 0, 1)));
        OwnTerms broken = new OwnTerms(0, 0, 0, 0, 0, 1250);
        assertPenalty(BagConstraintProvider::ownMust, 2500, withTerms(broken, TestBags.FREE, broken));
    }

    @ParameterizedTest(name = "a gap of {0} m, wish 10, tolerance 3: {1}")
    @CsvSource({"10, 0", "12.9, 0", "13, 0", "13.3, 100", "7, 0", "6.7, 100", "16, 1000", "13.0001, 1"})
    void gapMust_breaksThousandthsOfToleranceBeyondIt(double gapM, long breaks) {
        assertPenalty(BagConstraintProvider::gapMust, breaks, withCarries(TestBags.GAP_MUST, 10, 150 + gapM, 150));
        assertPenalty(BagConstraintProvider::gapMust, 0, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    @ParameterizedTest(name = "a gap of {0} m: {1}")
    @CsvSource({"10, 0", "0.001, 0", "0, 1000", "-0.001, 1001", "-0.0015, 1002", "-2.5, 3500"})
    void carriesFall_breaks1000AndTheMillimetresMissing(double gapM, long breaks) {
        assertPenalty(BagConstraintProvider::carriesFall, breaks, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    @Test
    void carriesFall_countsEachPairInItsOwnBagOnly() {
        BagOptions longBag = withCarries(TestBags.GAP_AIM, 10, 200, 190);
        BagOptions flatBag = withCarries(TestBags.GAP_AIM, 10, 250, 250, 250);
        assertPenalty(BagConstraintProvider::carriesFall, 2000, longBag, flatBag);
    }

    @ParameterizedTest(name = "{0} clubs: {1}")
    @CsvSource({"13, 0", "14, 0", "15, 1000", "17, 3000"})
    void mostClubs_breaks1000ForEachClubOver14(int clubs, long breaks) {
        assertPenalty(BagConstraintProvider::mostClubs, breaks, withChanges(OptionalInt.empty(), new int[clubs]));
    }

    @Test
    void mostClubs_countsEachBagByItself() {
        BagOptions bag = withChanges(OptionalInt.empty(), new int[14]);
        assertPenalty(BagConstraintProvider::mostClubs, 0, bag, bag);
    }

    @ParameterizedTest(name = "{0} and {1} changes, most 3: {2}")
    @CsvSource({"0, 0, 0", "1, 1, 0", "2, 1, 0", "2, 2, 1000", "3, 3, 3000"})
    void mostChanges_breaks1000ForEachItemOver(int first, int second, long breaks) {
        assertPenalty(BagConstraintProvider::mostChanges, breaks, withChanges(OptionalInt.of(3), first, second));
        assertPenalty(BagConstraintProvider::mostChanges, 0, withChanges(OptionalInt.empty(), first, second));
    }

    @Test
    void mostChanges_countsEachBagByItself() {
        BagOptions bag = withChanges(OptionalInt.of(2), 1, 1);
        assertPenalty(BagConstraintProvider::mostChanges, 0, bag, bag);
    }

    @Test
    void ownMeasures_costTheirMicropointsRoundedEach() {
        BagOptions bag = withTerms(
                new OwnTerms(1, 0.5, 0.25, 2, 0.05, 7), new OwnTerms(0.0000004, 0.0000006, 0, 0.1234567, 0.1, 0));
        assertPenalty(BagConstraintProvider::loft, 1_000_000, bag);
        assertPenalty(BagConstraintProvider::lie, 500_001, bag);
        assertPenalty(BagConstraintProvider::sits, 250_000, bag);
        assertPenalty(BagConstraintProvider::carry, 2_123_457, bag);
        assertPenalty(BagConstraintProvider::change, 150_000, bag);
    }

    @ParameterizedTest(name = "a gap of {0} m, wish 10, tolerance 3, importance 2: {1}")
    @CsvSource({"10, 0", "11.5, 500000", "13, 2000000", "7, 2000000", "16, 8000000", "10.001, 0", "10.01, 22"})
    void gap_costsImportanceTimesTolerancesSquared(double gapM, long micropoints) {
        assertPenalty(BagConstraintProvider::gap, micropoints, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    @Test
    void gap_passesOverThePutterAndUsesItsOwnWish() {
        ClubOptions putter =
                TestBags.club(ClubKind.PUTTER, 2, List.of(TestBags.option(Double.NaN, 0, TestBags.FREE, true)));
        BagOptions bag = new BagOptions(
                TestBags.golfer(OptionalInt.empty()),
                List.of(
                        TestBags.iron(1, TestBags.carrying(150)),
                        putter,
                        TestBags.iron(3, TestBags.carrying(138)),
                        TestBags.iron(4, TestBags.carrying(120))),
                List.of(11.0, 20.0),
                new Aim(Measure.GAP, 1, 1, false));
        assertPenalty(BagConstraintProvider::gap, 1_000_000 + 4_000_000, bag);
    }
}
