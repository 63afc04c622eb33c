package org.bagwright.search;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Random moves, about a third each: of one club; of two neighbours, since a gap is often kept only if both its clubs
 * move; and of any two clubs of a bag, since with few changes allowed one club must give its change up for another.
 */
public final class SeatMoveFactory implements MoveIteratorFactory<Bench, SeatMove> {
    /** Draws for one step. Where none of them may be made, as in a bag that may not change, the search ends. */
    private static final int MOST_DRAWS = 10_000;

    @Override
    public long getSize(ScoreDirector<Bench> director) {
        return director.getWorkingSolution().seats().stream()
                .mapToLong(seat -> seat.open().size())
                .sum();
    }

    @Override
    public Iterator<SeatMove> createOriginalMoveIterator(ScoreDirector<Bench> director) {
        throw new UnsupportedOperationException("the moves are drawn at random");
    }

    @Override
    public Iterator<SeatMove> createRandomMoveIterator(ScoreDirector<Bench> director, Random random) {
        Bench bench = director.getWorkingSolution();
        return Stream.generate(() -> move(bench, drawn(bench.seats(), random), random))
                .limit(MOST_DRAWS)
                .filter(move -> move.isMoveDoable(director))
                .iterator();
    }

    private static SeatMove move(Bench bench, ClubSeat first, Random random) {
        ClubSeat second = partner(bench, first, random);
        List<ClubSeat> moved = second == first ? List.of(first) : List.of(first, second);
        List<Candidate> choices =
                moved.stream().map(seat -> drawn(seat.open(), random)).toList();
        return new SeatMove(moved, choices);
    }

    /** The seat that moves with another one; that one itself if it moves alone. */
    private static ClubSeat partner(Bench bench, ClubSeat first, Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> first.isLast() ? first : bench.seats().get(first.id() + 1);
            case 1 -> drawn(bench.bagOf(first), random);
            default -> first;
        };
    }

    private static <T> T drawn(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
