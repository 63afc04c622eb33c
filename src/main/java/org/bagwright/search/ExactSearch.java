package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The best choice for whole bags and teams with its proof. Costs are compared in this order: pieces beyond the limits
 * (stock, most changes, fourteen clubs), breaks, penalty; of equal ones the one with fewer changes is taken, and of
 * those the one that the same counted steps find on every run, earlier options first where they are met together.
 */
final class ExactSearch {
    private ExactSearch() {}

    /** The best choice for all bags of a book, with the stock shared between them. */
    static ExactResult book(ExactProblem problem, ExactLimits limits) {
        Meter meter = Meter.of(limits);
        LeastPieces.Result pieces = LeastPieces.of(problem);
        ExactResult best = null;
        ExactEnding ending = ExactEnding.PROVEN;
        Value bound = Value.OUT_OF_REACH;
        for (LeastPieces.Raise raise : pieces.raises()) {
            TeamSearch team = new TeamSearch(problem, raise, meter, limits, pieces.pieces());
            team.run();
            ending = team.ending() == ExactEnding.PROVEN ? ending : team.ending();
            bound = Value.min(bound, team.bound());
            Cost cost = Cost.of(pieces.pieces(), team.value());
            if (best == null || cost.compareTo(best.cost()) < 0) {
                best = new ExactResult(team.chosen(), cost, cost, ending, 0, 0);
            }
        }
        Cost proven = pieces.certain() ? Cost.of(pieces.pieces(), bound) : new Cost(0, 0, 0);
        return new ExactResult(
                best.chosen(),
                best.cost(),
                proven,
                proven.equals(best.cost()) ? ExactEnding.PROVEN : ending,
                meter.steps(),
                meter.elapsedS());
    }

    /**
     * The best choice for one bag.
     *
     * @param stockLeft the pieces of each stock item that the bag may take
     */
    static ExactResult bag(ExactBag bag, List<Integer> stockLeft, ExactLimits limits) {
        return book(new ExactProblem(List.of(bag), stockLeft), limits);
    }

    /**
     * The best choices of one bag for at most 0, 1, 2 ... changes (or as many as the bag cannot do without), up to the
     * first that is as good as the best for the most changes that the bag allows.
     *
     * @return one result for each number of changes, from 0 on
     */
    static List<ExactResult> steps(ExactBag bag, List<Integer> stockLeft, ExactLimits limits) {
        ExactResult last = bag(bag, stockLeft, limits);
        List<ExactResult> curve = new ArrayList<>();
        int most = changes(bag, last);
        for (int changes = 0; changes < most; changes++) {
            ExactResult step = bag(bag.withMostChanges(changes), stockLeft, limits);
            curve.add(step);
            if (step.cost().compareTo(last.cost()) <= 0) {
                return curve;
            }
        }
        curve.add(last);
        return curve;
    }

    private static int changes(ExactBag bag, ExactResult result) {
        int changes = 0;
        List<Integer> chosen = result.chosen().get(0);
        for (int slot = 0; slot < chosen.size(); slot++) {
            int index = chosen.get(slot);
            changes += bag.slots().get(slot).stream()
                    .filter(option -> option.index() == index)
                    .mapToInt(ExactOption::changes)
                    .findFirst()
                    .orElseThrow();
        }
        return changes;
    }
}
