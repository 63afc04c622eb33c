package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How a ball leaves the face, in space. Frame of a right-hander: x to the target, y up, z to the right; a left-hander is
 * seen in a mirror. Closed is to the left.
 *
 * @param ballMps velocity of the ball, m/s
 * @param ballRadPerS its spin vector, rad/s; backspin points to +z
 */
public record BallStart(Vector3D ballMps, Vector3D ballRadPerS) {
    static final double RPM_PER_RAD_PER_S = 30 / Math.PI;

    /** A start straight at the target with pure backspin. */
    public static BallStart of(Launch launch) {
        double upRad = Math.toRadians(launch.launchDeg());
        return new BallStart(
                new Vector3D(launch.ballSpeedMps() * Math.cos(upRad), launch.ballSpeedMps() * Math.sin(upRad), 0),
                new Vector3D(0, 0, launch.spinRpm() / RPM_PER_RAD_PER_S));
    }

    /** The launch without its direction; all of the spin, however its axis is tilted. */
    public Launch launch() {
        return new Launch(ballMps.getNorm(), launchDeg(), ballRadPerS.getNorm() * RPM_PER_RAD_PER_S);
    }

    private double launchDeg() {
        return Math.toDegrees(Math.atan2(ballMps.getY(), Math.hypot(ballMps.getX(), ballMps.getZ())));
    }

    /** Direction of the start, degrees left of the target. */
    public double startClosedDeg() {
        return Math.toDegrees(Math.atan2(0 - ballMps.getZ(), ballMps.getX()));
    }

    public BallStart scaled(double speedRatio, double spinRatio) {
        return new BallStart(ballMps.scalarMultiply(speedRatio), ballRadPerS.scalarMultiply(spinRatio));
    }

    public BallStart plus(BallStart change) {
        return new BallStart(ballMps.add(change.ballMps), ballRadPerS.add(change.ballRadPerS));
    }

    public BallStart minus(BallStart other) {
        return new BallStart(ballMps.subtract(other.ballMps), ballRadPerS.subtract(other.ballRadPerS));
    }
}
