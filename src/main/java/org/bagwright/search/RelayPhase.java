package org.bagwright.search;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;
import org.optaplanner.core.impl.score.director.InnerScoreDirector;

/** Lays the bags of a team anew, one after the other, round after round as long as a round improves the bench. */
final class RelayPhase implements CustomPhaseCommand<Bench> {
    private final Team team;
    private final BagRelay relay;
    private final BooleanSupplier ended;

    /**
     * @param team whose bags are on the bench
     * @param relay what lays one bag
     * @param ended whether to end after the bag at hand
     */
    RelayPhase(Team team, BagRelay relay, BooleanSupplier ended) {
        this.team = team;
        this.relay = relay;
        this.ended = ended;
    }

    @Override
    public void changeWorkingSolution(ScoreDirector<Bench> director) {
        boolean improved = true;
        while (improved) {
            improved = false;
            for (int bag = 0; bag < team.bags().size() && !ended.getAsBoolean(); bag++) {
                improved |= improves((InnerScoreDirector<Bench, ?>) director, bag);
            }
        }
    }

    /** Lays one bag, and takes it back unless the bench is the better for it. */
    private boolean improves(InnerScoreDirector<Bench, ?> director, int bag) {
        List<ClubSeat> seats = director.getWorkingSolution().bag(bag);
        List<Integer> chosen = seats.stream().map(seat -> seat.choice().index()).toList();
        List<Integer> best = relay.best(bag, chosen, free(director.getWorkingSolution(), seats));
        if (best.equals(chosen)) {
            return false;
        }
        Cost before = cost(director);
        Move<Bench> undo = new SeatMove(seats, candidates(seats, best)).doMove(director);
        boolean better = cost(director).compareTo(before) < 0;
        if (!better) {
            undo.doMoveOnly(director);
        }
        return better;
    }

    private static Cost cost(InnerScoreDirector<Bench, ?> director) {
        director.calculateScore();
        return director.getWorkingSolution().cost();
    }

    private List<Integer> free(Bench bench, List<ClubSeat> seats) {
        return team.scarce().stream()
                .map(pile -> Math.max(0, pile.available() - bench.taken(pile) + Bench.taken(pile, seats)))
                .toList();
    }

    private static List<Candidate> candidates(List<ClubSeat> seats, List<Integer> options) {
        return IntStream.range(0, seats.size())
                .mapToObj(slot -> seats.get(slot).option(options.get(slot)))
                .toList();
    }
}
