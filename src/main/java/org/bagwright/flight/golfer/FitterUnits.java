package org.bagwright.flight.golfer;

import java.util.List;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Units;

/** Quantities as a fitter reads them, in the units of his book. */
record FitterUnits(Units units) {
    String speed(double mps) {
        return Numbers.trimmed(units.speed().fromMps(mps), 1) + " "
                + units.speed().label();
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
