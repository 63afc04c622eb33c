package org.bagwright.domain;

/**
 * The shot that an option is expected to give.
 *
 * @param ballSpeedMps ball speed, m/s
 * @param launchDeg launch angle above the ground, degrees
 * @param spinRpm backspin, rpm
 * @param carryM carry on level ground, metres
 * @param apexM greatest height, metres
 * @param landingDeg angle of descent, degrees, positive
 */
public record ShotPrediction(
        double ballSpeedMps, double launchDeg, double spinRpm, double carryM, double apexM, double landingDeg) {}
