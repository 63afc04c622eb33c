package org.bagwright.flight;

import java.util.OptionalDouble;

/**
 * A rigid head as it comes to a central blow, of which only speed and mass count. In closed form: the ball leaves the face
 * rolling, or slides off it where the grip of the face is too small for that. With L the angle between face normal and head
 * path (spin loft), M the head and m the ball: {@code vn = (1 + e) V cos L / (1 + m/M)},
 * {@code vt = V sin L / (1 + m/M + 5/2)}, at most the grip times vn; launch above the path {@code L - atan(vt / vn)}; spin
 * {@code 2.5 vt / r} (Penner 2003, Rep. Prog. Phys. 66).
 *
 * @param speedMps head speed, m/s
 * @param massKg head mass, kg
 * @param restitution how much of the closing speed comes back
 */
public record PointHead(double speedMps, double massKg, Restitution restitution) {
    /** Coulomb friction of ball on face; an assumed value that matters only for spin lofts above about 65 degrees. */
    static final double GRIP_RATIO = 0.4;

    private static final Bracket SPIN_LOFTS_DEG = new Bracket(0, 80);

    public PointHead {
        if (!(speedMps > 0 && massKg > 0)) {
            throw new IllegalArgumentException("a head needs a speed and a mass above 0");
        }
    }

    /** The same head with a face that loses nothing: no ball leaves faster. */
    public PointHead perfect() {
        return new PointHead(speedMps, massKg, Restitution.PERFECT);
    }

    /**
     * The blow on a ball at rest.
     *
     * @param spinLoftDeg angle between face normal and head path, degrees, 0 to 90
     */
    public Rebound strike(Ball ball, double spinLoftDeg) {
        double spinLoftRad = Math.toRadians(spinLoftDeg);
        double normalMps = speedMps * Math.cos(spinLoftRad);
        double massTerm = 1 + ball.massKg() / massKg;
        double awayMps = (1 + restitution.ratio(normalMps)) * normalMps / massTerm;
        double rollingMps = speedMps * Math.sin(spinLoftRad) / (massTerm + 2.5);
        double alongMps = Math.min(rollingMps, GRIP_RATIO * awayMps);
        return new Rebound(
                Math.hypot(awayMps, alongMps),
                spinLoftDeg - Math.toDegrees(Math.atan2(alongMps, awayMps)),
                2.5 * alongMps / ball.radiusM() * BallStart.RPM_PER_RAD_PER_S);
    }

    /** The spin loft in degrees at which a standard ball leaves this far above the path; empty when no blow does that. */
    public OptionalDouble spinLoftDeg(double launchFromPathDeg) {
        return SPIN_LOFTS_DEG.root(
                spinLoftDeg -> strike(Ball.STANDARD, spinLoftDeg).launchFromPathDeg() - launchFromPathDeg);
    }
}
