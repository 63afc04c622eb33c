package org.bagwright.domain.book;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * One shot, or an average of shots, hit with a club as it is today.
 *
 * @param golfer who hit it
 * @param club with which club
 * @param measured what was measured
 * @param cell where the book names it
 */
public record Shot(String golfer, String club, Measured measured, String cell) {
    public Shot {
        Checks.named(golfer, "golfer");
        Checks.named(club, "club");
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
     */
    public record Measured(
            OptionalDouble headSpeedMps,
            OptionalDouble ballSpeedMps,
            OptionalDouble launchDeg,
            OptionalDouble spinRpm,
            OptionalDouble attackDeg,
            OptionalDouble carryM) {
        public Measured {
            headSpeedMps.ifPresent(value -> Checks.within(Limit.HEAD_SPEED_MPS, value, "head speed"));
            ballSpeedMps.ifPresent(value -> Checks.within(Limit.BALL_SPEED_MPS, value, "ball speed"));
            launchDeg.ifPresent(value -> Checks.within(Limit.LAUNCH_DEG, value, "launch"));
            spinRpm.ifPresent(value -> Checks.within(Limit.SPIN_RPM, value, "spin"));
            attackDeg.ifPresent(value -> Checks.within(Limit.ATTACK_DEG, value, "attack"));
            carryM.ifPresent(value -> Checks.within(Limit.CARRY_M, value, "carry"));
        }
    }
}
