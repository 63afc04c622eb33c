package org.bagwright.search;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Random moves, half of one club and half of two neighbours: a gap is often kept only if both its clubs move. */
public final class SeatMoveFactory implements MoveIteratorFactory<Bench, SeatMove> {
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
        List<ClubSeat> seats = director.getWorkingSolution().seats();
        List<ClubSeat> free = seats.stream().filter(seat -> !seat.settled()).toList();
        return free.isEmpty()
                ? List.<SeatMove>of().iterator()
                : Stream.generate(() -> drawn(seats, free, random)).iterator();
    }

    private static SeatMove drawn(List<ClubSeat> seats, List<ClubSeat> free, Random random) {
        List<ClubSeat> moved = new ArrayList<>();
        ClubSeat first = drawn(free, random);
        moved.add(first);
        if (first.hasNext() && random.nextBoolean()) {
            moved.add(seats.get(first.nextId()));
        }
        List<Candidate> choices =
                moved.stream().map(seat -> drawn(seat.open(), random)).toList();
        return new SeatMove(moved, choices);
    }

    private static <T> T drawn(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
