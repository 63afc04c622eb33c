package org.bagwright.planning.options;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;

/**
 * What holds a slot to one choice.
 *
 * @param asToday a club that its row of the sheet Clubs pins as it is today
 * @param live a choice that is pinned on the sheet Plan; it goes before the club, and both must mean the same
 */
record SlotPin(Optional<Club> asToday, Optional<LiveChoice> live) {

    static SlotPin of(List<SlotClub> clubs, Optional<LiveChoice> live) {
        return new SlotPin(
                clubs.stream().map(SlotClub::club).filter(Club::pinned).findFirst(), live);
    }

    boolean isFree() {
        return asToday.isEmpty() && live.isEmpty();
    }

    /** Whether a plan may take a club set up in one way. */
    boolean allows(Club club, Choice choice) {
        if (live.isPresent()) {
            return live.get().means(club, choice);
        }
        return asToday.isEmpty() || (club.equals(asToday.get()) && choice.itemsThatDiffer(club.tidiedToday()) == 0);
    }

    /** Whether a plan may leave the slot empty, where the book lets it. */
    boolean allowsNone() {
        return live.map(choice -> choice.club().equalsIgnoreCase(Option.LEFT_OUT))
                .orElse(asToday.isEmpty());
    }
}
