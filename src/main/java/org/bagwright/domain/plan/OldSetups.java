package org.bagwright.domain.plan;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.CloseNames;

/**
 * How clubs were set up before live choices became today's set-up, for the shots that were hit with them.
 *
 * @param changes the clubs whose set-up of today a live choice replaces
 * @param clubs all clubs of the book
 */
public record OldSetups(List<TodayChange> changes, List<Club> clubs) {
    public OldSetups {
        changes = List.copyOf(changes);
        clubs = List.copyOf(clubs);
    }

    /** How a golfer's club of this name was set up; empty where it still is so, or where two have the name. */
    public Optional<Shot.Setup> of(String golfer, String club) {
        long called =
                clubs.stream().filter(each -> isCalled(each, golfer, club)).count();
        return changes.stream()
                .filter(TodayChange::isSetOtherwise)
                .map(TodayChange::before)
                .filter(before -> called == 1 && isCalled(before, golfer, club))
                .map(Shot.Setup::of)
                .findFirst();
    }

    private static boolean isCalled(Club club, String golfer, String name) {
        return CloseNames.key(club.golfer()).equals(CloseNames.key(golfer))
                && CloseNames.key(club.name()).equals(CloseNames.key(name));
    }
}
