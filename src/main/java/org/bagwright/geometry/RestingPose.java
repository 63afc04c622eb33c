package org.bagwright.geometry;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.util.MathUtils;

/**
 * A head that sits as it wants: the golfer holds the direction of the shaft, the head is free to turn about it and comes
 * to rest on its sole where its centre of gravity is lowest.
 *
 * <p>The one unknown is the turn about the shaft, counted from the pose in which a flat sole would rest. A minimiser
 * finds the resting turn within 45 degrees and a root finder on the slope polishes it to 1e-12 rad. A head that would
 * topple rather than rest, such as one held many degrees off its lie on a sole curved strongly from front to back, is
 * left at the end of that range.
 */
final class RestingPose {
    private static final double RANGE_RAD = Math.PI / 4;
    private static final double NEAR_RAD = 1e-3;
    private static final int MOST_STEPS = 200;

    private final Sole sole;
    private final Vector3D held;
    private final Rotation flat;
    private final Vector3D fixed;
    private final Vector3D turning;
    private final Vector3D across;

    private RestingPose(Sole sole, Vector3D shaft, Vector3D held) {
        this.sole = sole;
        this.held = held;
        flat = onFlatSole(shaft, held);
        Vector3D up = Poses.up(flat);
        fixed = shaft.scalarMultiply(shaft.dotProduct(up));
        turning = up.subtract(fixed);
        across = shaft.crossProduct(up);
    }

    /**
     * The pose in which the head rests.
     *
     * @param sole its sole
     * @param shaft the shaft in the head frame
     * @param held the shaft in the ground frame
     */
    static Rotation pose(Sole sole, Vector3D shaft, Vector3D held) {
        RestingPose seat = new RestingPose(sole, shaft, held);
        return Poses.turned(seat.flat, seat.held, seat.restRad());
    }

    /**
     * How far a flat sole would turn the leading edge, degrees closed from the design: the limit of {@link #pose} for
     * great radii at a matched lie. {@code atan2(s_x, s_y)} without lean.
     */
    static double flatSoleTurnDeg(Vector3D shaft, Vector3D held) {
        return Math.toDegrees(flatSoleTurnRad(shaft, held));
    }

    private static double flatSoleTurnRad(Vector3D shaft, Vector3D held) {
        return Math.atan2(shaft.getX(), shaft.getY()) - Math.atan2(held.getX(), held.getY());
    }

    /**
     * The seated pose turned about the held shaft until the leading edge heads as given. The edge is
     * {@code p + cos q + sin w} of the turn, which has a closed form; where no turn gets there the pose stays.
     *
     * @param headingDeg heading of the leading edge wanted, degrees, closed positive
     */
    static Rotation turnedTo(double headingDeg, HeadDesign head, Rotation pose, Vector3D held) {
        double headingRad = Math.toRadians(headingDeg);
        Vector3D square = new Vector3D(Math.cos(headingRad), Math.sin(headingRad), 0);
        Vector3D edge = pose.applyTo(head.scorelines());
        double along = held.dotProduct(edge) * held.dotProduct(square);
        double cosPart = edge.dotProduct(square) - along;
        double sinPart = held.crossProduct(edge).dotProduct(square);
        double reach = Math.hypot(cosPart, sinPart);
        if (!(Math.abs(along) < reach)) {
            return pose;
        }
        double middleRad = Math.atan2(sinPart, cosPart);
        double asideRad = Math.acos(-along / reach);
        double oneRad = MathUtils.normalizeAngle(middleRad + asideRad, 0);
        double otherRad = MathUtils.normalizeAngle(middleRad - asideRad, 0);
        return Poses.turned(pose, held, Math.abs(oneRad) < Math.abs(otherRad) ? oneRad : otherRad);
    }

    /** The head turned flat on the ground until the shaft points the right way, then tilted by what the lie is off. */
    private static Rotation onFlatSole(Vector3D shaft, Vector3D held) {
        Rotation level = Poses.about(Vector3D.PLUS_K, flatSoleTurnRad(shaft, held));
        Rotation tilt = new Rotation(level.applyTo(shaft), held);
        return tilt.compose(level, RotationConvention.VECTOR_OPERATOR);
    }

    private double restRad() {
        double roughRad = new BrentOptimizer(1e-6, 1e-6)
                .optimize(
                        new UnivariateObjectiveFunction(turnRad -> sole.heightMm(up(turnRad))),
                        GoalType.MINIMIZE,
                        new SearchInterval(-RANGE_RAD, RANGE_RAD, 0),
                        new MaxEval(MOST_STEPS))
                .getPoint();
        double low = roughRad - NEAR_RAD;
        double high = roughRad + NEAR_RAD;
        boolean rests = slope(low) < 0 && slope(high) > 0;
        return rests ? new BrentSolver(1e-15, 1e-13, 1e-15).solve(MOST_STEPS, this::slope, low, high) : roughRad;
    }

    private double slope(double turnRad) {
        return sole.slopeMm(up(turnRad), upMove(turnRad));
    }

    /** The upward direction in the head frame after a turn about the shaft. */
    private Vector3D up(double turnRad) {
        return new Vector3D(1, fixed, Math.cos(turnRad), turning, -Math.sin(turnRad), across);
    }

    private Vector3D upMove(double turnRad) {
        return new Vector3D(-Math.sin(turnRad), turning, -Math.cos(turnRad), across);
    }
}
