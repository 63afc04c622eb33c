package org.bagwright.geometry;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.club.Ring;

/** The direction of the shaft in the bore frame, as the rings of a sleeve set it. */
final class Tilt {
    /** The shaft in line with the bore. */
    static final Vector3D STRAIGHT = Vector3D.PLUS_J;

    static final double RAD_PER_H = Math.PI / 6;
    private static final double NO_BEND_RAD = 1e-9;

    private Tilt() {}

    /** The shaft behind one ring, or behind two composed: {@code T1 T2 b}. No ring leaves it in line with the bore. */
    static Vector3D of(List<Ring> rings) {
        Vector3D shaft = STRAIGHT;
        for (int i = rings.size() - 1; i >= 0; i--) {
            Ring ring = rings.get(i);
            shaft = turned(shaft, ring.clockH() * RAD_PER_H, Math.toRadians(ring.bendDeg()));
        }
        return shaft;
    }

    /** A direction turned by one ring: about {@code b x (cos clock u_upright + sin clock u_target)}, by the bend. */
    static Vector3D turned(Vector3D direction, double clockRad, double bendRad) {
        Vector3D axis = new Vector3D(Math.cos(clockRad), 0, -Math.sin(clockRad));
        return new Rotation(axis, bendRad, RotationConvention.VECTOR_OPERATOR).applyTo(direction);
    }

    /** The angle between shaft and bore, degrees. */
    static double bendDeg(Vector3D tilt) {
        return Math.toDegrees(bendRad(tilt));
    }

    /** The hour toward which the shaft leans, above 0 to 12; 12 for a shaft in line with the bore. */
    static double clockH(Vector3D tilt) {
        double clockH = Math.atan2(tilt.getX(), tilt.getZ()) / RAD_PER_H;
        return bendRad(tilt) < NO_BEND_RAD ? 12 : clockH > 0 ? clockH : clockH + 12;
    }

    private static double bendRad(Vector3D tilt) {
        return Math.atan2(Math.hypot(tilt.getX(), tilt.getZ()), tilt.getY());
    }
}
