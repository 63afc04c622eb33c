package org.bagwright.search.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How far every plan is beyond the limits, where counting says it: each slot takes one piece of any of some items. */
@Tag("analytic")
class MinimalViolationsTest {
    private static final int ITEMS = 7;

    /** The bag has so many slots, of which each changes one thing and takes one piece. */
    private static ExactProblem problem(int slots, int items, int piecesEach, int mostChanges) {
        List<List<ExactOption>> all = new ArrayList<>();
        for (int slot = 0; slot < slots; slot++) {
            all.add(IntStream.range(0, items)
                    .mapToObj(item -> option(item, items))
                    .toList());
        }
        Aim gap = new Aim(Measure.GAP, 1, 1, false);
        Aim spread = new Aim(Measure.SPREAD, 1, 0, false);
        ExactBag bag = new ExactBag(all, OptionalInt.of(mostChanges), gap, spread);
        return new ExactProblem(List.of(bag), Collections.nCopies(items, piecesEach));
    }

    private static ExactOption option(int item, int items) {
        List<Integer> takes = IntStream.range(0, items)
                .mapToObj(other -> other == item ? 1 : 0)
                .toList();
        ExactOption.Needs needs = new ExactOption.Needs(1, true, takes);
        return new ExactOption(item, 0, 0, needs, Optional.empty(), Optional.empty());
    }

    @Test
    void fewWays_areCountedExactly() {
        for (int slots = 12; slots <= 16; slots++) {
            for (int changes = 10; changes <= 16; changes++) {
                MinimalViolations.Result found = MinimalViolations.of(problem(slots, 2, 6, changes));
                int least = Math.max(0, slots - 12) + Math.max(0, slots - changes) + Math.max(0, slots - 14);
                assertEquals(least, found.violations(), slots + " slots, " + changes + " changes");
                assertEquals(least, found.fewest());
                assertTrue(found.certain());
            }
        }
    }

    /** Slots that spread over seven items in too many ways to follow: each limit is then looked at by itself. */
    @Test
    void tooManyWays_giveNoMoreThanEachLimitByItself() {
        for (int slots : new int[] {13, 14, 16}) {
            for (int changes : new int[] {13, 16}) {
                MinimalViolations.Result found = MinimalViolations.of(problem(slots, ITEMS, 1, changes));
                int alone = Math.max(0, slots - changes) + Math.max(0, slots - 14);
                int least = alone + slots - ITEMS;
                assertFalse(found.certain(), "as many ways as that");
                assertEquals(alone, found.fewest(), slots + " slots, " + changes + " changes");
                assertTrue(found.violations() >= least, "no plan takes fewer");
            }
        }
    }

    @Test
    void witness_keepsTheRaisedLimitsThatItIsFor() {
        MinimalViolations.Result found = MinimalViolations.of(problem(15, 3, 4, 13));
        assertEquals(3 + 2 + 1, found.violations());
        for (MinimalViolations.RaisedLimits limits : found.limits()) {
            assertTrue(limits.byBag().get(0).keeps(limits.witness().get(0)));
            assertEquals(15, limits.stock().stream().mapToInt(Integer::intValue).sum());
        }
        assertEquals(10, found.limits().size(), "three pieces more, spread over three items");
    }

    /** Two bags would each be better with the only piece: one of them may start with it, both may not. */
    @Test
    void start_takesNoMoreThanTheBagsMayTakeTogether() {
        ExactOption without = new ExactOption(
                0, 0, 10, new ExactOption.Needs(0, true, List.of(0)), Optional.empty(), Optional.empty());
        ExactOption with = new ExactOption(
                1, 0, 0, new ExactOption.Needs(0, true, List.of(1)), Optional.empty(), Optional.empty());
        Aim gap = new Aim(Measure.GAP, 1, 1, false);
        ExactBag bag = new ExactBag(List.of(List.of(without, with)), OptionalInt.empty(), gap, gap);
        ExactProblem problem = new ExactProblem(List.of(bag, bag), List.of(1));
        BagLimits one = new BagLimits(0, 14, problem.available());
        MinimalViolations.RaisedLimits limits =
                new MinimalViolations.RaisedLimits(List.of(one, one), together(without, without));
        assertEquals(
                together(with, without),
                limits.startingFrom(problem, together(with, without)).witness());
        assertEquals(
                together(without, without),
                limits.startingFrom(problem, together(with, with)).witness());
    }

    private static List<List<ExactOption>> together(ExactOption one, ExactOption other) {
        return List.of(List.of(one), List.of(other));
    }
}
