package org.bagwright.domain.plan;

import org.bagwright.domain.club.Club;

/**
 * A club whose set-up of today a live choice replaces.
 *
 * @param before the club as its row of the sheet Clubs says
 * @param after the club as it is today after that
 * @param otherClub whether the slot holds another club than before, or none, so that every row of the slot must say what is in the bag
 */
public record TodayChange(Club before, Club after, boolean otherClub) {

    /** Whether its row can stay as it is. */
    public boolean isNone() {
        return !otherClub && !isSetOtherwise();
    }

    /** Whether its setting, weighting or bends differ. */
    public boolean isSetOtherwise() {
        return before.today().itemsThatDiffer(after.today()) > 0;
    }
}
