package org.bagwright.flight.golfer;

import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/**
 * How a plain golfer delivers a club to the ball: at a driver speed of 93 mph an ordinary amateur, at 113 mph near the
 * averages of tour men. All of it is assumed, smooth in loft and in driver speed: woods, hybrids and irons after the
 * averages by club of tour men (driver 113 mph) and tour women (94 mph), from memory; a driver after the tour men's ball
 * speed and launch as published, and at 93 mph after a ball speed of 1.42 to 1.44 times head speed, from memory. Tour women
 * reach 1.49 at 94 mph and launch their drivers at 13 degrees [memory]; nothing in a golfer's row tells them from the
 * amateur, so a woman of the tour finds her drives too short until she has shots. Carries fall from club to club at every
 * driver speed from 70 to 120 mph.
 *
 * @param driverMps head speed with the driver, m/s
 */
record PlainDelivery(double driverMps) {
    private static final double MPS_PER_MPH = 0.44704;
    private static final double AMATEUR_DRIVER_MPS = 93 * MPS_PER_MPH;

    /** Half-way from the amateur's driver to that of tour men, and how gradual the way is; assumed. */
    private static final double HALF_TOUR_MPS = 103 * MPS_PER_MPH;

    private static final double TOUR_WIDTH_MPS = 8 * MPS_PER_MPH;

    /** The driver speed about which a driver's delivered loft changes most, and how gradually; assumed. */
    private static final double SLOW_DRIVER_MPS = 82 * MPS_PER_MPH;

    private static final double SLOW_WIDTH_MPS = 12.5 * MPS_PER_MPH;

    /** How he delivers a club to the ball at this head speed, m/s. */
    Delivery of(ClubToday club, double headSpeedMps) {
        return new Delivery(
                headSpeedMps,
                attackDeg(club),
                plainOffsetDeg(club) + slowOffsetDeg(club),
                efficiencyRatio(club),
                spinRatio(club),
                1);
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

    /** Delivered loft above presented loft of the amateur, degrees. */
    private static double plainOffsetDeg(ClubToday club) {
        double loftDeg = club.loftDeg();
        return switch (club.kind()) {
            case DRIVER -> 3.6;
            case WOOD -> -0.4 - 0.55 * (loftDeg - 15);
            case HYBRID -> -3.0 - 0.4 * (loftDeg - 20);
            case IRON, WEDGE, PUTTER -> -8.6 - 0.3 * (loftDeg - 30) + 0.004 * (loftDeg - 30) * (loftDeg - 30);
        };
    }

    /**
     * What slower golfers add to the delivered loft, degrees. With a driver from 3 degrees for the slowest to -0.5 for the
     * quickest, none at 93 mph; with the others per m/s of driver speed under 93 mph, at most 5 or 6 degrees either way.
     */
    private double slowOffsetDeg(ClubToday club) {
        double slowerMps = AMATEUR_DRIVER_MPS - driverMps;
        return switch (club.kind()) {
            case DRIVER -> 1.25 + 1.75 * Math.tanh((SLOW_DRIVER_MPS - driverMps) / SLOW_WIDTH_MPS);
            case WOOD -> 5 * Math.tanh(0.30 * slowerMps / 5);
            case HYBRID -> 5 * Math.tanh(0.35 * slowerMps / 5);
            case IRON, WEDGE, PUTTER -> 6 * Math.tanh(0.40 * slowerMps / 6);
        };
    }

    /** How much of the way from the amateur's driver to that of tour men a golfer has gone, 0 to 1. */
    private double tourShare() {
        return 0.5 * (1 + Math.tanh((driverMps - HALF_TOUR_MPS) / TOUR_WIDTH_MPS));
    }

    /**
     * Ball speed over that of the impact formulas. Penner's restitution is that of the drivers of the 1990s; today's thin
     * faces give 4 % more in an amateur's hands and 9 % where the centre of the face is met. Irons and wedges lose 1 to 5 %.
     */
    private double efficiencyRatio(ClubToday club) {
        double loftDeg = club.loftDeg();
        return switch (club.kind()) {
            case DRIVER -> 1.04 + 0.05 * tourShare();
            case WOOD, HYBRID -> 1;
            case IRON, WEDGE, PUTTER -> 0.994 - 0.0015 * (loftDeg - 20);
        };
    }

    /**
     * Spin over that of a ball that leaves the face rolling: more with irons, whose balls leave with a tangential rebound,
     * less where the face slips with most loft, and less with the drivers of quick golfers, struck above their centre.
     */
    private double spinRatio(ClubToday club) {
        double loftDeg = club.loftDeg();
        return switch (club.kind()) {
            case DRIVER -> 1 - 0.24 * tourShare();
            case WOOD -> 1.05 + 0.04 * (loftDeg - 15);
            case HYBRID -> 1.25 + 0.0075 * (loftDeg - 20);
            case IRON -> 1.26 + 0.0075 * (loftDeg - 20);
            case WEDGE, PUTTER -> 1.44 - 0.012 * (loftDeg - 44);
        };
    }
}
