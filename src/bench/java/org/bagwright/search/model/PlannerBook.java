package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.score.PenaltyRules;

/** A problem of the exact search as clubs of a book, so that the planner's constraints score the very same numbers. */
final class PlannerBook {
    private PlannerBook() {}

    /**
     * An empty bench.
     *
     * @throws IllegalStateException if what the planner sees is not the same problem
     */
    static PlanningProblem bench(ExactProblem problem) {
        List<SearchBag> bags =
                problem.bags().stream().map(bag -> new SearchBag(bag(bag))).toList();
        List<StockPile> piles = IntStream.range(0, problem.available().size())
                .mapToObj(item -> new StockPile(item, problem.available().get(item)))
                .toList();
        for (int bag = 0; bag < bags.size(); bag++) {
            if (!bags.get(bag).exact(piles).equals(renumbered(problem.bags().get(bag)))) {
                throw new IllegalStateException("bag " + bag + " is not the same for the planner");
            }
        }
        return PlanningProblem.of(bags, piles);
    }

    /** The same bag with its groups numbered from 0 in the order in which they are met. */
    private static ExactBag renumbered(ExactBag bag) {
        List<Integer> groups = bag.slots().stream()
                .flatMap(List::stream)
                .map(ExactOption::group)
                .filter(group -> group >= 0)
                .distinct()
                .toList();
        return bag.withSlots(bag.slots().stream()
                .map(slot -> slot.stream()
                        .map(option -> inGroup(option, groups.indexOf(option.group())))
                        .toList())
                .toList());
    }

    private static ExactOption inGroup(ExactOption option, int group) {
        return new ExactOption(
                option.index(),
                option.breaks(),
                option.micropoints(),
                option.changes(),
                option.carried(),
                option.flies(),
                option.carryM(),
                option.wishM(),
                option.takes(),
                group,
                option.matchMeasureUnits());
    }

    private static BagOptions bag(ExactBag bag) {
        List<SlotOptions> slots = new ArrayList<>();
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            int place = slot + 1;
            List<Option> options = bag.slots().get(slot).stream()
                    .map(option -> option(place, option))
                    .toList();
            boolean flies = bag.slots().get(slot).stream().anyMatch(ExactOption::flies);
            slots.add(TestBags.club(flies ? ClubKind.IRON : ClubKind.PUTTER, place, options));
        }
        return new BagOptions(
                TestBags.golfer(bag.mostChanges()), slots, 0, TestBags.aims(bag.gapAim(), bag.spreadAim()));
    }

    private static Option option(int slot, ExactOption from) {
        Terms terms = TestBags.loft(PenaltyRules.points(from.micropoints()), from.breaks());
        if (!from.carried()) {
            return new Option("left out", Optional.empty(), from.changes(), terms, Set.of(), from.takes());
        }
        ClubKind kind = from.flies() ? ClubKind.IRON : ClubKind.PUTTER;
        OptionalDouble wishM = from.flies() ? OptionalDouble.of(from.wishM()) : OptionalDouble.empty();
        double carryM = from.flies() ? from.carryM() : Double.NaN;
        Option bare = TestBags.option(TestBags.club(kind, slot, wishM), carryM, from.changes(), terms, true);
        Optional<MatchValue> match = from.group() < 0
                ? Optional.empty()
                : Optional.of(new MatchValue(String.valueOf(from.group()), from.matchMeasureUnits()));
        return TestBooks.with(bare, match, from.takes());
    }
}
