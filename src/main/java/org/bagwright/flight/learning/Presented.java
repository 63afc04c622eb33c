package org.bagwright.flight.learning;

import org.bagwright.flight.Launch;

/**
 * What a set-up presents to the ball.
 *
 * @param loftDeg loft at address, degrees
 * @param lnBallSpeedRatio what its weighting adds to the logarithm of ball speed
 * @param launchDeg what its weighting adds to launch, degrees
 * @param lnSpinRatio what its weighting adds to the logarithm of spin
 */
public record Presented(double loftDeg, double lnBallSpeedRatio, double launchDeg, double lnSpinRatio) {
    /** A set-up with today's weighting. */
    public static Presented of(double loftDeg) {
        return new Presented(loftDeg, 0, 0, 0);
    }

    /** A set-up with another weighting, by what that changes of the launch with one delivery. */
    public static Presented of(double loftDeg, Launch today, Launch weighted) {
        return today.spinRpm() <= 0 || weighted.spinRpm() <= 0
                ? of(loftDeg)
                : new Presented(
                        loftDeg,
                        Math.log(weighted.ballSpeedMps() / today.ballSpeedMps()),
                        weighted.launchDeg() - today.launchDeg(),
                        Math.log(weighted.spinRpm() / today.spinRpm()));
    }
}
