package org.bagwright.search.planner;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;
import org.optaplanner.core.impl.score.director.InnerScoreDirector;

/** Re-optimises the bags of a team, one after the other, round after round as long as a round improves the choice. */
final class ReoptimizeBagPhase implements CustomPhaseCommand<PlanningProblem> {
    private final Team team;
    private final BagOptimizer optimizer;
    private final BooleanSupplier ended;

    /**
     * @param team the bags of the planning problem
     * @param optimizer re-optimises one bag
     * @param ended whether to end after the bag at hand
     */
    ReoptimizeBagPhase(Team team, BagOptimizer optimizer, BooleanSupplier ended) {
        this.team = team;
        this.optimizer = optimizer;
        this.ended = ended;
    }

    @Override
    public void changeWorkingSolution(ScoreDirector<PlanningProblem> director) {
        boolean improved = true;
        while (improved) {
            improved = false;
            for (int bag = 0; bag < team.bags().size() && !ended.getAsBoolean(); bag++) {
                improved |= improves((InnerScoreDirector<PlanningProblem, ?>) director, bag);
            }
        }
    }

    /** Re-optimises one bag, and takes that back unless the choice gets better. */
    private boolean improves(InnerScoreDirector<PlanningProblem, ?> director, int bag) {
        List<SlotAssignment> assignments = director.getWorkingSolution().bag(bag);
        List<Integer> chosen =
                assignments.stream().map(slot -> slot.choice().index()).toList();
        List<Integer> best = optimizer.best(bag, free(director.getWorkingSolution(), assignments));
        if (best.equals(chosen)) {
            return false;
        }
        Cost before = cost(director);
        Move<PlanningProblem> undo = new AssignmentMove(assignments, candidates(assignments, best)).doMove(director);
        boolean better = cost(director).compareTo(before) < 0;
        if (!better) {
            undo.doMoveOnly(director);
        }
        return better;
    }

    private static Cost cost(InnerScoreDirector<PlanningProblem, ?> director) {
        director.calculateScore();
        return director.getWorkingSolution().cost();
    }

    private List<Integer> free(PlanningProblem problem, List<SlotAssignment> assignments) {
        return team.scarce().stream()
                .map(pile ->
                        Math.max(0, pile.available() - problem.taken(pile) + PlanningProblem.taken(pile, assignments)))
                .toList();
    }

    private static List<Candidate> candidates(List<SlotAssignment> assignments, List<Integer> options) {
        return IntStream.range(0, assignments.size())
                .mapToObj(slot -> assignments.get(slot).option(options.get(slot)))
                .toList();
    }
}
