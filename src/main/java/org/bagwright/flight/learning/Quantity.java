package org.bagwright.flight.learning;

import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot.Measured;

/**
 * What may be measured of a shot, as the fit sees it: speeds, spin and carry by their logarithm, angles in degrees. The noise
 * of the device is assumed; the discrepancy is what separates a device's mean from the truth, however many the shots.
 */
public enum Quantity {
    HEAD_SPEED(0.01, 0.006),
    BALL_SPEED(0.004, 0.003),
    LAUNCH(0.3, 0.25),
    SPIN(0.03, 0.02),
    ATTACK(0.5, 0.5),
    CARRY(0.007, 0.004);

    static final int COUNT = values().length;

    private final double noise;
    private final double discrepancy;

    Quantity(double noise, double discrepancy) {
        this.noise = noise;
        this.discrepancy = discrepancy;
    }

    /** Standard deviation of the device for one shot. */
    double noise() {
        return noise;
    }

    /** Standard deviation of what no number of shots takes away. */
    public double discrepancy() {
        return discrepancy;
    }

    /** The measured value; empty where it was not measured. */
    OptionalDouble of(Measured measured) {
        return switch (this) {
            case HEAD_SPEED -> ln(measured.headSpeedMps());
            case BALL_SPEED -> ln(measured.ballSpeedMps());
            case LAUNCH -> measured.launchDeg();
            case SPIN -> ln(measured.spinRpm());
            case ATTACK -> measured.attackDeg();
            case CARRY -> ln(measured.carryM());
        };
    }

    private static OptionalDouble ln(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() > 0
                ? OptionalDouble.of(Math.log(value.getAsDouble()))
                : OptionalDouble.empty();
    }
}
