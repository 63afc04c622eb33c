package org.bagwright.flight.golfer;

import java.util.List;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.ClubKind;

/**
 * A plain amateur. How he delivers each kind of club to the ball is assumed: straight lines in loft, chosen so that launches
 * and carries look like those commonly seen and fall from club to club at every driver speed from 70 to 120 mph. A golfer's
 * own shots replace these values.
 *
 * @param speeds his head speeds
 */
record PlainGolfer(HeadSpeeds speeds) {
    private static final double PLAIN_DRIVER_MPS = 93 * 0.44704;
    private static final double EXTRA_DEG_PER_MPS = 0.29;
    private static final double MOST_EXTRA_DEG = 3.5;

    /** One whose head speeds are known from his row alone. */
    static PlainGolfer of(Golfer.HeadSpeeds stated, List<ClubToday> clubs) {
        return new PlainGolfer(HeadSpeeds.of(
                stated, clubs, clubs.stream().map(club -> List.<Shot>of()).toList()));
    }

    /**
     * How he delivers a club to the ball. Ball speed is that of the impact formulas, for a driver 5 % more: Penner's restitution
     * is that of the drivers of the 1990s; that today's thin faces give about 5 % more is an assumption.
     */
    Delivery delivery(ClubToday club) {
        double efficiencyRatio = club.kind() == ClubKind.DRIVER ? 1.05 : 1;
        return new Delivery(speeds.atMps(club), attackDeg(club), offsetDeg(club), efficiencyRatio, 1, 1);
    }

    /** Head path above the horizontal, degrees: a driver level, the others down, more with loft. */
    private static double attackDeg(ClubToday club) {
        double loftDeg = club.loftDeg();
        return switch (club.kind()) {
            case DRIVER -> 0;
            case WOOD -> -1.5 - 0.1 * (loftDeg - 15);
            case HYBRID -> -2.0 - 0.1 * (loftDeg - 20);
            case IRON -> -2.5 - 0.07 * (loftDeg - 20);
            case WEDGE, PUTTER -> -4.2 - 0.03 * (loftDeg - 44);
        };
    }

    /**
     * Delivered loft above presented loft, degrees. Slow golfers deliver the long clubs with more loft, quick ones with
     * less: 0.29 degrees for each m/s of driver speed off 93 mph, none of it left at 50 degrees of loft.
     */
    private double offsetDeg(ClubToday club) {
        double share = Math.max(0, Math.min(1, (50 - club.loftDeg()) / 35));
        double wantedDeg = EXTRA_DEG_PER_MPS * (PLAIN_DRIVER_MPS - speeds.driverMps()) * share;
        return plainOffsetDeg(club) + MOST_EXTRA_DEG * Math.tanh(wantedDeg / MOST_EXTRA_DEG);
    }

    private static double plainOffsetDeg(ClubToday club) {
        double loftDeg = club.loftDeg();
        return switch (club.kind()) {
            case DRIVER -> 3.5;
            case WOOD -> 0.5 - 0.4 * (loftDeg - 15);
            case HYBRID -> -1.5 - 0.4 * (loftDeg - 20);
            case IRON -> -2.5 - 0.25 * (loftDeg - 20);
            case WEDGE, PUTTER -> -8.5 - 0.1 * (loftDeg - 44);
        };
    }
}
