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
 * Gives one or several seats, of one bag or of several, other options at once. Takes no more changes than each golfer
 * affords and no more of the stock than there is, unless no more than are taken already: nothing is traded against
 * either, so such a move would only cost time.
 */
final class AssignmentMove extends AbstractMove<PlanningProblem> {
    private final List<SlotAssignment> seats;
    private final List<Candidate> choices;

    /**
     * @param seats the seats, each once
     * @param choices for each of them its new option
     */
    AssignmentMove(List<SlotAssignment> seats, List<Candidate> choices) {
        this.seats = seats;
        this.choices = choices;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<PlanningProblem> director) {
        PlanningProblem bench = director.getWorkingSolution();
        boolean differs = IntStream.range(0, seats.size())
                .anyMatch(place -> !Objects.equals(seats.get(place).choice(), choices.get(place)));
        return differs
                && seats.stream().allMatch(seat -> affordsChanges(bench, seat))
                && bench.stock().stream().allMatch(pile -> leavesEnough(bench, pile));
    }

    private boolean affordsChanges(PlanningProblem bench, SlotAssignment seat) {
        int more = more(Candidate::changes, other -> other.bag() == seat.bag());
        return more <= 0 || bench.changes(seat) + more <= seat.bag().affordedChanges();
    }

    private boolean leavesEnough(PlanningProblem bench, StockPile pile) {
        int more = more(option -> option.pieces(pile.item()), any -> true);
        return more <= 0 || bench.taken(pile) + more <= pile.available();
    }

    /** How much more of something the new options of some seats have than the old ones. */
    private int more(ToIntFunction<Candidate> amount, Predicate<SlotAssignment> counted) {
        int more = 0;
        for (int place = 0; place < seats.size(); place++) {
            SlotAssignment seat = seats.get(place);
            if (counted.test(seat)) {
                more += amount.applyAsInt(choices.get(place)) - amount.applyAsInt(seat.choice());
            }
        }
        return more;
    }

    @Override
    protected AssignmentMove createUndoMove(ScoreDirector<PlanningProblem> director) {
        return new AssignmentMove(
                seats, seats.stream().map(SlotAssignment::choice).toList());
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<PlanningProblem> director) {
        for (int place = 0; place < seats.size(); place++) {
            SlotAssignment seat = seats.get(place);
            director.beforeVariableChanged(seat, "choice");
            seat.choose(choices.get(place));
            director.afterVariableChanged(seat, "choice");
        }
    }

    @Override
    public String toString() {
        return "seats " + seats.stream().map(SlotAssignment::id).toList() + " to options "
                + choices.stream().map(Candidate::index).toList();
    }
}
