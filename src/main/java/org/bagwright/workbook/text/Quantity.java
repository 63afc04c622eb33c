package org.bagwright.workbook.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.domain.units.Units;

/** What a number in a book measures, and the units that may be written for it, the usual one first. */
public enum Quantity {
    ANGLE(Unit.of("degrees", 1, "degrees", "degree", "deg", "\u00b0", "\u00ba")),
    LENGTH(
            Unit.of(LengthUnit.INCH, "in", "inch", "inches", "\"", "\u201d", "\u2033", "''"),
            Unit.of(LengthUnit.MILLIMETRE, "mm"),
            Unit.of("cm", 0.01, "cm"),
            Unit.of("m", 1, "m")),
    DISTANCE(
            Unit.of(LengthUnit.YARD, "yd", "yds", "yard", "yards"),
            Unit.of(LengthUnit.METRE, "m", "metre", "metres", "meter", "meters")),
    SPEED(
            Unit.of(SpeedUnit.MILES_PER_HOUR, "mph", "mi/h"),
            Unit.of(SpeedUnit.METRES_PER_SECOND, "m/s", "mps"),
            Unit.of(SpeedUnit.KILOMETRES_PER_HOUR, "km/h", "kmh", "kph")),
    SPIN(Unit.of("rpm", 1, "rpm", "r/min", "1/min")),
    MASS(
            Unit.of("g", 0.001, "g", "gram", "grams"),
            Unit.of("kg", 1, "kg"),
            Unit.of("oz", 0.028349523125, "oz", "ounce", "ounces")),
    SMALL_LENGTH(
            Unit.of("mm", 1, "mm"),
            Unit.of("cm", 10, "cm"),
            Unit.of("in", 25.4, "in", "inch", "inches", "\"", "\u201d", "\u2033")),
    ALTITUDE(
            Unit.of("m", 1, "m", "metre", "metres", "meter", "meters"),
            Unit.of("ft", 0.3048, "ft", "feet", "foot", "'")),
    INERTIA(
            Unit.of("g cm2", 1e-7, "gcm2", "gcm\u00b2", "gcm^2", "g*cm2", "g\u00b7cm\u00b2"),
            Unit.of("kg cm2", 1e-4, "kgcm2", "kgcm\u00b2", "kgcm^2", "kg*cm2", "kg\u00b7cm\u00b2")),
    CLUB_INERTIA(Unit.of("kg cm2", 1, "kgcm2", "kgcm\u00b2", "kgcm^2", "kg*cm2", "kg\u00b7cm\u00b2")),
    HOURS(Unit.of("hours", 1, "h", "hour", "hours", "o'clock")),
    POINTS(Unit.of("points", 1, "point", "points", "pt", "pts")),
    PLAIN(Unit.of("", 1));

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives a list that cannot change
    private final List<Unit> units;

    Quantity(Unit... units) {
        this.units = List.of(units);
    }

    public Optional<Unit> unit(String name) {
        return units.stream().filter(unit -> unit.isCalled(name)).findFirst();
    }

    /** The unit meant where none is written. */
    public Unit usual(Units book) {
        return switch (this) {
            case LENGTH -> labelled(book.length().label());
            case DISTANCE -> labelled(book.distance().label());
            case SPEED -> labelled(book.speed().label());
            default -> units.get(0);
        };
    }

    /** Every other unit of this quantity. */
    List<Unit> others(Unit used) {
        return units.stream().filter(unit -> !unit.equals(used)).toList();
    }

    /** The units of this quantity that the sheet Start offers. */
    public List<Unit> startUnits() {
        return this == LENGTH ? units.subList(0, 2) : units;
    }

    /** The labels of all units, for people. */
    public String labels() {
        return units.stream().map(Unit::label).collect(Collectors.joining(", "));
    }

    private Unit labelled(String label) {
        return units.stream()
                .filter(unit -> unit.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
