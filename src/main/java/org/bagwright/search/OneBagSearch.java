package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.PenaltyScale;
import org.bagwright.search.team.ExactSearch;

/** The best plans of one bag while the others stay as they are, by the exact search alone. */
final class OneBagSearch {
    private final ExactSearch exact;
    private final SearchLimits limits;

    OneBagSearch(ExactSearch exact, SearchLimits limits) {
        this.exact = exact;
        this.limits = limits;
    }

    /** The best plan; empty where it was not proven best. */
    Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft) {
        return best(bag, stockLeft, PenaltyScale.BOOK);
    }

    /** Goes from scale to scale until one suits: the first that is large enough for the best plan does. */
    private Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft, PenaltyScale scale) {
        ExactResult found = exact.best(problem(scale.of(bag), stockLeft), limits.steps());
        if (!found.proven()) {
            return Optional.empty();
        }
        BagPlan plan = plan(bag, found);
        double points = plan.score().penaltyPoints();
        return scale.suits(points) ? Optional.of(plan) : best(bag, stockLeft, PenaltyScale.of(points));
    }

    /**
     * The best plans with at most 0, 1, 2, ... changes, as {@link BagSearch#steps}. Where some of them cost more than one
     * scale can count, each is taken from the scale that finds the best plan.
     */
    List<BagPlan> steps(BagOptions bag, List<Integer> stockLeft) {
        Steps steps = steps(bag, stockLeft, PenaltyScale.BOOK);
        double mostPoints = steps.plans().stream()
                .mapToDouble(step -> step.score().penaltyPoints())
                .max()
                .orElse(0);
        for (double scale = PenaltyScale.of(mostPoints).bookPoints(); scale > 1; scale /= 10) {
            steps = steps.better(steps(bag, stockLeft, new PenaltyScale(scale)));
        }
        return steps.plans();
    }

    private Steps steps(BagOptions bag, List<Integer> stockLeft, PenaltyScale scale) {
        ExactProblem problem = problem(scale.of(bag), stockLeft);
        List<ExactResult> found =
                exact.steps(problem.bags().get(0), problem.available(), Optional.empty(), limits.steps());
        List<BagPlan> plans = found.stream()
                .takeWhile(ExactResult::proven)
                .map(step -> plan(bag, step))
                .toList();
        return new Steps(plans, plans.size() == found.size());
    }

    /**
     * The best plans by changes, as one scale finds them.
     *
     * @param plans the plans
     * @param complete whether more changes bring nothing after the last of them
     */
    private record Steps(List<BagPlan> plans, boolean complete) {

        /** Step by step the better of two; what more changes bring nothing to stays as good with more. */
        Steps better(Steps other) {
            int most = Math.max(plans.size(), other.plans.size());
            List<BagPlan> best = new ArrayList<>();
            for (int step = 0; step < most && reaches(step) && other.reaches(step); step++) {
                best.add(isBetter(other.at(step), at(step)) ? other.at(step) : at(step));
            }
            while (best.size() > 1 && best.get(best.size() - 1).equals(best.get(best.size() - 2))) {
                best.remove(best.size() - 1);
            }
            return new Steps(best, complete && other.complete);
        }

        private boolean reaches(int step) {
            return step < plans.size() || (complete && !plans.isEmpty());
        }

        private BagPlan at(int step) {
            return plans.get(Math.min(step, plans.size() - 1));
        }
    }

    private static boolean isBetter(BagPlan plan, BagPlan other) {
        BagScore score = plan.score();
        return score.hardBreaks() != other.score().hardBreaks()
                ? score.hardBreaks() < other.score().hardBreaks()
                : score.penaltyPoints() < other.score().penaltyPoints();
    }

    private static BagPlan plan(BagOptions bag, ExactResult found) {
        return new PlainScore(bag, found.chosen().get(0)).plan();
    }

    private static ExactProblem problem(BagOptions bag, List<Integer> stockLeft) {
        return Team.of(List.of(new SearchBag(bag)), StockPile.all(stockLeft))
                .get(0)
                .exact();
    }
}
