package org.bagwright.balance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.bagwright.domain.club.PortPiece;

/** A point of mass, kilograms and metres, and the sums over many of them by linear algebra. */
record Point(double massKg, RealVector placeM) {

    static Point of(PortPiece piece) {
        RealVector placeMm = MatrixUtils.createRealVector(new double[] {piece.xMm(), piece.yMm(), piece.zMm()});
        return new Point(piece.massKg(), placeMm.mapDivide(1000));
    }

    /**
     * A head as two points on each axis, a sixth of the mass each, so far out that they have these inertias, kg m2, about
     * the axes x, y, z.
     */
    static List<Point> head(double massKg, double... inertiaKgM2) {
        double half = (inertiaKgM2[0] + inertiaKgM2[1] + inertiaKgM2[2]) / 2;
        List<Point> points = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            double[] place = new double[3];
            place[axis] = Math.sqrt((half - inertiaKgM2[axis]) / (massKg / 3));
            RealVector out = MatrixUtils.createRealVector(place);
            points.add(new Point(massKg / 6, out));
            points.add(new Point(massKg / 6, out.mapMultiply(-1)));
        }
        return points;
    }

    static double mass(List<Point> points) {
        return points.stream().mapToDouble(Point::massKg).sum();
    }

    static RealVector centre(List<Point> points) {
        RealVector sum = MatrixUtils.createRealVector(new double[3]);
        for (Point point : points) {
            sum = sum.add(point.placeM.mapMultiply(point.massKg));
        }
        return sum.mapDivide(mass(points));
    }

    static RealMatrix tensor(List<Point> points, RealVector about) {
        RealMatrix sum = MatrixUtils.createRealMatrix(3, 3);
        for (Point point : points) {
            RealVector arm = point.placeM.subtract(about);
            RealMatrix unit = MatrixUtils.createRealIdentityMatrix(3).scalarMultiply(arm.dotProduct(arm));
            sum = sum.add(unit.subtract(arm.outerProduct(arm)).scalarMultiply(point.massKg));
        }
        return sum;
    }

    /** Inertia about an axis through a place along this unit vector. */
    static double about(List<Point> points, RealVector through, RealVector axis) {
        return axis.dotProduct(tensor(points, through).operate(axis));
    }
}
