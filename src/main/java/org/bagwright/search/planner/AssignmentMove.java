package org.bagwright.search.planner;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/**
 * Gives one or several slots, of one bag or of several, other options at once. Takes no more changes than each golfer
 * affords and no more of the stock than there is, unless no more than are taken already: nothing is traded against
 * either, so such a move would only cost time.
 */
final class AssignmentMove extends AbstractMove<PlanningProblem> {
    private final List<SlotAssignment> assignments;
    private final List<Candidate> choices;

    /**
     * @param assignments the slots, each once
     * @param choices for each of them its new option
     */
    AssignmentMove(List<SlotAssignment> assignments, List<Candidate> choices) {
        this.assignments = assignments;
        this.choices = choices;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<PlanningProblem> director) {
        PlanningProblem problem = director.getWorkingSolution();
        boolean differs = IntStream.range(0, assignments.size())
                .anyMatch(place -> !Objects.equals(assignments.get(place).choice(), choices.get(place)));
        return differs
                && assignments.stream().allMatch(slot -> affordsChanges(problem, slot))
                && problem.stock().stream().allMatch(pile -> leavesEnough(problem, pile));
    }

    private boolean affordsChanges(PlanningProblem problem, SlotAssignment slot) {
        int more = more(Candidate::changes, other -> other.bag() == slot.bag());
        return more <= 0 || problem.changes(slot) + more <= slot.bag().affordedChanges();
    }

    private boolean leavesEnough(PlanningProblem problem, StockPile pile) {
        int more = more(option -> option.pieces(pile.item()), any -> true);
        return more <= 0 || problem.taken(pile) + more <= pile.available();
    }

    /** How much more of something the new options of some slots have than the old ones. */
    private int more(ToIntFunction<Candidate> amount, Predicate<SlotAssignment> counted) {
        int more = 0;
        for (int place = 0; place < assignments.size(); place++) {
            SlotAssignment slot = assignments.get(place);
            if (counted.test(slot)) {
                more += amount.applyAsInt(choices.get(place)) - amount.applyAsInt(slot.choice());
            }
        }
        return more;
    }

    @Override
    protected AssignmentMove createUndoMove(ScoreDirector<PlanningProblem> director) {
        return new AssignmentMove(
                assignments, assignments.stream().map(SlotAssignment::choice).toList());
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<PlanningProblem> director) {
        for (int place = 0; place < assignments.size(); place++) {
            SlotAssignment slot = assignments.get(place);
            director.beforeVariableChanged(slot, "choice");
            slot.choose(choices.get(place));
            director.afterVariableChanged(slot, "choice");
        }
    }

    @Override
    public String toString() {
        return "slots " + assignments.stream().map(SlotAssignment::id).toList() + " to options "
                + choices.stream().map(Candidate::index).toList();
    }
}
