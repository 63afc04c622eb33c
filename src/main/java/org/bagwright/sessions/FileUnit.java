package org.bagwright.sessions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.SpeedUnit;

/** A unit in which a file may give a number. */
enum FileUnit {
    MILES_PER_HOUR("mph", SpeedUnit.MILES_PER_HOUR.toMps(1), "mph", "mi/h", "mi/hr", "milesperhour", "miles/h"),
    METRES_PER_SECOND("m/s", 1, "m/s", "mps", "m/sec", "ms-1", "m\u00b7s-1", "metrespersecond", "meterspersecond"),
    KILOMETRES_PER_HOUR(
            "km/h",
            SpeedUnit.KILOMETRES_PER_HOUR.toMps(1),
            "km/h",
            "kmh",
            "kph",
            "kmph",
            "km/hr",
            "kilometresperhour",
            "kilometersperhour"),
    YARD("yd", LengthUnit.YARD.toM(1), "yd", "yds", "yard", "yards"),
    METRE("m", 1, "m", "mtr", "mtrs", "metre", "metres", "meter", "meters"),
    FOOT("ft", 0.3048, "ft", "feet", "foot"),
    DEGREE("degrees", 1, "deg", "degs", "degree", "degrees", "\u00b0", "\u00ba"),
    RPM("rpm", 1, "rpm", "r/min", "1/min", "rev/min", "revs/min");

    static final List<FileUnit> SPEEDS = List.of(MILES_PER_HOUR, METRES_PER_SECOND, KILOMETRES_PER_HOUR);
    static final List<FileUnit> DISTANCES = List.of(YARD, METRE, FOOT);
    static final List<FileUnit> ANGLES = List.of(DEGREE);
    static final List<FileUnit> SPINS = List.of(RPM);

    private final String label;
    private final double sizeMeasureUnits;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives a list that cannot change
    private final List<String> names;

    FileUnit(String label, double sizeMeasureUnits, String... names) {
        this.label = label;
        this.sizeMeasureUnits = sizeMeasureUnits;
        this.names = List.of(names);
    }

    String label() {
        return label;
    }

    /** The unit among some that a text is a name of, whatever its letter case, spaces and last full stop. */
    static Optional<FileUnit> called(String text, List<FileUnit> among) {
        String plain = text.toLowerCase(Locale.ROOT).replaceAll("\\s", "").replaceAll("\\.$", "");
        return among.stream().filter(unit -> unit.names.contains(plain)).findFirst();
    }

    double toSi(double value) {
        return value * sizeMeasureUnits;
    }

    double fromSi(double value) {
        return value / sizeMeasureUnits;
    }
}
