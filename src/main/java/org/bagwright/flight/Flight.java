package org.bagwright.flight;

/**
 * A flight over level ground.
 *
 * @param carryM distance towards the target to where the ball comes down to launch height, m; 0 when it does not fly
 * @param apexM greatest height over launch height, m
 * @param landingDeg angle of descent below the horizontal, degrees, positive
 * @param timeS time in the air, s
 * @param sidewaysClosedM how far to the closed side of the target line it comes down, m: to the left for a right-hander
 */
public record Flight(double carryM, double apexM, double landingDeg, double timeS, double sidewaysClosedM) {
    /** This flight and another one, mixed in the shares {@code 1 - share} and {@code share}. */
    Flight mixed(Flight other, double share) {
        double rest = 1 - share;
        return new Flight(
                rest * carryM + share * other.carryM,
                rest * apexM + share * other.apexM,
                rest * landingDeg + share * other.landingDeg,
                rest * timeS + share * other.timeS,
                rest * sidewaysClosedM + share * other.sidewaysClosedM);
    }

    static final Flight NONE = new Flight(0, 0, 0, 0, 0);
}
