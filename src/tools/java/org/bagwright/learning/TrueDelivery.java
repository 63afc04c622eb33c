package org.bagwright.learning;

import java.util.function.DoubleFunction;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.Ball;
import org.bagwright.flight.Launch;
import org.bagwright.flight.Restitution;

/**
 * How a golfer brings a club to the ball, with the closed form of a central blow: {@code vn = (1 + e) V cos L / (1 + m/M)},
 * {@code vt = V sin L / (1 + m/M + 5/2)}, launch {@code attack + L - atan(vt / vn)}, spin {@code 2.5 vt / r}.
 *
 * @param club the club, of which mass and restitution count
 * @param headMps head speed, m/s
 * @param spinLoftDeg angle between face and path at today's loft, degrees
 * @param attackDeg path above the horizontal, degrees
 * @param ballRatio ball speed over that of the blow
 * @param spinRatio spin over that of the blow
 */
record TrueDelivery(
        Club club, double headMps, double spinLoftDeg, double attackDeg, double ballRatio, double spinRatio) {
    private static final double GRIP_RATIO = 0.4;
    private static final double PROBE_DEG = 2;
    private static final double RPM_PER_RAD_PER_S = 30 / Math.PI;

    private record Blow(double ballMps, double launchFromPathDeg, double spinRpm) {}

    /**
     * The delivery that is assumed of a golfer without shots, read off two of his predicted shots: the blow's spin is as the sine of the spin loft,
     * so that two lofts tell it.
     *
     * @param headMps the head speed that is assumed
     * @param shots the shot that is predicted for a loft at address, degrees
     * @param todayLoftDeg the loft at address today, degrees
     */
    static TrueDelivery assumed(Club club, double headMps, DoubleFunction<ShotPrediction> shots, double todayLoftDeg) {
        ShotPrediction shot = shots.apply(todayLoftDeg);
        double spinsRatio = shots.apply(todayLoftDeg + PROBE_DEG).spinRpm() / shot.spinRpm();
        double probeRad = Math.toRadians(PROBE_DEG);
        double spinLoftDeg = Math.toDegrees(Math.atan2(Math.sin(probeRad), spinsRatio - Math.cos(probeRad)));
        TrueDelivery bare = new TrueDelivery(club, headMps, spinLoftDeg, 0, 1, 1);
        Blow blow = bare.blow(0);
        return new TrueDelivery(
                club,
                headMps,
                spinLoftDeg,
                shot.launchDeg() - blow.launchFromPathDeg(),
                shot.ballSpeedMps() / blow.ballMps(),
                shot.spinRpm() / blow.spinRpm());
    }

    /** The same with other inputs of the blow. */
    TrueDelivery changed(double lnSpeed, double lnBall, double loftDeg, double attackMoreDeg, double lnSpin) {
        return new TrueDelivery(
                club,
                headMps * Math.exp(lnSpeed),
                spinLoftDeg + loftDeg - attackMoreDeg,
                attackDeg + attackMoreDeg,
                ballRatio * Math.exp(lnBall),
                spinRatio * Math.exp(lnSpin));
    }

    /** The launch from a loft this many degrees above today's. */
    Launch launch(double loftMoreDeg) {
        Blow blow = blow(loftMoreDeg);
        return new Launch(blow.ballMps() * ballRatio, attackDeg + blow.launchFromPathDeg(), blow.spinRpm() * spinRatio);
    }

    private Blow blow(double loftMoreDeg) {
        double spinLoftRad = Math.toRadians(Math.max(0, Math.min(85, spinLoftDeg + loftMoreDeg)));
        double normalMps = headMps * Math.cos(spinLoftRad);
        double massTerm = 1 + Ball.STANDARD.massKg() / club.form().massKg().orElseThrow();
        double awayMps = (1 + Restitution.of(club.kind()).ratio(normalMps)) * normalMps / massTerm;
        double alongMps = Math.min(headMps * Math.sin(spinLoftRad) / (massTerm + 2.5), GRIP_RATIO * awayMps);
        return new Blow(
                Math.hypot(awayMps, alongMps),
                Math.toDegrees(spinLoftRad - Math.atan2(alongMps, awayMps)),
                2.5 * alongMps / Ball.STANDARD.radiusM() * RPM_PER_RAD_PER_S);
    }
}
