package org.bagwright.flight.golfer;

import org.bagwright.domain.club.ClubKind;

/**
 * How a plain amateur brings each kind of club to the ball: assumed values, straight lines in loft, chosen so that
 * launches and carries look like those commonly seen and fall from club to club at every driver speed from 70 to 120
 * mph. They only stand until a golfer's own shots replace them.
 */
final class DeliveryDefaults {
    private static final double PLAIN_DRIVER_MPS = 93 * 0.44704;
    private static final double EXTRA_DEG_PER_MPS = 0.29;
    private static final double MOST_EXTRA_DEG = 3.5;

    private DeliveryDefaults() {}

    /** Head path above the horizontal, degrees: a driver level, the others down, more with loft. */
    static double attackDeg(ClubKind kind, double loftDeg) {
        return switch (kind) {
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
    static double offsetDeg(ClubKind kind, double loftDeg, double driverSpeedMps) {
        double share = Math.max(0, Math.min(1, (50 - loftDeg) / 35));
        double wantedDeg = EXTRA_DEG_PER_MPS * (PLAIN_DRIVER_MPS - driverSpeedMps) * share;
        return plainOffsetDeg(kind, loftDeg) + MOST_EXTRA_DEG * Math.tanh(wantedDeg / MOST_EXTRA_DEG);
    }

    private static double plainOffsetDeg(ClubKind kind, double loftDeg) {
        return switch (kind) {
            case DRIVER -> 3.5;
            case WOOD -> 0.5 - 0.4 * (loftDeg - 15);
            case HYBRID -> -1.5 - 0.4 * (loftDeg - 20);
            case IRON -> -2.5 - 0.25 * (loftDeg - 20);
            case WEDGE, PUTTER -> -8.5 - 0.1 * (loftDeg - 44);
        };
    }

    /**
     * Ball speed over that of the impact formulas. Penner's restitution is that of the drivers of the 1990s; today's thin
     * faces give about 5 % more, which is an assumption.
     */
    static double efficiencyRatio(ClubKind kind) {
        return kind == ClubKind.DRIVER ? 1.05 : 1;
    }
}
