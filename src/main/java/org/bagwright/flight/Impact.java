package org.bagwright.flight;

/**
 * A central blow of a rigid head on a ball, closed form: the ball leaves the face rolling, or slides off it where the grip
 * of the face is too small for that. With L the angle between face normal and head path (spin loft), M the head and m the
 * ball: {@code vn = (1 + e) V cos L / (1 + m/M)}, {@code vt = V sin L / (1 + m/M + 5/2)}, at most the grip times vn; launch
 * above the path {@code L - atan(vt / vn)}; spin {@code 2.5 vt / r} (Penner 2003, Rep. Prog. Phys. 66).
 */
public final class Impact {
    /** Coulomb friction of ball on face; an assumed value that matters only for spin lofts above about 65 degrees. */
    static final double GRIP_RATIO = 0.4;

    private static final double RPM_PER_RADIAN_PER_S = 30 / Math.PI;

    private Impact() {}

    /**
     * The head as it comes to the ball.
     *
     * @param speedMps head speed, m/s
     * @param massKg head mass, kg
     * @param restitution how lively the blow is
     */
    public record Head(double speedMps, double massKg, Restitution restitution) {
        public Head {
            if (!(speedMps > 0 && massKg > 0)) {
                throw new IllegalArgumentException("a head needs a speed and a mass above 0");
            }
        }
    }

    /**
     * How the ball leaves.
     *
     * @param ballSpeedMps ball speed, m/s
     * @param launchFromPathDeg launch above the head path, degrees
     * @param spinRpm backspin, rpm
     */
    public record Rebound(double ballSpeedMps, double launchFromPathDeg, double spinRpm) {
        /** The launch above the ground for a path this many degrees upward. */
        public Launch along(double attackDeg) {
            return new Launch(ballSpeedMps, attackDeg + launchFromPathDeg, spinRpm);
        }
    }

    /**
     * The blow.
     *
     * @param head the head
     * @param ball the ball, at rest
     * @param spinLoftDeg angle between face normal and head path, degrees, 0 to 90
     */
    public static Rebound strike(Head head, Ball ball, double spinLoftDeg) {
        double spinLoftRad = Math.toRadians(spinLoftDeg);
        double normalMps = head.speedMps() * Math.cos(spinLoftRad);
        double massTerm = 1 + ball.massKg() / head.massKg();
        double awayMps = (1 + head.restitution().ratio(normalMps)) * normalMps / massTerm;
        double rollingMps = head.speedMps() * Math.sin(spinLoftRad) / (massTerm + 2.5);
        double alongMps = Math.min(rollingMps, GRIP_RATIO * awayMps);
        return new Rebound(
                Math.hypot(awayMps, alongMps),
                spinLoftDeg - Math.toDegrees(Math.atan2(alongMps, awayMps)),
                2.5 * alongMps / ball.radiusM() * RPM_PER_RADIAN_PER_S);
    }
}
