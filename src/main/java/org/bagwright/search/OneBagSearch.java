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
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.model.PlainScore;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.PenaltyScale;
import org.bagwright.search.team.ExactSearch;

/**
 * The best plans of one bag while the others stay as they are, by the exact search alone.
 *
 * @param clock when all questions must be answered
 * @param mostSteps the most steps for each question
 * @param threads how many bags are searched at once
 */
record OneBagSearch(SearchClock clock, long mostSteps, int threads) {
    /** What one question may take of the time that is left, so that a hard one leaves some to the next. */
    private static final double TIME_RATIO = 0.25;

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
        Optional<List<List<Integer>>> first = isOpen(bag, start) ? Optional.of(List.of(start)) : Optional.empty();
        ExactResult found = new ExactSearch(clock.part(TIME_RATIO), threads).best(team.exact(), first, mostSteps);
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
    BagSteps steps(BagOptions bag, List<Integer> stockLeft, BagPlan planned, boolean proven) {
        int most =
                bag.chosen(planned.chosen()).stream().mapToInt(Option::changes).sum();
        List<BagPlan> plans = new ArrayList<>();
        List<Integer> start = bag.today();
        for (int changes = 0; changes < most || !proven; changes++) {
            Optional<BagPlan> step = best(bag.withMostChanges(OptionalInt.of(changes)), stockLeft, start);
            if (step.isEmpty()) {
                return new BagSteps(plans, false);
            }
            start = step.get().chosen();
            plans.add(new PlainScore(bag, start).plan());
            if (!isWorse(step.get().score(), planned.score())) {
                return new BagSteps(plans, true);
            }
        }
        plans.add(planned);
        return new BagSteps(plans, true);
    }

    private static boolean isWorse(BagScore score, BagScore other) {
        return score.hardBreaks() != other.hardBreaks()
                ? score.hardBreaks() > other.hardBreaks()
                : score.penaltyPoints() > other.penaltyPoints() * (1 + ROUNDING) + ROUNDING_POINTS;
    }
}
