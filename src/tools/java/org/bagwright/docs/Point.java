package org.bagwright.docs;

/** A place in a picture, px to the right and px down from its upper left corner. */
record Point(double xPx, double yPx) {
    Point moved(double rightPx, double downPx) {
        return new Point(xPx + rightPx, yPx + downPx);
    }

    /** The point this far along a direction; angle in degrees from the right, upward positive. */
    Point toward(double angleDeg, double lengthPx) {
        double angleRad = Math.toRadians(angleDeg);
        return moved(lengthPx * Math.cos(angleRad), -lengthPx * Math.sin(angleRad));
    }

    double distancePx(Point other) {
        return Math.hypot(other.xPx - xPx, other.yPx - yPx);
    }

    /** Direction to another point, degrees from the right, upward positive. */
    double angleDegTo(Point other) {
        return Math.toDegrees(Math.atan2(yPx - other.yPx, other.xPx - xPx));
    }
}
