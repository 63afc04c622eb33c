package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.domain.units.Units;

/** Quantities as a fitter reads them, in the units of his book. */
record FitterUnits(Units units) {
    private static final double ABOUT_RATIO = 0.12;

    String speed(double mps) {
        return Numbers.trimmed(units.speed().fromMps(mps), 1) + " "
                + units.speed().label();
    }

    /** The other unit of speed in which a number as written in the book would be about this speed. */
    Optional<String> otherUnit(double writtenMps, double usualMps) {
        return otherUnitOf(writtenMps, mps -> mps / usualMps);
    }

    /** The other unit of speed in which a number as written in the book gives a ratio of about 1. */
    Optional<String> otherUnitOf(double writtenMps, DoubleUnaryOperator ratio) {
        double written = units.speed().fromMps(writtenMps);
        return Arrays.stream(SpeedUnit.values())
                .filter(unit -> unit != units.speed())
                .filter(unit -> Math.abs(ratio.applyAsDouble(unit.toMps(written)) - 1) < ABOUT_RATIO)
                .map(SpeedUnit::label)
                .findFirst();
    }

    String distance(double m) {
        return Numbers.trimmed(units.distance().fromM(m), 1) + " "
                + units.distance().label();
    }

    String length(double m) {
        return Numbers.trimmed(units.length().fromM(m), 2) + " "
                + units.length().label();
    }

    static String angle(double deg) {
        return Numbers.trimmed(deg, 1) + " degrees";
    }

    static String spin(double rpm) {
        return Numbers.trimmed(rpm, 0) + " rpm";
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String list(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
}
