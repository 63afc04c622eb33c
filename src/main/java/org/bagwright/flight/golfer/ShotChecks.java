package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;
import org.bagwright.domain.book.Wording;
import org.bagwright.flight.Ball;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;
import org.bagwright.flight.PointHead;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/**
 * What no club and no ball can do: shots that must be mistakes of the monitor or of the keyboard. Each is named at its cell
 * and left out.
 */
final class ShotChecks {
    private static final double MOST_CARRY_FACTOR = 1.5;
    private static final double MOST_OFFSET_DEG = 25;
    private static final double MOST_SPIN_FACTOR = 4;

    /** Ball speed over the usual one below which a ball that is slower than the head is a mistake; assumed. */
    private static final double LEAST_BALL_RATIO = 0.8;

    private static final String NOT_COUNTED = ", so not counted: ";

    private final BallFlight flights;
    private final FitterUnits words;

    ShotChecks(BallFlight flights, FitterUnits words) {
        this.flights = flights;
        this.words = words;
    }

    /**
     * How a shot was hit, as far as that is known.
     *
     * @param shot the shot
     * @param club its club
     * @param plain how the club is expected to come to the ball
     * @param knownHeadMps the head speed of the shot or stated for the club, m/s; empty when it is only guessed
     */
    record Hit(Shot shot, ClubToday club, Delivery plain, OptionalDouble knownHeadMps) {
        PointHead head() {
            return club.head(knownHeadMps.orElse(plain.headSpeedMps()));
        }

        Measured measured() {
            return shot.measured();
        }

        double attackDeg() {
            return measured().attackDeg().orElse(plain.attackDeg());
        }

        OptionalDouble spinLoftDeg() {
            return measured().launchDeg().isEmpty()
                    ? OptionalDouble.empty()
                    : head().spinLoftDeg(measured().launchDeg().getAsDouble() - attackDeg());
        }

        /** The ball speed that is usual with this club at a head speed, m/s. */
        double usualBallMps(double headMps) {
            return plain.withHeadSpeedMps(headMps).ballMps(club);
        }

        Message fault(String column, String lead, String detail, String tail) {
            Wording wording = Wording.ofClub(
                    lead + NOT_COUNTED, shot.golfer(), club.club().name(), detail, "." + tail);
            return Message.warning(shot.cell(), wording).in(column);
        }
    }

    /** Why a shot cannot be, at its cell; one reason, since the others mostly follow from it. */
    Optional<Message> fault(Hit hit) {
        List<Message> found = new ArrayList<>();
        OptionalDouble spinLoftDeg = hit.spinLoftDeg();
        checkLaunch(hit, spinLoftDeg, found);
        checkBallSpeed(hit, spinLoftDeg.orElse(0), found);
        checkSpin(hit, spinLoftDeg, found);
        checkCarry(hit, found);
        return found.stream().findFirst();
    }

    private static void checkLaunch(Hit hit, OptionalDouble spinLoftDeg, List<Message> found) {
        if (hit.measured().launchDeg().isEmpty()) {
            return;
        }
        double launchDeg = hit.measured().launchDeg().getAsDouble();
        String launch = "launch " + FitterUnits.angle(launchDeg);
        if (launchDeg < hit.attackDeg()) {
            found.add(hit.fault(
                    "Launch",
                    "Launch below the path of the head, which no loft gives",
                    launch + ", path " + FitterUnits.angle(hit.attackDeg()),
                    ""));
        } else if (spinLoftDeg.isEmpty()) {
            found.add(hit.fault("Launch", "Launch higher than any delivered loft can give", launch, ""));
        } else if (Math.abs(
                        spinLoftDeg.getAsDouble() + hit.attackDeg() - hit.club().loftDeg())
                > MOST_OFFSET_DEG) {
            found.add(hit.fault(
                    "Launch",
                    "Launch far from the loft of the club",
                    launch + " needs a delivered loft of "
                            + FitterUnits.angle(spinLoftDeg.getAsDouble() + hit.attackDeg()) + ", the club presents "
                            + FitterUnits.angle(hit.club().loftDeg()),
                    " Maybe it was another club."));
        }
    }

    private void checkBallSpeed(Hit hit, double spinLoftDeg, List<Message> found) {
        if (hit.measured().ballSpeedMps().isEmpty() || hit.knownHeadMps().isEmpty()) {
            return;
        }
        double ballMps = hit.measured().ballSpeedMps().getAsDouble();
        double headMps = hit.knownHeadMps().getAsDouble();
        double mostMps = hit.head().perfect().strike(Ball.STANDARD, spinLoftDeg).ballSpeedMps();
        String speeds = "ball speed " + words.speed(ballMps) + ", head speed " + words.speed(headMps);
        if (ballMps > mostMps * (1 + 1e-9)) {
            found.add(hit.fault(
                    "Ball speed",
                    "Ball speed above that of a perfect hit",
                    speeds + ", at most " + words.speed(mostMps),
                    maybe(hit, ballMps, headMps)));
        } else if (ballMps < headMps && ballMps < LEAST_BALL_RATIO * hit.usualBallMps(headMps)) {
            found.add(hit.fault(
                    "Ball speed",
                    "Ball slower than the head",
                    speeds + ", usual is about " + words.speed(hit.usualBallMps(headMps)),
                    maybe(hit, ballMps, headMps)));
        }
    }

    private String maybe(Hit hit, double ballMps, double headMps) {
        return words.otherUnit(ballMps, hit.usualBallMps(headMps))
                .map(unit -> " Maybe Ball speed is in " + unit + ".")
                .or(() -> words.otherUnitOf(headMps, mps -> ballMps / hit.usualBallMps(mps))
                        .map(unit -> " Maybe Head speed is in " + unit + "."))
                .orElse(" Maybe one of the two speeds is mistyped.");
    }

    private static void checkSpin(Hit hit, OptionalDouble spinLoftDeg, List<Message> found) {
        if (spinLoftDeg.isEmpty() || hit.measured().spinRpm().isEmpty()) {
            return;
        }
        double spinRpm = hit.measured().spinRpm().getAsDouble();
        double usualRpm =
                hit.head().strike(Ball.STANDARD, spinLoftDeg.getAsDouble()).spinRpm();
        if (!(spinRpm <= MOST_SPIN_FACTOR * usualRpm && spinRpm >= usualRpm / MOST_SPIN_FACTOR)) {
            found.add(hit.fault(
                    "Spin",
                    "Spin that does not fit the launch",
                    FitterUnits.spin(spinRpm) + ", the launch needs about " + FitterUnits.spin(usualRpm),
                    ""));
        }
    }

    private void checkCarry(Hit hit, List<Message> found) {
        Measured measured = hit.measured();
        if (measured.carryM().isEmpty()
                || (measured.ballSpeedMps().isEmpty() && hit.knownHeadMps().isEmpty())) {
            return;
        }
        double mostM = mostCarryM(measured, hit.head());
        if (measured.carryM().getAsDouble() > mostM) {
            found.add(hit.fault(
                    "Carry",
                    "Carry farther than this ball can fly",
                    words.distance(measured.carryM().getAsDouble()) + ", at most " + words.distance(mostM),
                    ""));
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
