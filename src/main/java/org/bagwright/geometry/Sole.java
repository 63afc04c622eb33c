package org.bagwright.geometry;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The sole as the cap of an ellipsoid that touches the ground at the origin of the head frame when the head is soled as
 * designed. With the upward direction {@code k} in the head frame, the lowest point follows from the ellipsoid's support
 * function {@code h(k) = sqrt(a^2 kx^2 + b^2 ky^2 + c^2 kz^2)}, where {@code a^2 = c Rf} and {@code b^2 = c Rh}.
 *
 * <p>The radii at the bottom do not fix the upright half axis {@code c}; 40 mm is taken for every head, a little more
 * than half the greatest height that the published equipment rules allow a wood. It matters only in the second
 * order: of the model's check table every look, loft and contact shift is met to the last printed digit by 38 to 42 mm.
 */
final class Sole {
    private static final double UPRIGHT_HALF_AXIS_MM = 40;

    private final double aa;
    private final double bb;
    private final double cc;
    private final double raisedMm;

    Sole(SoleForm form) {
        aa = UPRIGHT_HALF_AXIS_MM * form.foreAftRadiusMm();
        bb = UPRIGHT_HALF_AXIS_MM * form.heelToeRadiusMm();
        cc = UPRIGHT_HALF_AXIS_MM * UPRIGHT_HALF_AXIS_MM;
        raisedMm = form.centreOfGravityHeightMm() - UPRIGHT_HALF_AXIS_MM;
    }

    /** Height of the centre of gravity over the lowest point of the sole, mm. */
    double heightMm(Vector3D up) {
        return raisedMm * up.getZ() + support(up);
    }

    /** How fast that height grows while the upward direction moves, mm a unit of the move. */
    double slopeMm(Vector3D up, Vector3D move) {
        double product = aa * up.getX() * move.getX() + bb * up.getY() * move.getY() + cc * up.getZ() * move.getZ();
        return raisedMm * move.getZ() + product / support(up);
    }

    /** The lowest point in the head frame, mm from where the head rests as designed. */
    Vector3D contactMm(Vector3D up) {
        double scale = -1 / support(up);
        double z = UPRIGHT_HALF_AXIS_MM + scale * cc * up.getZ();
        return new Vector3D(scale * aa * up.getX(), scale * bb * up.getY(), z);
    }

    private double support(Vector3D up) {
        double x = up.getX();
        double y = up.getY();
        double z = up.getZ();
        return Math.sqrt(aa * x * x + bb * y * y + cc * z * z);
    }
}
