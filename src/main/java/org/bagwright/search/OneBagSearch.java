package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.PenaltyScale;
import org.bagwright.search.team.ExactSearch;

/**
 * The best plans of one bag while the others stay as they are, by the exact search alone.
 *
 * @param exact the exact search
 * @param mostSteps its most steps for each question
 */
record OneBagSearch(ExactSearch exact, long mostSteps) {
    /** What the search, which counts whole micropoints a term, can leave between plans that it takes for equal. */
    private static final double ROUNDING_POINTS = 1e-5;

    private static final double ROUNDING = 1e-9;

    /**
     * The best plan; empty where it was not proven best.
     *
     * @param start a choice from which to start, if it keeps the limits
     */
    Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft, List<Integer> start) {
        return best(bag, stockLeft, start, PenaltyScale.BOOK);
    }

    /** Goes from scale to scale until one suits: the first that is large enough for the best plan does. */
    private Optional<BagPlan> best(BagOptions bag, List<Integer> stockLeft, List<Integer> start, PenaltyScale scale) {
        Team team = Team.of(List.of(new SearchBag(scale.of(bag))), StockPile.all(stockLeft))
                .get(0);
        ExactResult found = exact.best(
                team.exact(), isOpen(bag, start) ? Optional.of(List.of(start)) : Optional.empty(), mostSteps);
        if (!found.proven()) {
            return Optional.empty();
        }
        BagPlan plan = new PlainScore(bag, found.chosen().get(0)).plan();
        double points = plan.score().penaltyPoints();
        return scale.suits(points) ? Optional.of(plan) : best(bag, stockLeft, plan.chosen(), PenaltyScale.of(points));
    }

    private static boolean isOpen(BagOptions bag, List<Integer> chosen) {
        return IntStream.range(0, chosen.size())
                .allMatch(slot -> bag.slots().get(slot).openIndexes().contains(chosen.get(slot)));
    }

    /** The best plans with at most 0, 1, 2, ... changes, as {@link BagSearch#steps}. */
    BagSteps steps(BagOptions bag, List<Integer> stockLeft, List<Integer> planned) {
        Optional<BagPlan> last = best(bag, stockLeft, planned);
        List<Integer> reference = last.map(BagPlan::chosen).orElse(planned);
        BagScore goal = new PlainScore(bag, reference).score();
        int most = bag.chosen(reference).stream().mapToInt(Option::changes).sum();
        List<BagPlan> plans = new ArrayList<>();
        List<Integer> start = bag.today();
        for (int changes = 0; changes < most; changes++) {
            Optional<BagPlan> step = best(bag.withMostChanges(OptionalInt.of(changes)), stockLeft, start);
            if (step.isEmpty()) {
                return new BagSteps(plans, false);
            }
            start = step.get().chosen();
            plans.add(new PlainScore(bag, start).plan());
            if (last.isPresent() && !isWorse(step.get().score(), goal)) {
                return new BagSteps(plans, true);
            }
        }
        last.ifPresent(plans::add);
        return new BagSteps(plans, last.isPresent());
    }

    private static boolean isWorse(BagScore score, BagScore other) {
        return score.hardBreaks() != other.hardBreaks()
                ? score.hardBreaks() > other.hardBreaks()
                : score.penaltyPoints() > other.penaltyPoints() * (1 + ROUNDING) + ROUNDING_POINTS;
    }
}
