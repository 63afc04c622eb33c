package org.bagwright.geometry;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A head at address: the shaft as the golfer holds it and the leading edge square.
 *
 * @param pose the head in this pose
 * @param soleTiltDeg how far the toe is up, degrees
 */
record AddressPose(HeadPose pose, double soleTiltDeg) {
    private static final RotationConvention TURNS = RotationConvention.VECTOR_OPERATOR;

    /**
     * The address pose of a head. A turn about y gives the shaft its x-part, a turn about x the rest.
     *
     * @param shaft the shaft in the head frame
     * @param held the shaft in the ground frame
     */
    static AddressPose of(HeadDesign head, Vector3D shaft, Vector3D held) {
        Vector3D seen = head.seenFromFace(shaft);
        double reach = Math.hypot(seen.getX(), seen.getZ());
        double aboutYRad = Math.asin(held.getX() / reach) - Math.atan2(seen.getX(), seen.getZ());
        Rotation leaned = new Rotation(Vector3D.PLUS_J, aboutYRad, TURNS);
        Vector3D part = leaned.applyTo(seen);
        double aboutXRad = Math.atan2(held.getZ(), held.getY()) - Math.atan2(part.getZ(), part.getY());
        Rotation squared = new Rotation(Vector3D.PLUS_K, -Math.toRadians(head.faceDeg()), TURNS);
        Rotation turn = new Rotation(Vector3D.PLUS_I, aboutXRad, TURNS).compose(leaned.compose(squared, TURNS), TURNS);
        return new AddressPose(new HeadPose(head, turn), -Math.toDegrees(aboutXRad));
    }

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
}
