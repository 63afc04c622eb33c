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

/** Lays the bags of a team anew, one after the other, round after round as long as a round improves the bench. */
final class ReoptimizeBagPhase implements CustomPhaseCommand<PlanningProblem> {
    private final Team team;
    private final BagOptimizer relay;
    private final BooleanSupplier ended;

    /**
     * @param team whose bags are on the bench
     * @param relay what lays one bag
     * @param ended whether to end after the bag at hand
     */
    ReoptimizeBagPhase(Team team, BagOptimizer relay, BooleanSupplier ended) {
        this.team = team;
        this.relay = relay;
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

    /** Lays one bag, and takes it back unless the bench is the better for it. */
    private boolean improves(InnerScoreDirector<PlanningProblem, ?> director, int bag) {
        List<SlotAssignment> seats = director.getWorkingSolution().bag(bag);
        List<Integer> chosen = seats.stream().map(seat -> seat.choice().index()).toList();
        List<Integer> best = relay.best(bag, chosen, free(director.getWorkingSolution(), seats));
        if (best.equals(chosen)) {
            return false;
        }
        Cost before = cost(director);
        Move<PlanningProblem> undo = new AssignmentMove(seats, candidates(seats, best)).doMove(director);
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

    private List<Integer> free(PlanningProblem bench, List<SlotAssignment> seats) {
        return team.scarce().stream()
                .map(pile -> Math.max(0, pile.available() - bench.taken(pile) + PlanningProblem.taken(pile, seats)))
                .toList();
    }

    private static List<Candidate> candidates(List<SlotAssignment> seats, List<Integer> options) {
        return IntStream.range(0, seats.size())
                .mapToObj(slot -> seats.get(slot).option(options.get(slot)))
                .toList();
    }
}
