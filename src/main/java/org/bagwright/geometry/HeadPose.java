package org.bagwright.geometry;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.util.MathUtils;

/**
 * A head in a pose, and what is read there.
 *
 * @param head the head
 * @param turn from the head frame to the ground frame
 */
record HeadPose(HeadDesign head, Rotation turn) {

    /** Angle of the face to a plumb line, degrees. */
    double loftDeg() {
        double up = turn.applyTo(head.faceNormal()).getZ();
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, up))));
    }

    /** Heading of the face, degrees, closed positive. */
    double faceHeadingDeg() {
        Vector3D normal = turn.applyTo(head.faceNormal());
        return Math.toDegrees(Math.atan2(normal.getY(), normal.getX()));
    }

    /** Heading of the leading edge, degrees, closed positive; 0 is at right angles to the target line. */
    double edgeHeadingDeg() {
        Vector3D edge = turn.applyTo(head.scorelines());
        return Math.toDegrees(Math.atan2(-edge.getX(), edge.getY()));
    }

    /** The upward direction in the head frame. */
    Vector3D up() {
        return turn.applyInverseTo(Vector3D.PLUS_K);
    }

    /** The head turned on about an axis of the ground frame. */
    HeadPose turned(Vector3D axis, double angleRad) {
        Rotation on = new Rotation(axis, angleRad, RotationConvention.VECTOR_OPERATOR);
        return new HeadPose(head, on.compose(turn, RotationConvention.VECTOR_OPERATOR));
    }

    /**
     * The head turned about the held shaft until the leading edge heads as given. The edge is
     * {@code p + cos q + sin w} of the turn, which has a closed form; where no turn gets there the pose stays.
     *
     * @param headingDeg heading of the leading edge wanted, degrees, closed positive
     * @param held the shaft in the ground frame
     */
    HeadPose turnedTo(double headingDeg, Vector3D held) {
        double headingRad = Math.toRadians(headingDeg);
        Vector3D square = new Vector3D(Math.cos(headingRad), Math.sin(headingRad), 0);
        Vector3D edge = turn.applyTo(head.scorelines());
        double along = held.dotProduct(edge) * held.dotProduct(square);
        double cosPart = edge.dotProduct(square) - along;
        double sinPart = held.crossProduct(edge).dotProduct(square);
        double reach = Math.hypot(cosPart, sinPart);
        if (!(Math.abs(along) < reach)) {
            return this;
        }
        double middleRad = Math.atan2(sinPart, cosPart);
        double asideRad = Math.acos(-along / reach);
        double oneRad = MathUtils.normalizeAngle(middleRad + asideRad, 0);
        double otherRad = MathUtils.normalizeAngle(middleRad - asideRad, 0);
        return turned(held, Math.abs(oneRad) < Math.abs(otherRad) ? oneRad : otherRad);
    }
}
