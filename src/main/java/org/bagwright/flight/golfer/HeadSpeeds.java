package org.bagwright.flight.golfer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.learning.ClubToday;

/**
 * Head speed by club: a straight line in club length through the golfer's driver and his 7 iron. A 7 iron is assumed to come at
 * 0.80 of the driver's speed, a driver at 93 mph, where neither the golfer's row nor his shots say better. Beyond the two clubs the line goes on, but never under half of his
 * slowest speed nor over 1.15 of his quickest.
 *
 * <p>The line compares different clubs of a set, so it does not tell what a longer shaft does to one club. A club that might
 * take the place of today's club of its slot and kind has that club's speed, and 0.45 m/s of ball speed for each inch that
 * it is longer (Kenny, Wallace and Otto 2008, Sports Biomechanics 7, 322-332). So does a club that was hit at another length.
 */
final class HeadSpeeds {
    static final double IRON_PER_DRIVER_RATIO = 0.80;
    private static final double ASSUMED_DRIVER_MPS = 93 * 0.44704;
    private static final double SHORTEST_LINE_M = 0.05;
    private static final double BALL_MPS_PER_M = 0.45 / 0.0254;
    static final double DRIVER_M = ClubKind.DRIVER.usualLengthM(10);

    /** The length of the 7 iron, of 30 degrees, to which a golfer's iron speed belongs. */
    static final double SEVEN_IRON_M = ClubKind.IRON.usualLengthM(30);

    private final double driverLengthM;
    private final double driverMps;
    private final double ironMps;
    private final List<ClubToday> clubs;

    /**
     * The line before any shot.
     *
     * @param stated what the golfer's row says
     * @param driver his driver; empty takes one of 45 in
     */
    public HeadSpeeds(Golfer.HeadSpeeds stated, Optional<ClubToday> driver) {
        this(stated, driver, driver.stream().toList());
    }

    private HeadSpeeds(Golfer.HeadSpeeds stated, Optional<ClubToday> driver, List<ClubToday> clubs) {
        this.clubs = clubs;
        double lengthM = driver.map(ClubToday::lengthM).orElse(DRIVER_M);
        this.driverLengthM = Math.max(lengthM, SEVEN_IRON_M + SHORTEST_LINE_M);
        this.driverMps = stated.driverMps()
                .orElseGet(() ->
                        stated.ironMps().orElse(ASSUMED_DRIVER_MPS * IRON_PER_DRIVER_RATIO) / IRON_PER_DRIVER_RATIO);
        this.ironMps = stated.ironMps().orElse(driverMps * IRON_PER_DRIVER_RATIO);
    }

    /** Head speeds from what is stated or known of the golfer's own, and his clubs. */
    static HeadSpeeds of(Golfer.HeadSpeeds stated, List<ClubToday> clubs) {
        Optional<ClubToday> driver = clubs.stream()
                .filter(club -> club.kind() == ClubKind.DRIVER)
                .min(Comparator.comparing(club -> !club.club().inBag()));
        return new HeadSpeeds(stated, driver, clubs);
    }

    /** Head speed with a club, m/s. */
    public double atMps(ClubToday club) {
        ClubToday known = known(club);
        double knownMps = lineMps(known.lengthM());
        double moreBallMps = BALL_MPS_PER_M * (club.lengthM() - known.lengthM());
        return moreBallMps == 0 ? knownMps : forMoreBallMps(known, knownMps, moreBallMps);
    }

    /** The part of the logarithm of a club's head speed that its length adds to that of the club from which it is known. */
    double lnLengthRatio(ClubToday club) {
        ClubToday known = known(club);
        return Math.log(atMps(club) / lineMps(known.lengthM()));
    }

    /** The club that tells the speed of another: today's of its slot and kind, else itself. */
    private ClubToday known(ClubToday club) {
        return club.inSlotToday(clubs)
                .or(() -> clubs.stream().filter(one -> one.sameRow(club)).findFirst())
                .orElse(club);
    }

    /** The head speed that gives so much more ball speed with a club, m/s. */
    private double forMoreBallMps(ClubToday club, double headMps, double moreBallMps) {
        PlainDelivery plain = new PlainDelivery(driverMps());
        double ballMps = plain.of(club, headMps).ballMps(club);
        double nearMps = headMps * (1 + moreBallMps / ballMps);
        double gainedMps = plain.of(club, nearMps).ballMps(club) - ballMps;
        return headMps + (nearMps - headMps) * moreBallMps / gainedMps;
    }

    /** Head speed with the driver, m/s. */
    public double driverMps() {
        return lineMps(driverLengthM);
    }

    /** Head speed with a 7 iron, m/s. */
    public double ironMps() {
        return lineMps(SEVEN_IRON_M);
    }

    private double lineMps(double lengthM) {
        double share = (lengthM - SEVEN_IRON_M) / (driverLengthM - SEVEN_IRON_M);
        double straight = ironMps + share * (driverMps - ironMps);
        double least = 0.5 * Math.min(ironMps, driverMps);
        double most = 1.15 * Math.max(ironMps, driverMps);
        return Math.max(least, Math.min(most, straight));
    }
}
