package org.bagwright.flight.golfer;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.flight.Ball;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.RigidHead;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;
import org.bagwright.flight.learning.Presented;

/**
 * What another weighting of a head changes of the blow. Frame as in {@link BallStart}.
 *
 * <p>With today's weighting the line of the impulse goes through the centre of gravity. With another the same point of the
 * face meets the ball, with the same speed, path, loft and heading, and the centre of gravity is elsewhere. Both blows are
 * struck by {@link RigidHead}, both with the other weighting's inertia: today's hardly turns the head, so that an inertia
 * a tenth off moves its ball speed by less than 0.03 %.
 */
public final class WeightedBlow {
    /** From the head frame, heads soled as designed, to the frame of the flight: z is up there, and y toward the golfer. */
    private static final RealMatrix HEAD_TO_FLIGHT =
            new Array2DRowRealMatrix(new double[][] {{1, 0, 0}, {0, 0, 1}, {0, -1, 0}});

    private final Delivery delivery;
    private final ClubToday club;
    private final WeightedHead head;
    private final double presentedLoftDeg;
    private final double faceClosedDeg;
    private final Vector3D normal;
    private final RealMatrix turn;

    public WeightedBlow(
            Delivery delivery, ClubToday club, double presentedLoftDeg, double faceClosedDeg, WeightedHead head) {
        this.delivery = delivery;
        this.club = club;
        this.head = head;
        this.presentedLoftDeg = presentedLoftDeg;
        this.faceClosedDeg = faceClosedDeg;
        double deliveredDeg = delivery.deliveredLoftDeg(presentedLoftDeg);
        this.normal = Delivery.pointing(deliveredDeg, faceClosedDeg);
        this.turn = turn(club.club().head(), deliveredDeg, faceClosedDeg);
    }

    /**
     * The start in space with the other weighting: that with today's weighting and the change that the other makes, with the
     * same efficiency and spin ratio. Head speed is held.
     */
    public BallStart start() {
        BallStart today = delivery.start(club, presentedLoftDeg, faceClosedDeg);
        return today.plus(change().scaled(delivery.efficiencyRatio(), delivery.spinRatio()));
    }

    /** What the set-up presents, with what the weighting changes of the launch. */
    Presented presented() {
        return Presented.of(presentedLoftDeg, delivery.launch(club, presentedLoftDeg), start().launch());
    }

    /** The start of the ball with the other weighting less that with today's, before efficiency and spin ratio. */
    BallStart change() {
        Vector3D todayM = todayFromCentreM();
        Vector3D shiftM = new Vector3D(turn.operate(
                new double[] {head.shift().xM(), head.shift().yM(), head.shift().zM()}));
        BallStart today = strike(head.todayMassKg(), todayM);
        return strike(head.massKg(), todayM.subtract(shiftM)).minus(today);
    }

    /** From today's centre of gravity to the point of contact: along the impulse of the central blow, out to the face. */
    private Vector3D todayFromCentreM() {
        Vector3D line = strike(head.todayMassKg(), Vector3D.ZERO).ballMps();
        double outMps = line.dotProduct(normal);
        return outMps > 0
                ? line.scalarMultiply(head.todayDepthM() / outMps)
                : normal.scalarMultiply(head.todayDepthM());
    }

    private BallStart strike(double massKg, Vector3D fromCentreM) {
        RealMatrix inertiaKgM2 = turn.multiply(
                        new Array2DRowRealMatrix(head.inertia().rows(), false))
                .multiply(turn.transpose());
        return delivery.rigid(club, massKg, inertiaKgM2)
                .strike(Ball.STANDARD, new RigidHead.Contact(normal, fromCentreM))
                .ball();
    }

    /**
     * The turn from the head frame to the head at the ball: squared, brought about its scorelines from the design loft to the
     * delivered loft, turned to its heading. The stated loft is taken for the design loft, and the scorelines are taken as
     * level: each degree that either is off turns a shift of the centre of gravity by a degree, 1.7 % of it.
     */
    public static RealMatrix turn(StatedHead design, double deliveredLoftDeg, double faceClosedDeg) {
        Rotation squared = about(Vector3D.PLUS_J, -design.faceDeg());
        Rotation lofted = about(Vector3D.PLUS_K, deliveredLoftDeg - design.loftDeg());
        Rotation headed = about(Vector3D.PLUS_J, faceClosedDeg);
        Rotation whole = headed.applyTo(lofted.applyTo(squared));
        return new Array2DRowRealMatrix(whole.getMatrix(), false).multiply(HEAD_TO_FLIGHT);
    }

    private static Rotation about(Vector3D axis, double turnDeg) {
        return new Rotation(axis, Math.toRadians(turnDeg), RotationConvention.VECTOR_OPERATOR);
    }
}
