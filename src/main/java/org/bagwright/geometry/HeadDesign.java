package org.bagwright.geometry;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A head as designed, its shaft in line with the bore and its sole flat on the ground.
 *
 * @param loftDeg design loft F0, degrees
 * @param lieDeg design lie L0, degrees
 * @param faceDeg design face angle A0, degrees, closed positive
 */
record HeadDesign(double loftDeg, double lieDeg, double faceDeg) {
    HeadDesign {
        if (!(Math.abs(loftDeg) < 90 && lieDeg > 0 && lieDeg < 90 && Math.abs(faceDeg) < 45)) {
            throw new IllegalArgumentException(
                    "no head has loft " + loftDeg + ", lie " + lieDeg + " and face " + faceDeg + " degrees");
        }
    }

    /**
     * The head on which a gauge reads the given numbers, in closed form. With the shaft {@code (tx, ty, tz)} in the bore
     * frame, its y-part in the head frame is {@code hypot(ty, tz) cos(L0 + atan2(tz, ty))}, which the gauge lie fixes.
     *
     * @param reading what the gauge reads
     * @param faceDeg face angle as the head is soled as designed, degrees, closed positive
     * @param tilt the tilt of the shaft while it is gauged
     */
    static HeadDesign solve(GaugeReading reading, double faceDeg, Tilt tilt) {
        double lieRad = Math.toRadians(reading.lieDeg());
        double faceRad = Math.toRadians(faceDeg);
        Vector3D inBore = tilt.shaft();
        double shaftY = (Math.cos(lieRad) + Math.sin(faceRad) * inBore.getX()) / Math.cos(faceRad);
        double upright = Math.atan2(inBore.getZ(), inBore.getY());
        double designLieRad = Math.acos(shaftY / Math.hypot(inBore.getY(), inBore.getZ())) - upright;
        HeadDesign loftless = new HeadDesign(0, Math.toDegrees(designLieRad), faceDeg);
        double addedLoftDeg = loftless.gauge(loftless.shaft(tilt)).loftDeg();
        return new HeadDesign(reading.loftDeg() - addedLoftDeg, loftless.lieDeg, faceDeg);
    }

    /** The shaft in the head frame, given its tilt against the bore. */
    Vector3D shaft(Tilt tilt) {
        return aboutX(tilt.shaft(), Math.toRadians(lieDeg));
    }

    /** The tilt of the shaft against the bore, the shaft given in the head frame. */
    Tilt tilt(Vector3D shaft) {
        return new Tilt(aboutX(shaft, -Math.toRadians(lieDeg)));
    }

    Vector3D faceNormal() {
        double loftRad = Math.toRadians(loftDeg);
        return aboutZ(new Vector3D(Math.cos(loftRad), 0, Math.sin(loftRad)), Math.toRadians(faceDeg));
    }

    Vector3D scorelines() {
        return aboutZ(Vector3D.PLUS_J, Math.toRadians(faceDeg));
    }

    /** What a gauge reads with this shaft, given in the head frame. */
    GaugeReading gauge(Vector3D shaft) {
        Vector3D seen = seenFromFace(shaft);
        double loftRad = Math.toRadians(loftDeg) + Math.atan2(seen.getX(), seen.getZ());
        double lieRad = Math.atan2(Math.hypot(seen.getX(), seen.getZ()), seen.getY());
        return new GaugeReading(Math.toDegrees(loftRad), Math.toDegrees(lieRad));
    }

    /** The one shaft, in the head frame, with which a gauge reads the given numbers, the inverse of {@link #gauge}. */
    Vector3D shaftFor(GaugeReading reading) {
        double lieRad = Math.toRadians(reading.lieDeg());
        double leanRad = Math.toRadians(reading.loftDeg() - loftDeg);
        double x = Math.sin(lieRad) * Math.sin(leanRad);
        double z = Math.sin(lieRad) * Math.cos(leanRad);
        return aboutZ(new Vector3D(x, Math.cos(lieRad), z), Math.toRadians(faceDeg));
    }

    /** A direction of the head frame in the frame whose y runs along the scorelines: {@code Rz(-A0) v}. */
    Vector3D seenFromFace(Vector3D direction) {
        return aboutZ(direction, -Math.toRadians(faceDeg));
    }

    private static Vector3D aboutX(Vector3D v, double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        return new Vector3D(v.getX(), cos * v.getY() - sin * v.getZ(), sin * v.getY() + cos * v.getZ());
    }

    private static Vector3D aboutZ(Vector3D v, double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        return new Vector3D(cos * v.getX() - sin * v.getY(), sin * v.getX() + cos * v.getY(), v.getZ());
    }
}
