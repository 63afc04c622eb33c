package org.bagwright.search;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Gives one club, or two neighbours at once, other options. Never takes more changes than the golfer affords. */
final class SeatMove extends AbstractMove<Bench> {
    private final List<ClubSeat> seats;
    private final List<Candidate> choices;

    SeatMove(List<ClubSeat> seats, List<Candidate> choices) {
        this.seats = seats;
        this.choices = choices;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<Bench> director) {
        boolean differs = IntStream.range(0, seats.size())
                .anyMatch(place -> !Objects.equals(seats.get(place).choice(), choices.get(place)));
        return differs
                && changesAfter(director.getWorkingSolution())
                        <= seats.get(0).bag().affordedChanges();
    }

    private int changesAfter(Bench bench) {
        int changes = bench.bagOf(seats.get(0)).stream()
                .mapToInt(seat -> seat.choice().changes())
                .sum();
        for (int place = 0; place < seats.size(); place++) {
            changes += choices.get(place).changes() - seats.get(place).choice().changes();
        }
        return changes;
    }

    @Override
    protected SeatMove createUndoMove(ScoreDirector<Bench> director) {
        return new SeatMove(seats, seats.stream().map(ClubSeat::choice).toList());
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<Bench> director) {
        for (int place = 0; place < seats.size(); place++) {
            ClubSeat seat = seats.get(place);
            director.beforeVariableChanged(seat, "choice");
            seat.choose(choices.get(place));
            director.afterVariableChanged(seat, "choice");
        }
    }

    @Override
    public String toString() {
        return "seats " + seats.stream().map(ClubSeat::id).toList() + " to options "
                + choices.stream().map(Candidate::index).toList();
    }
}
