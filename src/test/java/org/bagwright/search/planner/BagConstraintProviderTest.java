package org.bagwright.search.planner;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;
import org.bagwright.search.model.LimitedBooks;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.TestBags;
import org.bagwright.search.model.TestBooks;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;

/** Each rule below, at and above its limit; the expected numbers are worked out by hand from the penalty's formula. */
@Tag("analytic")
class BagConstraintProviderTest {
    private final ConstraintVerifier<BagConstraintProvider, PlanningProblem> verifier = ConstraintVerifier.build(
                    new BagConstraintProvider(), PlanningProblem.class, SlotAssignment.class)
            .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);

    private void assertPenalty(
            BiFunction<BagConstraintProvider, ConstraintFactory, Constraint> rule, long expected, BagOptions... bags) {
        assertPenalty(rule, expected, new BookOptions(List.of(bags), List.of()));
    }

    private void assertPenalty(
            BiFunction<BagConstraintProvider, ConstraintFactory, Constraint> rule, long expected, BookOptions book) {
        PlanningProblem problem = TestBags.problem(book, TestBooks.today(book));
        Object[] facts = Stream.concat(problem.assignments().stream(), problem.stock().stream())
                .toArray();
        verifier.verifyThat(rule).given(facts).penalizesBy(expected);
    }

    private static BagOptions withTerms(Terms... terms) {
        return TestBags.bag(IntStream.range(0, terms.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.option(200 - 10 * place, 0, terms[place], true)))
                .toArray(SlotOptions[]::new));
    }

    private static BagOptions withCarries(Aim gapAim, double wishM, double... carriesM) {
        List<SlotOptions> clubs = IntStream.range(0, carriesM.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.carrying(carriesM[place])))
                .toList();
        return TestBags.bag(gapAim, OptionalInt.empty(), wishM, clubs);
    }

    private static BagOptions withChanges(OptionalInt mostChanges, int... changes) {
        List<SlotOptions> clubs = IntStream.range(0, changes.length)
                .mapToObj(place -> TestBags.iron(place + 1, TestBags.changed(changes[place])))
                .toList();
        return TestBags.bag(TestBags.GAP_AIM, mostChanges, 10, clubs);
    }

    @Test
    void openOption_countsEachClosedOne() {
        SlotOptions open = TestBags.iron(1, TestBags.carrying(150));
        SlotOptions closed = TestBags.iron(2, TestBags.option(140, 0, TestBags.FREE, false));
        assertPenalty(BagConstraintProvider::openOption, 0, TestBags.bag(open));
        assertPenalty(BagConstraintProvider::openOption, 1, TestBags.bag(open, closed));
        assertPenalty(BagConstraintProvider::openOption, 2, TestBags.bag(closed, closed));
    }

    @Test
    void ownHard_breaksWhatTheOptionsBreak() {
        assertPenalty(
                BagConstraintProvider::ownHard,
                0,
                withTerms(TestBags.terms(
                        Map.of(Measure.LOFT, 9.0, Measure.LIE, 9.0, Measure.SITS, 9.0, Measure.CARRY, 9.0), 0)));
        assertPenalty(BagConstraintProvider::ownHard, 1, withTerms(TestBags.loft(0, 1)));
        Terms broken = Terms.of(Measure.LOFT, 0, 1000).plus(Terms.of(Measure.SITS, 0, 250));
        assertPenalty(BagConstraintProvider::ownHard, 2500, withTerms(broken, TestBags.FREE, broken));
    }

    @ParameterizedTest(name = "a gap of {0} m, wish 10, tolerance 3: {1}")
    @CsvSource({"10, 0", "12.9, 0", "13, 0", "13.3, 100", "7, 0", "6.7, 100", "16, 1000", "13.0001, 1"})
    void gapMust_breaksThousandthsOfToleranceBeyondIt(double gapM, long breaks) {
        assertPenalty(BagConstraintProvider::gapMust, breaks, withCarries(TestBags.GAP_MUST, 10, 150 + gapM, 150));
        assertPenalty(BagConstraintProvider::gapMust, 0, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    @Test
    void ownHard_breaksLimitsToo() {
        Terms broken = Terms.of(Measure.SITS, 0, 250).withLimit(LimitKind.MOST_CLOSED, 600);
        assertPenalty(BagConstraintProvider::ownHard, 850, withTerms(broken, TestBags.FREE));
    }

    @ParameterizedTest(name = "a gap of {0} m, limits 8 and 12, tolerance 3: {1}")
    @CsvSource({"8, 0", "12, 0", "10, 0", "12.3, 100", "7.7, 100", "5, 1000", "7.9999, 1", "-1, 3000"})
    void gapLimit_breaksThousandthsOfATolerance(double gapM, long breaks) {
        Option longer = LimitedBooks.with(
                TestBags.carrying(150 + gapM),
                Limits.of(List.of(
                        new StatedLimit(LimitKind.GAP_LEAST, 8, "Clubs!A2"),
                        new StatedLimit(LimitKind.GAP_MOST, 12, "Clubs!B2"))));
        BagOptions bag = TestBags.bag(TestBags.iron(1, longer), TestBags.iron(2, TestBags.carrying(150)));
        assertPenalty(BagConstraintProvider::gapLimit, breaks, bag);
        assertPenalty(BagConstraintProvider::gapLimit, 0, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    /** Today's longest flies 150 m: what the first that flies lacks, tolerance 3 yd, importance 1; the others do not count. */
    @ParameterizedTest(name = "{0} m: {1} micropoints")
    @CsvSource({"150, 0", "160, 0", "147.2568, 1000000", "144.5136, 4000000"})
    void reach_isOfTheFirstThatFlies(double carryM, long micropoints) {
        SlotOptions first = TestBags.iron(1, TestBags.carrying(150), TestBags.carrying(carryM));
        SlotOptions second = TestBags.iron(2, TestBags.carrying(200), TestBags.carrying(100));
        assertChosen(BagConstraintProvider::reach, micropoints, List.of(1, 1), first, second);
        assertChosen(BagConstraintProvider::reach, micropoints, List.of(1, 0), first, second);
        assertChosen(BagConstraintProvider::reachMust, 0, List.of(1, 1), first, second);
    }

    /** With the first slot empty the second is the longest; with nothing that flies there is no term. */
    @Test
    void reach_passesOverEmptySlots() {
        SlotOptions first = TestBags.iron(1, TestBags.carrying(150), TestBooks.none(1, 1));
        SlotOptions second = TestBags.iron(2, TestBags.carrying(147.2568), TestBooks.none(2, 1));
        assertChosen(BagConstraintProvider::reach, 0, List.of(0, 0), first, second);
        assertChosen(BagConstraintProvider::reach, 1_000_000, List.of(1, 0), first, second);
        assertChosen(BagConstraintProvider::reach, 0, List.of(1, 1), first, second);
    }

    private void assertChosen(
            BiFunction<BagConstraintProvider, ConstraintFactory, Constraint> rule,
            long penalty,
            List<Integer> chosen,
            SlotOptions... slots) {
        PlanningProblem problem = TestBags.problem(new BookOptions(List.of(TestBags.bag(slots)), List.of()), List.of(chosen));
        verifier.verifyThat(rule).given(problem.assignments().toArray()).penalizesBy(penalty);
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
    @CsvSource({"13, 0", "14, 0", "15, 1", "17, 3"})
    void mostClubs_countsEachClubOver14(int clubs, long excess) {
        assertPenalty(BagConstraintProvider::mostClubs, excess, withChanges(OptionalInt.empty(), new int[clubs]));
    }

    @Test
    void mostClubs_countsEachBagByItself() {
        BagOptions bag = withChanges(OptionalInt.empty(), new int[14]);
        assertPenalty(BagConstraintProvider::mostClubs, 0, bag, bag);
    }

    @ParameterizedTest(name = "{0} and {1} changes, most 3: {2}")
    @CsvSource({"0, 0, 0", "1, 1, 0", "2, 1, 0", "2, 2, 1", "3, 3, 3"})
    void mostChanges_countsEachItemOver(int first, int second, long excess) {
        assertPenalty(BagConstraintProvider::mostChanges, excess, withChanges(OptionalInt.of(3), first, second));
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
                TestBags.terms(
                        Map.of(
                                Measure.LOFT, 1.0,
                                Measure.LIE, 0.5,
                                Measure.SITS, 0.25,
                                Measure.CARRY, 2.0,
                                Measure.SWINGWEIGHT, 0.3,
                                Measure.CHANGE, 0.05),
                        7),
                TestBags.terms(
                        Map.of(
                                Measure.LOFT, 0.0000004,
                                Measure.LIE, 0.0000006,
                                Measure.CARRY, 0.1234567,
                                Measure.SWINGWEIGHT, 0.0000016,
                                Measure.CHANGE, 0.1),
                        0));
        Map<Measure, Long> micropoints = Map.of(
                Measure.LOFT, 1_000_000L,
                Measure.LIE, 500_001L,
                Measure.SITS, 250_000L,
                Measure.CARRY, 2_123_457L,
                Measure.SWINGWEIGHT, 300_002L,
                Measure.CHANGE, 150_000L);
        for (Measure measure : Measure.ofOptions()) {
            assertPenalty((rules, factory) -> rules.own(factory, measure), micropoints.getOrDefault(measure, 0L), bag);
        }
    }

    @ParameterizedTest(name = "a gap of {0} m, wish 10, tolerance 3, importance 2: {1}")
    @CsvSource({"10, 0", "11.5, 500000", "13, 2000000", "7, 2000000", "16, 8000000", "10.001, 0", "10.01, 22"})
    void gap_costsImportanceTimesTolerancesSquared(double gapM, long micropoints) {
        assertPenalty(BagConstraintProvider::gap, micropoints, withCarries(TestBags.GAP_AIM, 10, 150 + gapM, 150));
    }

    /** Wishes of the clubs' own: 11 m to the next that flies, past the putter, and 20 m; each measured by its from club. */
    @Test
    void gap_passesOverThePutterAndUsesTheWishOfTheLongerClub() {
        SlotOptions putter =
                TestBags.club(ClubKind.PUTTER, 2, List.of(TestBags.option(Double.NaN, 0, TestBags.FREE, true)));
        BagOptions bag = TestBags.bag(
                new Aim(Measure.GAP, 1, 1, false),
                OptionalInt.empty(),
                15,
                List.of(
                        wishing(1, 150, 11),
                        putter,
                        wishing(3, 138, 20),
                        TestBags.iron(4, TestBags.carrying(120)),
                        TestBags.iron(5, TestBags.carrying(102))));
        assertPenalty(BagConstraintProvider::gap, 1_000_000 + 4_000_000 + 9_000_000, bag);
    }

    private static SlotOptions wishing(int slot, double carryM, double wishM) {
        Option option = TestBags.option(
                TestBags.club(ClubKind.IRON, slot, OptionalDouble.of(wishM)), carryM, 0, TestBags.FREE, true);
        return TestBags.iron(slot, option);
    }

    private static SlotOptions empty(int slot) {
        return TestBags.iron(slot, TestBooks.none(slot, 0), TestBags.carrying(145));
    }

    /** 150 to 130 over two slots left empty, wish 10, tolerance 3: 2 x (10/3)^2 points, 7/3 tolerances beyond the must. */
    @Test
    void neighbours_areThoseOnBothSidesOfEmptySlots() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_MUST,
                OptionalInt.empty(),
                10,
                List.of(
                        empty(1),
                        TestBags.iron(2, TestBags.carrying(150)),
                        empty(3),
                        empty(4),
                        TestBags.iron(5, TestBags.carrying(130)),
                        empty(6)));
        assertPenalty(BagConstraintProvider::gap, 22_222_222, bag);
        assertPenalty(BagConstraintProvider::gapMust, 2_334, bag);
        assertPenalty(BagConstraintProvider::carriesFall, 0, bag);
        assertPenalty(BagConstraintProvider::gap, 0, TestBags.bag(empty(1), TestBags.iron(2, TestBags.carrying(150))));
    }

    /** A slot that may be empty and is not separates its neighbours, which then have no gap. */
    @Test
    void neighbours_stopAtASlotThatCouldBeEmpty() {
        BagOptions bag = TestBags.bag(
                TestBags.iron(1, TestBags.carrying(150)),
                TestBags.iron(2, TestBags.carrying(140), TestBooks.none(2, 1)),
                TestBags.iron(3, TestBags.carrying(140)));
        assertPenalty(BagConstraintProvider::carriesFall, 1000, bag);
        assertPenalty(BagConstraintProvider::gap, 22_222_222, bag);
    }

    @ParameterizedTest(name = "{0} empty slots and 14 clubs")
    @ValueSource(ints = {0, 1, 3})
    void mostClubs_doesNotCountEmptySlots(int empties) {
        SlotOptions[] slots = IntStream.rangeClosed(1, 14 + empties)
                .mapToObj(slot -> slot > 14 ? empty(slot) : TestBags.iron(slot, TestBags.carrying(100)))
                .toArray(SlotOptions[]::new);
        assertPenalty(BagConstraintProvider::mostClubs, 0, TestBags.bag(slots));
    }

    @Test
    void mostChanges_countsAnEmptySlotThatIsNewToo() {
        BagOptions bag = TestBags.bag(
                TestBags.GAP_AIM,
                OptionalInt.of(1),
                10,
                List.of(TestBags.iron(1, TestBooks.none(1, 1)), TestBags.iron(2, TestBags.changed(1))));
        assertPenalty(BagConstraintProvider::mostChanges, 1, bag);
    }

    @ParameterizedTest(name = "{0} in stock, 3 taken by one bag and 2 by another: {1} too many")
    @CsvSource({"6, 0", "5, 0", "4, 1", "0, 5"})
    void stock_countsThePiecesBeyondItOverAllBags(int available, long excess) {
        BagOptions first = TestBooks.taking(List.of(2, 0), List.of(1, 0));
        BagOptions second = TestBooks.taking(List.of(0, 0), List.of(2, 0));
        List<StockLimit> stock = List.of(TestBooks.limit(0, available), TestBooks.limit(1, 0));
        assertPenalty(BagConstraintProvider::stock, excess, new BookOptions(List.of(first, second), stock));
    }

    @Test
    void stock_countsEachItemByItself() {
        List<StockLimit> stock = List.of(TestBooks.limit(0, 1), TestBooks.limit(1, 1));
        BagOptions bag = TestBooks.taking(List.of(2, 1), List.of(0, 2));
        assertPenalty(BagConstraintProvider::stock, 1 + 2, new BookOptions(List.of(bag), stock));
    }

    /** Two irons 2 v apart are each v from their mean; tolerance 2, importance 1. */
    @ParameterizedTest(name = "{0} and {1}: {2} micropoints, {3} thousandths")
    @CsvSource({
        "30, 30, 0, 0",
        "30, 33, 1125000, 0",
        "30, 34, 2000000, 0",
        "30, 34.4, 2420000, 200",
        "36, 30, 4500000, 1000"
    })
    void spread_isFromTheMeanOfTheGroup(double first, double second, long micropoints, long breaks) {
        BagOptions bag = irons(new Aim(Measure.SPREAD, 2, 1, true), first, second);
        assertPenalty(BagConstraintProvider::spread, micropoints, bag);
        assertPenalty(BagConstraintProvider::spreadMust, breaks, bag);
        assertPenalty(BagConstraintProvider::spreadMust, 0, irons(new Aim(Measure.SPREAD, 2, 1, false), first, second));
        assertPenalty(BagConstraintProvider::spread, 0, irons(new Aim(Measure.SPREAD, 2, 0, true), first, second));
        assertPenalty(
                BagConstraintProvider::spreadMust, breaks, irons(new Aim(Measure.SPREAD, 2, 0, true), first, second));
    }

    private static BagOptions irons(Aim aim, double first, double second) {
        return TestBooks.matched(aim, TestBooks.matched(1, "iron", first), TestBooks.matched(2, "iron", second));
    }

    /** Each group of each bag has its own mean; a slot left empty is in none. */
    @Test
    void spread_keepsGroupsAndBagsApart() {
        Aim aim = new Aim(Measure.SPREAD, 1, 1, true);
        BagOptions apart = TestBooks.matched(
                aim,
                TestBooks.matched(1, "wood", 10),
                TestBooks.matched(2, "iron", 20),
                empty(3),
                TestBooks.matched(4, "iron", 22));
        BagOptions other = TestBooks.matched(aim, TestBooks.matched(1, "iron", 50));
        assertPenalty(BagConstraintProvider::spread, 2_000_000, apart, other);
        assertPenalty(BagConstraintProvider::spreadMust, 0, apart, other);
    }
}
