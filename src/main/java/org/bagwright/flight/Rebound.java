package org.bagwright.flight;

/**
 * How a ball leaves a central blow, seen from the path of the head.
 *
 * @param ballSpeedMps ball speed, m/s
 * @param launchFromPathDeg launch above the head path, degrees
 * @param spinRpm backspin, rpm
 */
public record Rebound(double ballSpeedMps, double launchFromPathDeg, double spinRpm) {
    /** The launch above the ground for a path this many degrees upward. */
    public Launch along(double attackDeg) {
        return new Launch(ballSpeedMps, attackDeg + launchFromPathDeg, spinRpm);
    }
}
