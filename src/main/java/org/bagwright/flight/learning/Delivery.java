package org.bagwright.flight.learning;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.flight.Ball;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.Launch;
import org.bagwright.flight.Rebound;
import org.bagwright.flight.Restitution;
import org.bagwright.flight.RigidHead;

/**
 * How one golfer delivers one club to the ball, and how his ball leaves.
 *
 * @param headSpeedMps head speed, m/s
 * @param attackDeg head path above the horizontal, degrees
 * @param offsetDeg delivered loft above presented loft, degrees
 * @param efficiencyRatio ball speed over that of the impact formulas
 * @param spinRatio spin over that of the impact formulas
 * @param carryRatio carry over that of the flight model
 */
public record Delivery(
        double headSpeedMps,
        double attackDeg,
        double offsetDeg,
        double efficiencyRatio,
        double spinRatio,
        double carryRatio) {
    private static final double MOST_SPIN_LOFT_DEG = 85;

    /** A central blow does not turn the head, so its inertia does not matter. */
    private static final RealMatrix ANY_INERTIA = MatrixUtils.createRealIdentityMatrix(3);

    /** The launch of a club that presents this loft at address. */
    public Launch launch(ClubToday club, double presentedLoftDeg) {
        Rebound blow = blow(club, presentedLoftDeg);
        return new Rebound(blow.ballSpeedMps() * efficiencyRatio, blow.launchFromPathDeg(), blow.spinRpm() * spinRatio)
                .along(attackDeg);
    }

    /**
     * The start in space, for a face that points this many degrees closed to the path; the path leads to the target and the
     * blow is central. For a square face exactly {@link #launch}.
     */
    public BallStart start(ClubToday club, double presentedLoftDeg, double faceClosedDeg) {
        if (faceClosedDeg == 0) {
            return BallStart.of(launch(club, presentedLoftDeg));
        }
        Vector3D normal = pointing(deliveredLoftDeg(presentedLoftDeg), faceClosedDeg);
        RigidHead rigid = rigid(club, club.headMassKg(), ANY_INERTIA);
        return rigid.strike(Ball.STANDARD, new RigidHead.Contact(normal, Vector3D.ZERO))
                .ball()
                .scaled(efficiencyRatio, spinRatio);
    }

    /** The head as it comes along the path, not turning, with this mass and inertia. */
    public RigidHead rigid(ClubToday club, double massKg, RealMatrix inertiaKgM2) {
        Vector3D centreMps = pointing(attackDeg, 0).scalarMultiply(headSpeedMps);
        return new RigidHead(massKg, inertiaKgM2, centreMps, Vector3D.ZERO, Restitution.of(club.kind()));
    }

    /** The loft of the face against the ground at the ball, degrees. */
    public double deliveredLoftDeg(double presentedLoftDeg) {
        return spinLoftDeg(presentedLoftDeg) + attackDeg;
    }

    /** The direction this far above the ground and this far left of the target, of length 1. */
    public static Vector3D pointing(double upDeg, double closedDeg) {
        double upRad = Math.toRadians(upDeg);
        double closedRad = Math.toRadians(closedDeg);
        return new Vector3D(
                Math.cos(upRad) * Math.cos(closedRad), Math.sin(upRad), -Math.cos(upRad) * Math.sin(closedRad));
    }

    /** The speed of the ball from the loft that the club presents today, m/s. */
    public double ballMps(ClubToday club) {
        return blow(club, club.loftDeg()).ballSpeedMps() * efficiencyRatio;
    }

    /** The same before efficiency and spin ratio, and seen from the path. */
    public Rebound blow(ClubToday club, double presentedLoftDeg) {
        return club.head(headSpeedMps).strike(Ball.STANDARD, spinLoftDeg(presentedLoftDeg));
    }

    private double spinLoftDeg(double presentedLoftDeg) {
        return Math.max(0, Math.min(MOST_SPIN_LOFT_DEG, presentedLoftDeg + offsetDeg - attackDeg));
    }

    public Delivery withHeadSpeedMps(double mps) {
        return new Delivery(mps, attackDeg, offsetDeg, efficiencyRatio, spinRatio, carryRatio);
    }

    public Delivery withEfficiencyRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, ratio, spinRatio, carryRatio);
    }

    public Delivery withSpinRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, efficiencyRatio, ratio, carryRatio);
    }

    Delivery withCarryRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, efficiencyRatio, spinRatio, ratio);
    }

    public Delivery withAttackDeg(double deg) {
        return new Delivery(headSpeedMps, deg, offsetDeg, efficiencyRatio, spinRatio, carryRatio);
    }

    public Delivery withOffsetDeg(double deg) {
        return new Delivery(headSpeedMps, attackDeg, deg, efficiencyRatio, spinRatio, carryRatio);
    }
}
