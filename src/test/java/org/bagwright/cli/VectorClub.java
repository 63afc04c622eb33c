package org.bagwright.cli;

/**
 * A head and its shaft by plain vector algebra, apart from the program: head frame x toward the target, y toward the
 * golfer, z up; the formulas are those of the model, worked with arrays and Rodrigues' rotation. Angles in degrees.
 *
 * @param loftDeg design loft
 * @param lieDeg design lie
 * @param faceDeg design face, closed positive
 */
record VectorClub(double loftDeg, double lieDeg, double faceDeg) {
    private double[] bore() {
        return new double[] {0, Math.cos(Math.toRadians(lieDeg)), Math.sin(Math.toRadians(lieDeg))};
    }

    /** The shaft behind rings given as hour, bend, hour, bend ...: the last ring turns it first. */
    double[] shaft(double... hoursAndBends) {
        double[] shaft = bore();
        for (int index = hoursAndBends.length - 2; index >= 0; index -= 2) {
            double phi = Math.toRadians(30 * hoursAndBends[index]);
            double[] upright = {0, -bore()[2], bore()[1]};
            double[] lean = {Math.sin(phi), Math.cos(phi) * upright[1], Math.cos(phi) * upright[2]};
            shaft = turned(shaft, cross(bore(), lean), Math.toRadians(hoursAndBends[index + 1]));
        }
        return shaft;
    }

    double gaugeLoftDeg(double[] shaft) {
        double[] seen = seenFromFace(shaft);
        return loftDeg + Math.toDegrees(Math.atan2(seen[0], seen[2]));
    }

    double gaugeLieDeg(double[] shaft) {
        double[] seen = seenFromFace(shaft);
        return Math.toDegrees(Math.atan2(Math.hypot(seen[0], seen[2]), seen[1]));
    }

    /** How a flat sole would sit with the shaft held at a matched lie, degrees closed. */
    double flatSitsDeg(double[] shaft) {
        return faceDeg + Math.toDegrees(Math.atan2(shaft[0], shaft[1]));
    }

    /** The leading edge square, the shaft turned about y until upright as seen from the front, then laid to a lie. */
    double faceHeadingDeg(double[] shaft, double heldLieDeg) {
        double[] seen = seenFromFace(shaft);
        double aboutY = -Math.atan2(seen[0], seen[2]);
        double[] normal = {Math.cos(Math.toRadians(loftDeg)), 0, Math.sin(Math.toRadians(loftDeg))};
        double[] leaned = turned(normal, new double[] {0, 1, 0}, aboutY);
        double aboutX = Math.toRadians(heldLieDeg - gaugeLieDeg(shaft));
        double[] laid = turned(leaned, new double[] {1, 0, 0}, aboutX);
        return Math.toDegrees(Math.atan2(laid[1], laid[0]));
    }

    private double[] seenFromFace(double[] shaft) {
        return turned(shaft, new double[] {0, 0, 1}, Math.toRadians(-faceDeg));
    }

    private static double[] turned(double[] v, double[] axis, double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        double[] across = cross(axis, v);
        double along = axis[0] * v[0] + axis[1] * v[1] + axis[2] * v[2];
        double[] turned = new double[3];
        for (int i = 0; i < 3; i++) {
            turned[i] = v[i] * cos + across[i] * sin + axis[i] * along * (1 - cos);
        }
        return turned;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
