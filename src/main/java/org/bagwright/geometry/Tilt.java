package org.bagwright.geometry;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.club.Ring;

/**
 * How a sleeve tilts the shaft against the bore.
 *
 * @param shaft the direction of the shaft in the bore frame, of length 1
 */
record Tilt(Vector3D shaft) {
    /** The shaft in line with the bore. */
    static final Tilt STRAIGHT = new Tilt(Vector3D.PLUS_J);

    static final double RAD_PER_H = Math.PI / 6;
    private static final double NO_BEND_RAD = 1e-9;

    /** The tilt of one ring, or of two composed: {@code T1 T2 b}. No ring leaves the shaft in line with the bore. */
    static Tilt of(List<Ring> rings) {
        Tilt tilt = STRAIGHT;
        for (int i = rings.size() - 1; i >= 0; i--) {
            Ring ring = rings.get(i);
            tilt = tilt.turned(ring.clockH() * RAD_PER_H, Math.toRadians(ring.bendDeg()));
        }
        return tilt;
    }

    /** This tilt turned by one ring: about {@code b x (cos clock u_upright + sin clock u_target)}, by the bend. */
    Tilt turned(double clockRad, double bendRad) {
        Vector3D axis = new Vector3D(Math.cos(clockRad), 0, -Math.sin(clockRad));
        return new Tilt(new Rotation(axis, bendRad, RotationConvention.VECTOR_OPERATOR).applyTo(shaft));
    }

    /** The angle between shaft and bore, degrees. */
    double bendDeg() {
        return Math.toDegrees(bendRad());
    }

    /** The hour toward which the shaft leans, above 0 to 12; 12 for a shaft in line with the bore. */
    double clockH() {
        double clockH = Math.atan2(shaft.getX(), shaft.getZ()) / RAD_PER_H;
        return bendRad() < NO_BEND_RAD ? 12 : clockH > 0 ? clockH : clockH + 12;
    }

    private double bendRad() {
        return Math.atan2(Math.hypot(shaft.getX(), shaft.getZ()), shaft.getY());
    }
}
