package org.bagwright.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.units.Limit;
import org.bagwright.flight.Launch;

/**
 * The shots of a hidden golfer as his launch monitor reports them. He scatters in head speed, strike, launch and spin, all of
 * which the ball carries through to where it comes down, and by a rest that makes 3 % of carry in all. The monitor is off by a
 * noise of each shot and by a discrepancy of each group of shots. All sizes are assumed.
 */
final class HiddenShots {
    private static final double HEAD_SD = 0.008;
    private static final double STRIKE_SD = 0.0115;
    private static final double LAUNCH_SD_DEG = 1.1;
    private static final double SPIN_SD = 0.06;
    private static final double REST_SD = 0.019;
    private static final double STRAY_RATIO = 0.03;

    /** Noise or discrepancy of a monitor: logarithms of ratios, and degrees. */
    private record Off(double head, double ball, double launchDeg, double spin, double attackDeg, double carry) {
        static Off ofGroup(Dice dice) {
            return new Off(
                    dice.normal(0.006),
                    dice.normal(0.003),
                    dice.normal(0.25),
                    dice.normal(0.02),
                    dice.normal(0.5),
                    dice.normal(0.004));
        }

        Off longer(double more) {
            return new Off(head, ball, launchDeg, spin, attackDeg, carry + more);
        }

        Off ofShot(Dice dice) {
            return new Off(
                    head + dice.normal(0.006),
                    ball + dice.normal(0.003),
                    launchDeg + dice.normal(0.25),
                    spin + dice.normal(0.02),
                    attackDeg + dice.normal(0.5),
                    carry + dice.normal(0.004));
        }
    }

    private final HiddenBag bag;
    private final HiddenTruth truth;
    private final Device device;
    private final Dice dice;
    private final Population population;
    private final List<Shot> shots = new ArrayList<>();

    HiddenShots(HiddenBag bag, HiddenTruth truth, Device device, Dice dice, Population population) {
        this.bag = bag;
        this.truth = truth;
        this.device = device;
        this.dice = dice;
        this.population = population;
    }

    List<Shot> shots() {
        return shots;
    }

    /** A day on which he swings a little quicker or slower; undated shots have none. */
    record Day(Optional<LocalDate> date, double headRatio) {
        static final Day ANY = new Day(Optional.empty(), 1);

        static Day drawn(int day, Population population, Dice dice) {
            return new Day(
                    Optional.of(LocalDate.of(2026, 5, 1 + day)), Math.exp(population.dayRatio() * dice.normal(0.01)));
        }
    }

    /** Hits some shots with a club in one set-up on one day. */
    void hit(Club club, Choice choice, Day day, int count) {
        hit(club, choice, day, count, 0);
    }

    /** The same after something about the club changed that makes its carry longer, m. */
    void hit(Club club, Choice choice, Day day, int count, double longerM) {
        double carryRatio = 1 + longerM / truth.carryM(club.name(), choice);
        Off group = Off.ofGroup(dice);
        for (int shot = 0; shot < count; shot++) {
            boolean stray = dice.chance(STRAY_RATIO * population.strayRatio());
            boolean wrongClub = stray && dice.chance(0.5);
            Club hit = wrongClub ? bag.clubs().get(dice.below(bag.clubs().size())) : club;
            Choice setup = hit.equals(club) ? choice : hit.today();
            boolean mishit = stray && hit.equals(club);
            shots.add(new Shot(
                    club.golfer(),
                    club.name(),
                    measured(
                            hit,
                            setup,
                            day,
                            mishit,
                            group.longer(Math.log(carryRatio)).ofShot(dice)),
                    setup(club, choice),
                    new Shot.Series(day.date(), 1, OptionalDouble.empty()),
                    "Shots!B" + (shots.size() + 2)));
        }
    }

    /** What is as it is today stays blank. */
    private static Shot.Setup setup(Club club, Choice choice) {
        if (choice.equals(club.today())) {
            return Shot.Setup.TODAY;
        }
        return new Shot.Setup(
                choice.setting(),
                choice.weighting(),
                OptionalDouble.of(choice.bend().loftDeg()),
                OptionalDouble.of(choice.bend().lieDeg()),
                OptionalDouble.empty());
    }

    private Shot.Measured measured(Club club, Choice choice, Day day, boolean mishit, Off off) {
        double headRatio = day.headRatio() * Math.exp(scatter(HEAD_SD));
        double strikeRatio = Math.exp(scatter(STRIKE_SD)) * (mishit ? dice.between(0.78, 0.93) : 1);
        Launch plain = truth.launch(club.name(), choice, headRatio);
        double launchDeg = plain.launchDeg() + scatter(LAUNCH_SD_DEG) + (mishit ? dice.normal(2) : 0);
        double spinRatio = Math.exp(scatter(SPIN_SD) + (mishit ? dice.normal(0.2) : 0));
        Launch launch =
                new Launch(plain.ballSpeedMps() * strikeRatio, Math.max(1, launchDeg), plain.spinRpm() * spinRatio);
        double carryM = truth.carryM(club.name(), launch) * Math.exp(scatter(REST_SD));
        TrueDelivery delivery = truth.delivery(club.name());
        return new Shot.Measured(
                when(device.tellsHead(), Limit.HEAD_SPEED_MPS, delivery.headMps() * headRatio * Math.exp(off.head())),
                when(device.tellsBall(), Limit.BALL_SPEED_MPS, launch.ballSpeedMps() * Math.exp(off.ball())),
                when(device.tellsLaunch(), Limit.LAUNCH_DEG, launch.launchDeg() + off.launchDeg()),
                when(device.tellsLaunch(), Limit.SPIN_RPM, launch.spinRpm() * Math.exp(off.spin())),
                when(device == Device.FULL_WITH_ATTACK, Limit.ATTACK_DEG, delivery.attackDeg() + off.attackDeg()),
                when(true, Limit.CARRY_M, carryM * Math.exp(off.carry())));
    }

    private double scatter(double sd) {
        return population.scatterRatio() * dice.normal(sd);
    }

    private static OptionalDouble when(boolean told, Limit limit, double valueMeasureUnits) {
        return told
                ? OptionalDouble.of(
                        Math.max(limit.leastMeasureUnits(), Math.min(limit.mostMeasureUnits(), valueMeasureUnits)))
                : OptionalDouble.empty();
    }
}
