package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactLimits;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.Meter;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;

/**
 * The best choice for whole bags and teams with its proof. Costs are compared in this order: pieces beyond the limits
 * (stock, most changes, fourteen clubs), breaks, penalty; of equal ones the one with fewer changes is taken, and of
 * those the one that the same counted steps find on every run, earlier options first where they are met together.
 */
public final class ExactSearch {
    private ExactSearch() {}

    /** The best choice for all bags of a book, with the stock shared between them. */
    public static ExactResult book(ExactProblem problem, ExactLimits limits) {
        Meter meter = Meter.of(limits);
        MinimalViolations.Result pieces = MinimalViolations.of(problem);
        ExactResult best = null;
        ExactEnding ending = ExactEnding.PROVEN;
        LexCost bound = LexCost.OUT_OF_REACH;
        for (MinimalViolations.Raise raise : pieces.raises()) {
            TeamSearch team = new TeamSearch(problem, raise, meter, limits, pieces.pieces());
            team.run();
            ending = team.ending() == ExactEnding.PROVEN ? ending : team.ending();
            bound = LexCost.min(bound, team.bound());
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
    public static ExactResult bag(ExactBag bag, List<Integer> stockLeft, ExactLimits limits) {
        return book(new ExactProblem(List.of(bag), stockLeft), limits);
    }

    /**
     * The best choices of one bag for at most 0, 1, 2 ... changes (or as many as the bag cannot do without), up to the
     * first that is as good as the best for the most changes that the bag allows.
     *
     * @return one result for each number of changes, from 0 on
     */
    public static List<ExactResult> steps(ExactBag bag, List<Integer> stockLeft, ExactLimits limits) {
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
