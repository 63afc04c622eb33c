package org.bagwright.domain.book;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * One shot, or an average of shots.
 *
 * @param golfer who hit it
 * @param club with which club
 * @param measured what was measured
 * @param setup how the club was set up
 * @param series when, and of how many shots it is the average
 * @param cell where the book names it
 */
public record Shot(String golfer, String club, Measured measured, Setup setup, Series series, String cell) {
    public Shot {
        Checks.named(golfer, "golfer");
        Checks.named(club, "club");
    }

    /** A single shot of no stated date, hit with the club as it is today. */
    public Shot(String golfer, String club, Measured measured, String cell) {
        this(golfer, club, measured, Setup.TODAY, Series.ONE, cell);
    }

    /** The same shot, hit with a club that was set up in a given way where the row does not say how. */
    public Shot hitWith(Setup before) {
        return new Shot(golfer, club, measured, setup.or(before), series, cell);
    }

    /**
     * How the club was set up; what is empty is as it is today.
     *
     * @param setting the setting of its sleeve
     * @param weighting its weighting
     * @param loftBendDeg bend of its loft from what it was made with, degrees
     * @param lieBendDeg bend of its lie, degrees
     * @param lengthM its length, m
     */
    public record Setup(
            Optional<String> setting,
            Optional<String> weighting,
            OptionalDouble loftBendDeg,
            OptionalDouble lieBendDeg,
            OptionalDouble lengthM) {
        public static final Setup TODAY = new Setup(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());

        public Setup {
            lengthM.ifPresent(value -> Checks.positive(value, "length"));
        }

        /** What was set, with today's for what is empty. */
        public Choice on(Choice today) {
            return new Choice(
                    setting.or(today::setting),
                    weighting.or(today::weighting),
                    new Bend(
                            loftBendDeg.orElse(today.bend().loftDeg()),
                            lieBendDeg.orElse(today.bend().lieDeg())));
        }

        /** All that is known of how a club is set up today. */
        public static Setup of(Club club) {
            boolean bent = club.kind().bendable();
            Bend bend = club.today().bend();
            return new Setup(
                    club.today().setting(),
                    club.today().weighting(),
                    bent ? OptionalDouble.of(bend.loftDeg()) : OptionalDouble.empty(),
                    bent ? OptionalDouble.of(bend.lieDeg()) : OptionalDouble.empty(),
                    club.parts().lengthM());
        }

        /** The same set-up with what is empty as another has it. */
        public Setup or(Setup other) {
            return new Setup(
                    setting.or(other::setting),
                    weighting.or(other::weighting),
                    loftBendDeg.isPresent() ? loftBendDeg : other.loftBendDeg,
                    lieBendDeg.isPresent() ? lieBendDeg : other.lieBendDeg,
                    lengthM.isPresent() ? lengthM : other.lengthM);
        }
    }

    /**
     * When a row was hit, and of how many shots it is the average.
     *
     * @param date the day
     * @param shots how many shots, 1 or more
     * @param carrySpreadM the standard deviation of their carries, m
     */
    public record Series(Optional<LocalDate> date, int shots, OptionalDouble carrySpreadM) {
        public static final Series ONE = new Series(Optional.empty(), 1, OptionalDouble.empty());

        public Series {
            Checks.that(shots >= 1, "a row must be of 1 shot or more");
            carrySpreadM.ifPresent(value -> Checks.notNegative(value, "spread"));
        }
    }

    /**
     * What was measured of a shot; what was not is empty.
     *
     * @param headSpeedMps head speed, m/s
     * @param ballSpeedMps ball speed, m/s
     * @param launchDeg launch angle above the ground, degrees
     * @param spinRpm backspin, rpm
     * @param attackDeg head path above the horizontal at impact, degrees, upward positive
     * @param carryM carry, metres
     * @param sideRightM where it came down, to the right of the target line, metres
     * @param landingDeg angle of descent, degrees, positive
     */
    public record Measured(
            OptionalDouble headSpeedMps,
            OptionalDouble ballSpeedMps,
            OptionalDouble launchDeg,
            OptionalDouble spinRpm,
            OptionalDouble attackDeg,
            OptionalDouble carryM,
            OptionalDouble sideRightM,
            OptionalDouble landingDeg) {
        public Measured {
            headSpeedMps.ifPresent(value -> Checks.within(Limit.HEAD_SPEED_MPS, value, "head speed"));
            ballSpeedMps.ifPresent(value -> Checks.within(Limit.BALL_SPEED_MPS, value, "ball speed"));
            launchDeg.ifPresent(value -> Checks.within(Limit.LAUNCH_DEG, value, "launch"));
            spinRpm.ifPresent(value -> Checks.within(Limit.SPIN_RPM, value, "spin"));
            attackDeg.ifPresent(value -> Checks.within(Limit.ATTACK_DEG, value, "attack"));
            carryM.ifPresent(value -> Checks.within(Limit.CARRY_M, value, "carry"));
            sideRightM.ifPresent(value -> Checks.finite(value, "side"));
            landingDeg.ifPresent(value -> Checks.finite(value, "landing"));
        }

        /** What a device tells that does not see where the ball comes down. */
        public Measured(
                OptionalDouble headSpeedMps,
                OptionalDouble ballSpeedMps,
                OptionalDouble launchDeg,
                OptionalDouble spinRpm,
                OptionalDouble attackDeg,
                OptionalDouble carryM) {
            this(
                    headSpeedMps,
                    ballSpeedMps,
                    launchDeg,
                    spinRpm,
                    attackDeg,
                    carryM,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
    }
}
