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
    static final Flight NONE = new Flight(0, 0, 0, 0, 0);
}
