package org.bagwright.flight.golfer;

import java.util.List;
import org.bagwright.domain.book.Golfer;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/**
 * A golfer of whom only head speeds are known: he delivers his clubs as {@link PlainDelivery} assumes. A golfer's own shots
 * replace these values.
 *
 * @param speeds his head speeds
 */
public record PlainGolfer(HeadSpeeds speeds) {
    /** One whose head speeds are known from his row alone. */
    public static PlainGolfer of(Golfer.HeadSpeeds stated, List<ClubToday> clubs) {
        return new PlainGolfer(HeadSpeeds.of(stated, clubs));
    }

    /** How he delivers a club to the ball. */
    public Delivery delivery(ClubToday club) {
        return new PlainDelivery(speeds.driverMps()).of(club, speeds.atMps(club));
    }
}
