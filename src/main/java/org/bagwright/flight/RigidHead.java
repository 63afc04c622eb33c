package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A free rigid head as it comes to a blow on a ball at rest, in space, anywhere on the face: one 3x3 solve for the impulse.
 * Frame as in {@link BallStart}.
 *
 * <p>The ball leaves rolling: at the end its surface moves along the face as the face does there. Restitution is Poisson's:
 * the impulse along the normal that takes away all speed between ball and face, and the ratio of it once more. Where the
 * grip of the face is too small, the impulse is the one nearest to rolling, on the way from a blow without friction, that
 * the grip can give. So no blow gains energy, however far off the centre it is; and a blow whose line goes through the
 * centre of gravity is the closed form of {@link PointHead}.
 *
 * @param massKg mass, kg
 * @param inertiaKgM2 tensor of inertia about the centre of gravity, rows and columns x, y, z, kg m2
 * @param centreMps velocity of the centre of gravity, m/s
 * @param radPerS turn of the head, rad/s
 * @param restitution how much of the closing speed comes back
 */
public record RigidHead(
        double massKg, RealMatrix inertiaKgM2, Vector3D centreMps, Vector3D radPerS, Restitution restitution) {
    public RigidHead {
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("a head needs a mass above 0");
        }
    }

    /**
     * Where the ball is met.
     *
     * @param normal direction out of the face there, of length 1
     * @param fromCentreM from the head's centre of gravity to the point of contact, m
     */
    public record Contact(Vector3D normal, Vector3D fromCentreM) {}

    /**
     * What is there after the blow.
     *
     * @param ball how the ball leaves
     * @param centreMps velocity of the head's centre of gravity, m/s
     * @param headRadPerS turn of the head, rad/s
     */
    public record Result(BallStart ball, Vector3D centreMps, Vector3D headRadPerS) {}

    /** The blow on a ball at rest. */
    public Result strike(Ball ball, Contact contact) {
        RealMatrix turning = MatrixUtils.inverse(inertiaKgM2);
        RealMatrix softness = softness(ball, contact, turning);
        Vector3D approach =
                centreMps.add(radPerS.crossProduct(contact.fromCentreM())).negate();
        Vector3D impulse = impulse(softness, approach, contact.normal());
        Vector3D spin = contact.normal().crossProduct(impulse).scalarMultiply(-2.5 / (ball.massKg() * ball.radiusM()));
        Vector3D headTurn = times(turning, contact.fromCentreM().crossProduct(impulse));
        return new Result(
                new BallStart(impulse.scalarMultiply(1 / ball.massKg()), spin),
                centreMps.subtract(1 / massKg, impulse),
                radPerS.subtract(headTurn));
    }

    /** By how much a unit impulse on the ball changes the speed of ball against head at the contact, 1/kg. */
    private RealMatrix softness(Ball ball, Contact contact, RealMatrix turning) {
        RealMatrix one = MatrixUtils.createRealIdentityMatrix(3);
        RealMatrix normal = MatrixUtils.createColumnRealMatrix(contact.normal().toArray());
        RealMatrix along = one.subtract(normal.multiply(normal.transpose()));
        RealMatrix arm = cross(contact.fromCentreM());
        return one.scalarMultiply(1 / ball.massKg() + 1 / massKg)
                .add(along.scalarMultiply(2.5 / ball.massKg()))
                .add(arm.transpose().multiply(turning).multiply(arm));
    }

    private Vector3D impulse(RealMatrix softness, Vector3D approach, Vector3D normal) {
        double closingMps = -approach.dotProduct(normal);
        if (!(closingMps > 0)) {
            return Vector3D.ZERO;
        }
        double ratio = restitution.ratio(closingMps);
        RealMatrix stiffness = new LUDecomposition(softness).getSolver().getInverse();
        Vector3D stop = times(stiffness, approach).negate();
        Vector3D push = times(stiffness, normal);
        Vector3D rolling = stop.add(ratio * stop.dotProduct(normal) / push.dotProduct(normal), push);
        double easyNs = (1 + ratio) * closingMps / times(softness, normal).dotProduct(normal);
        return gripped(rolling, normal, easyNs);
    }

    /** The rolling impulse, or the part of the way to it from a blow without friction that the grip can give. */
    private static Vector3D gripped(Vector3D rolling, Vector3D normal, double easyNs) {
        double pressNs = rolling.dotProduct(normal);
        double alongNs = rolling.subtract(pressNs, normal).getNorm();
        if (alongNs <= PointHead.GRIP_RATIO * pressNs) {
            return rolling;
        }
        double share = PointHead.GRIP_RATIO * easyNs / (alongNs - PointHead.GRIP_RATIO * (pressNs - easyNs));
        return new Vector3D(share, rolling, (1 - share) * easyNs, normal);
    }

    private static Vector3D times(RealMatrix matrix, Vector3D vector) {
        return new Vector3D(matrix.operate(vector.toArray()));
    }

    private static RealMatrix cross(Vector3D arm) {
        return new Array2DRowRealMatrix(new double[][] {
            {0, -arm.getZ(), arm.getY()},
            {arm.getZ(), 0, -arm.getX()},
            {-arm.getY(), arm.getX(), 0}
        });
    }
}
