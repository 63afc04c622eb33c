package org.bagwright.flight;

/**
 * A flight over level ground.
 *
 * @param carryM distance to where the ball comes down to launch height, m; 0 when it does not fly
 * @param apexM greatest height over launch height, m
 * @param landingDeg angle of descent below the horizontal, degrees, positive
 * @param timeS time in the air, s
 */
public record Flight(double carryM, double apexM, double landingDeg, double timeS) {
    static final Flight NONE = new Flight(0, 0, 0, 0);
}
