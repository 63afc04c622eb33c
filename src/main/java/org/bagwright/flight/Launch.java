package org.bagwright.flight;

/**
 * How a ball leaves the face.
 *
 * @param ballSpeedMps ball speed, m/s
 * @param launchDeg launch angle above the horizontal, degrees
 * @param spinRpm backspin, rpm, 0 or more
 */
public record Launch(double ballSpeedMps, double launchDeg, double spinRpm) {
    public Launch {
        if (!(ballSpeedMps >= 0 && Math.abs(launchDeg) <= 90 && spinRpm >= 0)) {
            throw new IllegalArgumentException("a launch needs a speed and a spin of 0 or more and an angle within 90"
                    + " degrees, found " + ballSpeedMps + " m/s, " + launchDeg + " degrees, " + spinRpm + " rpm");
        }
    }
}
