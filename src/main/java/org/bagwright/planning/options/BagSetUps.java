package org.bagwright.planning.options;

import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.golfer.SetUps;
import org.bagwright.flight.golfer.WeightedHead;

/**
 * What the set-ups of a golfer's clubs present to the ball, by their geometry and balance.
 *
 * @param book where the readings are
 * @param golfer in whose hands
 * @param clubs his clubs
 */
record BagSetUps(Book book, Golfer golfer, Map<Club, SlotClub> clubs) implements SetUps {
    @Override
    public double presentedLoftDeg(Club club, Choice choice) {
        return clubs.get(club)
                .geometry()
                .pose(new Choice(choice.setting(), choice.bend()))
                .presentedLoftDeg(golfer);
    }

    @Override
    public Optional<WeightedHead> weighted(Club club, Choice choice) {
        return clubs.get(club).weightedAsOtherThanToday(choice.weighting());
    }

    @Override
    public boolean gauged(Club club) {
        return !book.readingsOf(club).isEmpty();
    }
}
