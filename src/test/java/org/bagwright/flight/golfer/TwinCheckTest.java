package org.bagwright.flight.golfer;

import static org.bagwright.flight.golfer.TestBags.MPS_PER_MPH;
import static org.bagwright.flight.golfer.TestBags.M_PER_YD;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A golfer made of hidden numbers hits seven shots with each of three clubs; from these alone the change of carry is
 * predicted that another setting gives him.
 *
 * <p>Hidden, normal about the plain amateur of 75 to 115 mph, one standard deviation: head speed 2 %, attack 1 degree,
 * delivered loft 1.5 degrees, ball speed 2 %, spin 12 %, drag 4 %. From shot to shot: head speed 1.5 %, attack 0.7 and
 * delivered loft 1 degree, ball speed 1.5 %. Reading of the launch monitor: head speed 1 %, ball speed 0.5 %, launch 0.3
 * degrees, spin 4 %, attack 0.5 degrees (given in every second case), carry 1.5 %. The other setting is up to 2 degrees of
 * loft away. All spreads are assumed. The golfer's ball flies as the same ball model says, so that no error of the model
 * itself is in the misses; measured, all 500 lie within 1.5 yd.
 */
class TwinCheckTest {
    private static final int CASES = 500;
    private static final int SHOTS = 7;
    private static final double MOST_LOFT_DEG = 2;
    private static final BallFlight FLIGHTS = new BallFlight(AirConditions.DEFAULT, BallModelKind.BEARMAN_HARVEY);
    private static final List<Club> CLUBS = TestBags.genericBag().subList(0, 13);

    private final Random random = new Random(2018);

    /** A club, how its golfer really delivers it, and the drag of his ball. */
    private record Hidden(ClubToday club, Delivery delivery, double dragRatio) {
        double carryM(double loftDeg) {
            return FLIGHTS.fly(delivery.launch(club, loftDeg), dragRatio).carryM();
        }
    }

    @Tag("analytic")
    @Test
    void changeOfCarry_isPredictedForGolfersNotSeen() {
        double[] missYd = new double[CASES];
        for (int i = 0; i < CASES; i++) {
            missYd[i] = missYd();
        }
        Arrays.sort(missYd);
        String measured = shareWithin(missYd, 1.5) + " within 1.5 yd, " + shareWithin(missYd, 3)
                + " within 3 yd, worst " + missYd[CASES - 1];
        assertTrue(shareWithin(missYd, 1.5) >= 0.9, measured);
        assertTrue(shareWithin(missYd, 3) >= 0.99, measured);
    }

    private static double shareWithin(double[] missYd, double mostYd) {
        return (double) Arrays.stream(missYd).filter(miss -> miss <= mostYd).count() / missYd.length;
    }

    private double missYd() {
        double driverMph = 75 + 40 * random.nextDouble();
        double dragRatio = near(1, 0.04);
        boolean attackGiven = random.nextBoolean();
        List<Club> bag = bag();
        List<Hidden> golfer =
                bag.stream().map(club -> hidden(club, driverMph, dragRatio)).toList();
        List<Shot> shots = new ArrayList<>();
        for (Hidden hidden : golfer) {
            for (int i = 0; i < SHOTS; i++) {
                shots.add(shot(hidden, attackGiven));
            }
        }
        GolferFlight fitted = TestBags.fit(TestBags.golfer(driverMph), bag, shots);
        Hidden one = golfer.get(random.nextInt(golfer.size()));
        double todayDeg = one.club().loftDeg();
        double otherDeg = todayDeg + MOST_LOFT_DEG * (2 * random.nextDouble() - 1);
        double trueM = one.carryM(otherDeg) - one.carryM(todayDeg);
        Club club = one.club().club();
        double predictedM = fitted.predict(club, otherDeg).carryM()
                - fitted.predict(club, todayDeg).carryM();
        return Math.abs(predictedM - trueM) / M_PER_YD;
    }

    private List<Club> bag() {
        List<Club> bag = new ArrayList<>();
        for (int from = 0; from < 12; from += 4) {
            bag.add(CLUBS.get(from + random.nextInt(4)));
        }
        return bag;
    }

    private Hidden hidden(Club club, double driverMph, double dragRatio) {
        ClubToday today = ClubToday.of(club, club.head().loftDeg());
        double driverMps = driverMph * MPS_PER_MPH;
        double share = (today.lengthM() - HeadSpeeds.SEVEN_IRON_M) / (45.25 * 0.0254 - HeadSpeeds.SEVEN_IRON_M);
        Golfer.HeadSpeeds speeds = new Golfer.HeadSpeeds(OptionalDouble.of(driverMps), OptionalDouble.empty());
        Delivery plain = new PlainGolfer(new HeadSpeeds(speeds, Optional.empty())).delivery(today);
        double headMps = driverMps * (0.8 + 0.2 * share);
        Delivery delivery = new Delivery(
                near(headMps, 0.02 * headMps),
                near(plain.attackDeg(), 1),
                near(plain.offsetDeg(), 1.5),
                near(plain.efficiencyRatio(), 0.02),
                near(1, 0.12),
                1);
        return new Hidden(today, delivery, dragRatio);
    }

    private Shot shot(Hidden hidden, boolean attackGiven) {
        Delivery usual = hidden.delivery();
        Delivery swing = new Delivery(
                near(usual.headSpeedMps(), 0.015 * usual.headSpeedMps()),
                near(usual.attackDeg(), 0.7),
                near(usual.offsetDeg(), 1),
                near(usual.efficiencyRatio(), 0.015),
                usual.spinRatio(),
                1);
        Launch launch = swing.launch(hidden.club(), hidden.club().loftDeg());
        double carryM = FLIGHTS.fly(launch, hidden.dragRatio()).carryM();
        return new Shot(
                "Ann",
                hidden.club().club().name(),
                new Shot.Measured(
                        read(swing.headSpeedMps(), 0.01 * swing.headSpeedMps()),
                        read(launch.ballSpeedMps(), 0.005 * launch.ballSpeedMps()),
                        read(launch.launchDeg(), 0.3),
                        read(launch.spinRpm(), 0.04 * launch.spinRpm()),
                        attackGiven ? read(swing.attackDeg(), 0.5) : OptionalDouble.empty(),
                        read(carryM, 0.015 * carryM)),
                "Shots!B2");
    }

    private OptionalDouble read(double value, double spread) {
        return OptionalDouble.of(near(value, spread));
    }

    private double near(double value, double spread) {
        return value + spread * random.nextGaussian();
    }
}
