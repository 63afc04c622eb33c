package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
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

    /**
     * A start by its angles.
     *
     * @param launch speed, launch and spin
     * @param startClosedDeg direction of the start, degrees left of the target
     * @param tiltClosedDeg tilt of the spin axis seen from behind, degrees; positive curves the ball to the left
     */
    public static BallStart of(Launch launch, double startClosedDeg, double tiltClosedDeg) {
        double upRad = Math.toRadians(launch.launchDeg());
        double tiltRad = Math.toRadians(tiltClosedDeg);
        double spin = launch.spinRpm() / RPM_PER_RAD_PER_S;
        Vector3D speed =
                new Vector3D(launch.ballSpeedMps() * Math.cos(upRad), launch.ballSpeedMps() * Math.sin(upRad), 0);
        Vector3D spins = new Vector3D(0, spin * Math.sin(tiltRad), spin * Math.cos(tiltRad));
        Rotation toLeft =
                new Rotation(Vector3D.PLUS_J, Math.toRadians(startClosedDeg), RotationConvention.VECTOR_OPERATOR);
        return startClosedDeg == 0
                ? new BallStart(speed, spins)
                : new BallStart(toLeft.applyTo(speed), toLeft.applyTo(spins));
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

    /** Tilt of the spin axis against the horizontal, seen along the start, degrees; positive curves the ball to the left. */
    double tiltClosedDeg() {
        Vector3D toRight = new Vector3D(-ballMps.getZ(), 0, ballMps.getX()).normalize();
        return Math.toDegrees(Math.atan2(ballRadPerS.getY(), ballRadPerS.dotProduct(toRight)));
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
