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

/**
 * Where a head comes to rest by itself: the golfer holds the direction of the shaft, and the head is free to turn about it
 * until its centre of gravity is lowest.
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
    private final Vector3D upAlongShaft;
    private final Vector3D upOffShaft;
    private final Vector3D across;

    private RestingPose(Sole sole, Vector3D shaft, Vector3D up) {
        this.sole = sole;
        upAlongShaft = shaft.scalarMultiply(shaft.dotProduct(up));
        upOffShaft = up.subtract(upAlongShaft);
        across = shaft.crossProduct(up);
    }

    /**
     * The pose in which a head rests.
     *
     * @param head the head
     * @param sole its sole
     * @param shaft the shaft in the head frame
     * @param held the shaft in the ground frame
     */
    static HeadPose of(HeadDesign head, Sole sole, Vector3D shaft, Vector3D held) {
        HeadPose flat = new HeadPose(head, onFlatSole(shaft, held));
        return flat.turned(held, new RestingPose(sole, shaft, flat.up()).restRad());
    }

    /** The head turned flat on the ground until the shaft points the right way, then tilted by what the lie is off. */
    private static Rotation onFlatSole(Vector3D shaft, Vector3D held) {
        double turnRad = Math.atan2(shaft.getX(), shaft.getY()) - Math.atan2(held.getX(), held.getY());
        Rotation level = new Rotation(Vector3D.PLUS_K, turnRad, RotationConvention.VECTOR_OPERATOR);
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
        return new Vector3D(1, upAlongShaft, Math.cos(turnRad), upOffShaft, -Math.sin(turnRad), across);
    }

    private Vector3D upMove(double turnRad) {
        return new Vector3D(-Math.sin(turnRad), upOffShaft, -Math.cos(turnRad), across);
    }
}
