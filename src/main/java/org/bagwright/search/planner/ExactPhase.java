package org.bagwright.search.planner;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** The exact search as a phase of the planner: it starts from the choice at hand, and proves it, improves it or bounds it. */
final class ExactPhase implements CustomPhaseCommand<PlanningProblem> {
    private final Search search;
    private final BooleanSupplier over;
    private final Runnable end;
    private Bound bound = Bound.NONE;
    private Optional<ExactResult> last = Optional.empty();
    private int round;

    /** The exact search of one team. */
    @FunctionalInterface
    interface Search {
        /**
         * The best choice that it finds.
         *
         * @param start for each bag for each slot the index of an option
         * @param round how often it has searched before: each round has more steps
         */
        ExactResult best(List<List<Integer>> start, int round);
    }

    /**
     * What no choice is below.
     *
     * @param cost in all
     * @param leastMicropoints the penalty alone, whatever a choice breaks
     */
    record Bound(Cost cost, long leastMicropoints) {
        private static final Bound NONE = new Bound(Cost.NONE, 0);

        private Bound max(Cost other, long micropoints) {
            return new Bound(cost.compareTo(other) < 0 ? other : cost, Math.max(leastMicropoints, micropoints));
        }
    }

    /**
     * @param over whether the time is over, or a request to stop came that the planner may have missed
     * @param end ends the planner
     */
    ExactPhase(Search search, BooleanSupplier over, Runnable end) {
        this.search = search;
        this.over = over;
        this.end = end;
    }

    /** What the phases that have run have shown. */
    Bound bound() {
        return bound;
    }

    /** The last result; of equal choices it has one with fewer changes. */
    Optional<ExactResult> last() {
        return last;
    }

    @Override
    public void changeWorkingSolution(ScoreDirector<PlanningProblem> director) {
        PlanningProblem problem = director.getWorkingSolution();
        Cost start = problem.cost();
        if (last.isEmpty() || start.compareTo(bound.cost()) > 0) {
            ExactResult result = search.best(problem.chosen(), round);
            bound = bound.max(result.bound(), result.leastMicropoints());
            last = Optional.of(result);
            round++;
            if (result.cost().compareTo(start) < 0) {
                choose(problem, result.chosen(), director);
                start = result.cost();
            }
        }
        if (start.equals(bound.cost()) || over.getAsBoolean()) {
            end.run();
        }
    }

    private static void choose(
            PlanningProblem problem, List<List<Integer>> chosen, ScoreDirector<PlanningProblem> director) {
        List<SlotAssignment> slots = problem.assignments();
        List<Integer> options = chosen.stream().flatMap(List::stream).toList();
        List<Candidate> choices = IntStream.range(0, slots.size())
                .mapToObj(slot -> slots.get(slot).option(options.get(slot)))
                .toList();
        new AssignmentMove(slots, choices).doMoveOnly(director);
    }
}
