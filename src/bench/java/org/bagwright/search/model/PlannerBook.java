package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
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
public final class PlannerBook {
    private PlannerBook() {}

    /**
     * The bags as one team.
     *
     * @throws IllegalStateException if what the planner sees is not the same problem
     */
    public static Team team(ExactProblem problem) {
        List<SearchBag> bags =
                problem.bags().stream().map(bag -> new SearchBag(bag(bag))).toList();
        List<StockPile> piles = StockPile.all(problem.available());
        for (int bag = 0; bag < bags.size(); bag++) {
            if (!bags.get(bag).exact(piles).equals(renumbered(problem.bags().get(bag)))) {
                throw new IllegalStateException("bag " + bag + " is not the same for the planner");
            }
        }
        return new Team(IntStream.range(0, bags.size()).boxed().toList(), bags, piles);
    }

    /** The same bag with its groups numbered from 0 in the order in which they are met. */
    private static ExactBag renumbered(ExactBag bag) {
        List<Integer> groups = bag.slots().stream()
                .flatMap(List::stream)
                .flatMap(option -> option.match().stream())
                .map(ExactOption.Match::group)
                .distinct()
                .toList();
        List<List<ExactOption>> slots = bag.slots().stream()
                .map(slot ->
                        slot.stream().map(option -> renumbered(option, groups)).toList())
                .toList();
        return new ExactBag(slots, bag.mostChanges(), bag.gapAim(), bag.spreadAim());
    }

    private static ExactOption renumbered(ExactOption option, List<Integer> groups) {
        return new ExactOption(
                option.index(),
                option.breaks(),
                option.micropoints(),
                option.needs(),
                option.flight(),
                option.match()
                        .map(match -> new ExactOption.Match(groups.indexOf(match.group()), match.valueMeasureUnits())));
    }

    private static BagOptions bag(ExactBag bag) {
        List<SlotOptions> slots = new ArrayList<>();
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            int place = slot + 1;
            List<Option> options = bag.slots().get(slot).stream()
                    .map(option -> option(place, option))
                    .toList();
            boolean flies = bag.slots().get(slot).stream()
                    .anyMatch(option -> option.flight().isPresent());
            slots.add(TestBags.club(flies ? ClubKind.IRON : ClubKind.PUTTER, place, options));
        }
        return new BagOptions(
                TestBags.golfer(bag.mostChanges()),
                slots,
                0,
                TestBags.aims(bag.gapAim(), bag.spreadAim())
                        .mapped(aim -> aim.measure() == Measure.REACH ? new Aim(Measure.REACH, 1, 0, false) : aim));
    }

    private static Option option(int slot, ExactOption from) {
        Terms terms = TestBags.loft(PenaltyRules.points(from.micropoints()), from.breaks());
        List<Integer> takes = from.needs().takes();
        if (!from.needs().carried()) {
            return new Option("left out", Optional.empty(), from.changes(), terms, Set.of(), takes);
        }
        ClubKind kind = from.flight().isPresent() ? ClubKind.IRON : ClubKind.PUTTER;
        OptionalDouble wishM =
                from.flight().stream().mapToDouble(ExactOption.Flight::wishM).findFirst();
        double carryM = from.flight().map(ExactOption.Flight::carryM).orElse(Double.NaN);
        Option bare = TestBags.option(TestBags.club(kind, slot, wishM), carryM, from.changes(), terms, true);
        Optional<MatchValue> match =
                from.match().map(value -> new MatchValue(String.valueOf(value.group()), value.valueMeasureUnits()));
        return TestBooks.with(bare, match, takes);
    }
}
