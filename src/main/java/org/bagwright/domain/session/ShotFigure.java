package org.bagwright.domain.session;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.book.Shot.Measured;
import org.bagwright.domain.units.Units;

/** What is summed up of the shots of a session. */
public enum ShotFigure {
    CARRY("Carry", "carry", Measured::carryM),
    SIDE("Side", "side", Measured::sideRightM),
    LAUNCH("Launch", "launch", Measured::launchDeg),
    SPIN("Spin", "spin", Measured::spinRpm),
    BALL_SPEED("Ball speed", "ballSpeed", Measured::ballSpeedMps),
    HEAD_SPEED("Head speed", "headSpeed", Measured::headSpeedMps);

    private final String label;
    private final String key;
    private final Function<Measured, OptionalDouble> of;

    ShotFigure(String label, String key, Function<Measured, OptionalDouble> of) {
        this.label = label;
        this.key = key;
        this.of = of;
    }

    public String label() {
        return label;
    }

    /** Its name in documents for programs. */
    public String key() {
        return key;
    }

    /** The unit in which it is shown. */
    public String unit(Units units) {
        return switch (this) {
            case CARRY, SIDE -> units.distance().label();
            case LAUNCH -> "deg";
            case SPIN -> "rpm";
            case BALL_SPEED, HEAD_SPEED -> units.speed().label();
        };
    }

    /** A value of it in the unit in which it is shown. */
    public OptionalDouble shown(OptionalDouble value, Units units) {
        if (value.isEmpty()) {
            return value;
        }
        return OptionalDouble.of(
                switch (this) {
                    case CARRY, SIDE -> units.distance().fromM(value.getAsDouble());
                    case LAUNCH, SPIN -> value.getAsDouble();
                    case BALL_SPEED, HEAD_SPEED -> units.speed().fromMps(value.getAsDouble());
                });
    }

    /** The figure of one shot: m, to the right for side, degrees, rpm or m/s; empty where it was not measured. */
    OptionalDouble of(Measured measured) {
        return of.apply(measured);
    }
}
