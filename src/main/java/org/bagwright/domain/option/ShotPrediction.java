package org.bagwright.domain.option;

/**
 * The shot that an option is expected to give.
 *
 * @param ballSpeedMps ball speed, m/s
 * @param launchDeg launch angle above the ground, degrees
 * @param spinRpm spin about its own axis, rpm
 * @param carryM carry on level ground, metres
 * @param apexM greatest height, metres
 * @param landingDeg angle of descent, degrees, positive
 * @param startClosedDeg direction in which the ball starts, degrees to the closed side of the target, which is the left for
 *     a right-hander; negative is to the open side
 * @param sidewaysClosedM how far to the closed side of the target line the ball comes down, metres
 */
public record ShotPrediction(
        double ballSpeedMps,
        double launchDeg,
        double spinRpm,
        double carryM,
        double apexM,
        double landingDeg,
        double startClosedDeg,
        double sidewaysClosedM) {
    /** The same shot started and come down on another line. */
    public ShotPrediction onLine(double newStartClosedDeg, double newSidewaysClosedM) {
        return new ShotPrediction(
                ballSpeedMps, launchDeg, spinRpm, carryM, apexM, landingDeg, newStartClosedDeg, newSidewaysClosedM);
    }
}
