package org.bagwright.planning.outlook;

import java.util.List;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.golfer.ShotSpread;

/**
 * How uncertain one club's carry is. A club with {@link ShotSpread#ENOUGH} carries or more has the spread of its own shots;
 * the others get a share of their carry by kind, which is an assumption without a source. The average that n shots tell is
 * uncertain by the spread over the root of n, and by a quarter more for three or more shots, since it is their median; but
 * by no more than a share of the carry that is assumed of clubs without shots, since the clubs around it tell as much, and
 * since a single line of the sheet Shots may already be an average.
 *
 * @param shotM spread of single shots, m
 * @param averageM spread of the average, m
 * @param assumed whether the spread of shots is assumed
 */
record Spreads(double shotM, double averageM, boolean assumed) {
    /** Standard deviation of a loft as made, set and gauged, degrees; assumed. */
    static final double GAUGE_DEG = 0.25;
    /** Standard deviation of the day's head speed as a share of the usual one; assumed. */
    static final double DAY_SPEED_RATIO = 0.015;

    /** Standard deviation of the average carry of a club without shots as a share of it; assumed. */
    static final double UNTOLD_AVERAGE_RATIO = 0.03;

    private static final double MEDIAN_FACTOR = Math.sqrt(Math.PI / 2);

    /** The spreads of a club with this planned carry. */
    static Spreads of(Club club, List<Shot> shotsOfBook, double carryM) {
        ShotSpread own = ShotSpread.of(shotsOfBook.stream()
                .filter(shot -> shot.golfer().equalsIgnoreCase(club.golfer()))
                .filter(shot -> shot.club().equalsIgnoreCase(club.name()))
                .toList());
        double shotM = own.carryM().orElse(assumedRatio(club.kind()) * carryM);
        double factor = own.carries() >= 3 ? MEDIAN_FACTOR : 1;
        double untoldM = UNTOLD_AVERAGE_RATIO * carryM;
        double averageM = own.carries() == 0 ? untoldM : Math.min(untoldM, factor * shotM / Math.sqrt(own.carries()));
        return new Spreads(shotM, averageM, own.carryM().isEmpty());
    }

    /** The assumed spread of single shots as a share of carry. */
    static double assumedRatio(ClubKind kind) {
        return switch (kind) {
            case DRIVER, IRON -> 0.05;
            case WOOD, HYBRID, WEDGE, PUTTER -> 0.06;
        };
    }
}
