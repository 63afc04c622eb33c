package org.bagwright.flight.golfer;

import java.util.List;
import org.bagwright.domain.book.Golfer;

/**
 * A golfer of whom only head speeds are known: he delivers his clubs as {@link PlainDelivery} assumes. A golfer's own shots
 * replace these values.
 *
 * @param speeds his head speeds
 */
record PlainGolfer(HeadSpeeds speeds) {
    /** One whose head speeds are known from his row alone. */
    static PlainGolfer of(Golfer.HeadSpeeds stated, List<ClubToday> clubs) {
        return new PlainGolfer(HeadSpeeds.of(stated, clubs));
    }

    /** How he delivers a club to the ball. */
    Delivery delivery(ClubToday club) {
        return new PlainDelivery(speeds.driverMps()).of(club, speeds.atMps(club));
    }
}
