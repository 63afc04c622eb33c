package org.bagwright.planning.outlook;

import java.util.List;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.golfer.ShotSpread;

/**
 * How far single shots with a club scatter about their true average: as its own shots do where there are enough of them,
 * else a share of the carry.
 *
 * @param spreadM the standard deviation, m
 * @param assumed whether it is assumed
 */
record ShotScatter(double spreadM, boolean assumed) {
    /** Scatter of single shots as a share of the carry; assumed. */
    static final double ASSUMED_RATIO = 0.03;

    /** The scatter of a club with this planned carry. */
    static ShotScatter of(Club club, List<Shot> shotsOfBook, double carryM) {
        ShotSpread own = ShotSpread.of(shotsOfBook.stream()
                .filter(shot -> shot.golfer().equalsIgnoreCase(club.golfer()))
                .filter(shot -> shot.club().equalsIgnoreCase(club.name()))
                .toList());
        return new ShotScatter(
                own.carryM().orElse(ASSUMED_RATIO * carryM), own.carryM().isEmpty());
    }
}
