package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;
import org.bagwright.flight.Ball;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;
import org.bagwright.flight.PointHead;

/** What no club and no ball can do: shots that must be mistakes of the monitor or of the keyboard. */
final class ShotChecks {
    private static final double MOST_CARRY_FACTOR = 1.5;
    private static final double MOST_OFFSET_DEG = 25;
    private static final double MOST_SPIN_FACTOR = 4;

    private final BallFlight flights;
    private final FitterUnits words;

    ShotChecks(BallFlight flights, FitterUnits words) {
        this.flights = flights;
        this.words = words;
    }

    /**
     * The problems of one shot, each at its cell.
     *
     * @param shot the shot
     * @param club its club
     * @param plain how the club is expected to come to the ball
     * @param knownHeadMps the head speed of the shot or stated for the club, m/s; empty when it is only guessed
     */
    List<Message> problems(Shot shot, ClubToday club, Delivery plain, OptionalDouble knownHeadMps) {
        PointHead head = club.head(knownHeadMps.orElse(plain.headSpeedMps()));
        Measured measured = shot.measured();
        double attackDeg = measured.attackDeg().orElse(plain.attackDeg());
        List<String> found = new ArrayList<>();
        OptionalDouble spinLoftDeg = OptionalDouble.empty();
        if (measured.launchDeg().isPresent()) {
            spinLoftDeg = head.spinLoftDeg(measured.launchDeg().getAsDouble() - attackDeg);
            checkLaunch(measured.launchDeg().getAsDouble(), attackDeg, spinLoftDeg, club, found);
        }
        if (knownHeadMps.isPresent() && measured.ballSpeedMps().isPresent()) {
            checkBallSpeed(measured.ballSpeedMps().getAsDouble(), head, spinLoftDeg.orElse(0), found);
        }
        if (spinLoftDeg.isPresent() && measured.spinRpm().isPresent()) {
            checkSpin(measured.spinRpm().getAsDouble(), head, spinLoftDeg.getAsDouble(), found);
        }
        if (measured.carryM().isPresent()) {
            checkCarry(measured, head, knownHeadMps, found);
        }
        return found.stream().map(text -> Message.problem(shot.cell(), text)).toList();
    }

    private static void checkLaunch(
            double launchDeg, double attackDeg, OptionalDouble spinLoftDeg, ClubToday club, List<String> found) {
        if (launchDeg < attackDeg) {
            found.add("Launch " + FitterUnits.angle(launchDeg) + " is below the path of the head, "
                    + FitterUnits.angle(attackDeg) + ". No loft gives that.");
        } else if (spinLoftDeg.isEmpty()) {
            found.add("Launch " + FitterUnits.angle(launchDeg) + " is higher than any delivered loft can give.");
        } else {
            double deliveredDeg = spinLoftDeg.getAsDouble() + attackDeg;
            if (Math.abs(deliveredDeg - club.loftDeg()) > MOST_OFFSET_DEG) {
                found.add("Launch " + FitterUnits.angle(launchDeg) + " needs a delivered loft of "
                        + FitterUnits.angle(deliveredDeg) + ", but the club presents "
                        + FitterUnits.angle(club.loftDeg())
                        + " at address. Maybe it was another club.");
            }
        }
    }

    private void checkBallSpeed(double ballMps, PointHead head, double spinLoftDeg, List<String> found) {
        double mostMps = head.perfect().strike(Ball.STANDARD, spinLoftDeg).ballSpeedMps();
        if (ballMps > mostMps * (1 + 1e-9)) {
            found.add("Ball speed " + words.speed(ballMps) + " is more than even a perfect hit gives at head speed "
                    + words.speed(head.speedMps()) + ": at most " + words.speed(mostMps) + ".");
        }
    }

    private static void checkSpin(double spinRpm, PointHead head, double spinLoftDeg, List<String> found) {
        double usualRpm = head.strike(Ball.STANDARD, spinLoftDeg).spinRpm();
        if (!(spinRpm <= MOST_SPIN_FACTOR * usualRpm && spinRpm >= usualRpm / MOST_SPIN_FACTOR)) {
            found.add("Spin " + FitterUnits.spin(spinRpm) + " does not fit the launch, which needs about "
                    + FitterUnits.spin(usualRpm) + ".");
        }
    }

    private void checkCarry(Measured shot, PointHead head, OptionalDouble knownHeadMps, List<String> found) {
        double carryM = shot.carryM().getAsDouble();
        OptionalDouble mostM = shot.ballSpeedMps().isPresent() || knownHeadMps.isPresent()
                ? OptionalDouble.of(mostCarryM(shot, head))
                : OptionalDouble.empty();
        if (mostM.isPresent() && carryM > mostM.getAsDouble()) {
            found.add("Carry " + words.distance(carryM) + " is farther than this ball can fly: at most "
                    + words.distance(mostM.getAsDouble()) + ".");
        }
    }

    /**
     * With a full launch, one and a half times the flight of the ball model, which is more than any ball, wind or air
     * explains; else the longest throw in a vacuum, with the ball speed of a perfect blow where none is given. (The vacuum range at the shot's own launch is no limit: lift beats it.)
     */
    private double mostCarryM(Measured shot, PointHead head) {
        double ballMps = shot.ballSpeedMps()
                .orElseGet(() -> head.perfect().strike(Ball.STANDARD, 0).ballSpeedMps());
        double vacuumM = ballMps * ballMps / BallFlight.GRAVITY_MPS2;
        if (shot.ballSpeedMps().isEmpty()
                || shot.launchDeg().isEmpty()
                || shot.spinRpm().isEmpty()) {
            return vacuumM;
        }
        Launch launch = new Launch(
                ballMps, shot.launchDeg().getAsDouble(), shot.spinRpm().getAsDouble());
        return Math.min(vacuumM, MOST_CARRY_FACTOR * flights.fly(launch, 1).carryM());
    }
}
