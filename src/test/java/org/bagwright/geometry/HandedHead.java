package org.bagwright.geometry;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.option.PoseNumbers;

/**
 * The same club worked out another way, for either hand as it really stands: nothing is mirrored, poses come from pairs
 * of directions, lies and rests from searching. Slow and plain, to compare with.
 */
final class HandedHead {
    private static final double HALF_AXIS_MM = 40;
    private final double golferSide;
    private final double lieRad;
    private final Vector3D bore;
    private final Vector3D normal;
    private final Vector3D edge;
    private final SoleForm sole;

    HandedHead(Hand hand, HeadDesign design, SoleForm sole) {
        golferSide = hand == Hand.RIGHT ? 1 : -1;
        lieRad = Math.toRadians(design.lieDeg());
        this.sole = sole;
        bore = new Vector3D(0, golferSide * Math.cos(lieRad), Math.sin(lieRad));
        double loftRad = Math.toRadians(design.loftDeg());
        Rotation closed = turn(Vector3D.PLUS_K, golferSide * Math.toRadians(design.faceDeg()));
        normal = closed.applyTo(new Vector3D(Math.cos(loftRad), 0, Math.sin(loftRad)));
        edge = closed.applyTo(new Vector3D(0, golferSide, 0));
    }

    PoseNumbers pose(double golferLieDeg, double leanDeg, Ring... rings) {
        Vector3D shaft = bore;
        for (int i = rings.length - 1; i >= 0; i--) {
            shaft = ringed(shaft, rings[i]);
        }
        Vector3D held = held(Math.toRadians(golferLieDeg), Math.toRadians(leanDeg));
        Rotation gauge = gaugePose(shaft);
        Rotation address = new Rotation(shaft, edge, held, squareEdge(shaft, held));
        Rotation seat = rest(address, held);
        Vector3D contact = lowest(address);
        double gaugeLieDeg = Math.toDegrees(Math.asin(gauge.applyTo(shaft).getZ()));
        return new PoseNumbers(
                new PoseNumbers.Gauge(loftDeg(gauge), gaugeLieDeg),
                new PoseNumbers.Address(
                        loftDeg(address),
                        closedDeg(address.applyTo(normal)),
                        Math.toDegrees(Math.asin(address.applyTo(edge).getZ() * -1)),
                        0,
                        contact.getX(),
                        -golferSide * contact.getY()),
                new PoseNumbers.Resting(
                        closedDeg(seat.applyTo(edge).crossProduct(new Vector3D(0, 0, golferSide))), loftDeg(seat)),
                0);
    }

    private Vector3D ringed(Vector3D direction, Ring ring) {
        double clockRad = Math.toRadians(30 * ring.clockH());
        Vector3D toe = new Vector3D(0, -golferSide * Math.sin(lieRad), Math.cos(lieRad));
        Vector3D toward = new Vector3D(Math.cos(clockRad), toe, Math.sin(clockRad), Vector3D.PLUS_I);
        return turn(bore.crossProduct(toward), Math.toRadians(ring.bendDeg())).applyTo(direction);
    }

    private Vector3D held(double heldLieRad, double leanRad) {
        double forward = Math.tan(leanRad) * Math.sin(heldLieRad);
        return new Vector3D(forward, golferSide * Math.cos(heldLieRad), Math.sin(heldLieRad)).normalize();
    }

    /** Edge level and square, then turned about it until the shaft has no part along the target line. */
    private Rotation gaugePose(Vector3D shaft) {
        Vector3D square = new Vector3D(0, golferSide, 0);
        Rotation level = new Rotation(edge, Vector3D.PLUS_K, square, Vector3D.PLUS_K);
        double rad =
                root(angle -> turn(square, angle).applyTo(level.applyTo(shaft)).getX(), -1, 1);
        return turn(square, rad).compose(level, RotationConvention.VECTOR_OPERATOR);
    }

    /** The edge in the ground frame: square to the target line, at the angle to the held shaft that the head has. */
    private Vector3D squareEdge(Vector3D shaft, Vector3D held) {
        DoubleUnaryOperator off = rad -> raised(rad).dotProduct(held) - edge.dotProduct(shaft);
        return raised(root(off, -0.6, 0.6));
    }

    private Vector3D raised(double rad) {
        return new Vector3D(0, golferSide * Math.cos(rad), Math.sin(rad));
    }

    /** Halves, many times over, a grid round the lowest height of the centre of gravity. */
    private Rotation rest(Rotation from, Vector3D held) {
        double middle = 0;
        for (double width = 0.4; width > 1e-9; width /= 4) {
            double best = middle;
            for (int i = -40; i <= 40; i++) {
                double rad = middle + width * i / 40;
                best = heightMm(about(from, held, rad)) < heightMm(about(from, held, best)) ? rad : best;
            }
            middle = best;
        }
        return about(from, held, middle);
    }

    private static Rotation about(Rotation from, Vector3D held, double rad) {
        return turn(held, rad).compose(from, RotationConvention.VECTOR_OPERATOR);
    }

    private double heightMm(Rotation pose) {
        Vector3D centre = new Vector3D(0, 0, sole.centreOfGravityHeightMm());
        return pose.applyTo(centre).getZ() - pose.applyTo(lowest(pose)).getZ();
    }

    /** The point of the ellipsoid whose outward normal points down. */
    private Vector3D lowest(Rotation pose) {
        Vector3D down = pose.applyInverseTo(Vector3D.MINUS_K);
        double xx = HALF_AXIS_MM * sole.foreAftRadiusMm();
        double yy = HALF_AXIS_MM * sole.heelToeRadiusMm();
        double zz = HALF_AXIS_MM * HALF_AXIS_MM;
        Vector3D scaled = new Vector3D(xx * down.getX(), yy * down.getY(), zz * down.getZ());
        Vector3D fromCentre = scaled.scalarMultiply(1 / Math.sqrt(scaled.dotProduct(down)));
        return fromCentre.add(new Vector3D(0, 0, HALF_AXIS_MM));
    }

    private double loftDeg(Rotation pose) {
        return Math.toDegrees(Math.asin(pose.applyTo(normal).getZ()));
    }

    private double closedDeg(Vector3D facing) {
        return Math.toDegrees(Math.atan2(golferSide * facing.getY(), facing.getX()));
    }

    private static double root(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(1e-15, 1e-15, 1e-16).solve(200, function::applyAsDouble, low, high);
    }

    private static Rotation turn(Vector3D axis, double rad) {
        return new Rotation(axis, rad, RotationConvention.VECTOR_OPERATOR);
    }
}
