package org.bagwright.geometry;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Poses of one head: turns from the head frame to the ground frame, and what is read in them. */
final class Poses {
    private static final RotationConvention TURNS = RotationConvention.VECTOR_OPERATOR;

    private Poses() {}

    /**
     * The direction in which a golfer holds the shaft, in the ground frame.
     *
     * @param lieDeg the angle to the ground as seen along the target line, degrees
     * @param leanDeg the lean as seen from the front, degrees, forward positive
     */
    static Vector3D heldShaft(double lieDeg, double leanDeg) {
        double lieRad = Math.toRadians(lieDeg);
        double forward = Math.tan(Math.toRadians(leanDeg)) * Math.sin(lieRad);
        return new Vector3D(forward, Math.cos(lieRad), Math.sin(lieRad)).normalize();
    }

    /**
     * The address pose: the shaft as the golfer holds it and the leading edge square. A turn about y gives the shaft its
     * x-part, a turn about x the rest.
     */
    static Address address(HeadDesign head, Vector3D shaft, Vector3D held) {
        Vector3D seen = head.seenFromFace(shaft);
        double reach = Math.hypot(seen.getX(), seen.getZ());
        double aboutYRad = Math.asin(held.getX() / reach) - Math.atan2(seen.getX(), seen.getZ());
        Rotation leaned = about(Vector3D.PLUS_J, aboutYRad);
        Vector3D part = leaned.applyTo(seen);
        double aboutXRad = Math.atan2(held.getZ(), held.getY()) - Math.atan2(part.getZ(), part.getY());
        Rotation squared = about(Vector3D.PLUS_K, -Math.toRadians(head.faceDeg()));
        Rotation turn = about(Vector3D.PLUS_I, aboutXRad).compose(leaned.compose(squared, TURNS), TURNS);
        return new Address(turn, -Math.toDegrees(aboutXRad));
    }

    /**
     * An address pose.
     *
     * @param turn from the head frame to the ground frame
     * @param soleTiltDeg how far the toe is up, degrees
     */
    record Address(Rotation turn, double soleTiltDeg) {}

    /** Angle of the face to a plumb line in a pose, degrees. */
    static double loftDeg(HeadDesign head, Rotation pose) {
        double up = pose.applyTo(head.faceNormal()).getZ();
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, up))));
    }

    /** Heading of the face in a pose, degrees, closed positive. */
    static double faceHeadingDeg(HeadDesign head, Rotation pose) {
        Vector3D normal = pose.applyTo(head.faceNormal());
        return Math.toDegrees(Math.atan2(normal.getY(), normal.getX()));
    }

    /** Heading of the leading edge in a pose, degrees, closed positive; 0 is at right angles to the target line. */
    static double edgeHeadingDeg(HeadDesign head, Rotation pose) {
        Vector3D edge = pose.applyTo(head.scorelines());
        return Math.toDegrees(Math.atan2(-edge.getX(), edge.getY()));
    }

    /** The upward direction in the head frame. */
    static Vector3D up(Rotation pose) {
        return pose.applyInverseTo(Vector3D.PLUS_K);
    }

    static Rotation about(Vector3D axis, double angleRad) {
        return new Rotation(axis, angleRad, TURNS);
    }

    /** The pose turned on about an axis of the ground frame. */
    static Rotation turned(Rotation pose, Vector3D axis, double angleRad) {
        return about(axis, angleRad).compose(pose, TURNS);
    }
}
