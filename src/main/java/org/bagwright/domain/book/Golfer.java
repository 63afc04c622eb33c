package org.bagwright.domain.book;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * One golfer of a book.
 *
 * @param name what the book calls him
 * @param hand the side from which he plays
 * @param speeds his head speeds
 * @param address how he holds the club at address
 * @param gapWish the gap he wants between neighbouring clubs
 * @param limits what a plan keeps for every club of his that states no limit of its own
 * @param mostChanges the most items that a plan may change; empty is no limit
 * @param cell where the book names him
 */
public record Golfer(
        String name,
        Hand hand,
        HeadSpeeds speeds,
        Address address,
        GapWish gapWish,
        Limits limits,
        OptionalInt mostChanges,
        String cell) {
    public Golfer {
        Checks.named(name, "golfer");
        mostChanges.ifPresent(count -> Checks.that(count >= 0, "most changes must be 0 or more"));
    }

    /** The same golfer with another limit of changes. */
    public Golfer withMostChanges(OptionalInt other) {
        return new Golfer(name, hand, speeds, address, gapWish, limits, other, cell);
    }

    /**
     * Measured head speeds; what is empty is assumed.
     *
     * @param driverMps with the driver, m/s
     * @param ironMps with the 7 iron, m/s
     */
    public record HeadSpeeds(OptionalDouble driverMps, OptionalDouble ironMps) {
        public HeadSpeeds {
            driverMps.ifPresent(value -> Checks.within(Limit.HEAD_SPEED_MPS, value, "driver speed"));
            ironMps.ifPresent(value -> Checks.within(Limit.HEAD_SPEED_MPS, value, "iron speed"));
        }
    }

    /**
     * How he holds the club at address.
     *
     * @param leanDeg forward shaft lean, degrees
     * @param squaresFace whether he brings the leading edge square
     * @param keepsShaftAligned whether settings that turn the shaft away from today's are closed to him
     */
    public record Address(double leanDeg, boolean squaresFace, boolean keepsShaftAligned) {
        public Address {
            Checks.within(Limit.LEAN_DEG, leanDeg, "shaft lean");
        }
    }
}
