package org.bagwright.domain.units;

/** The units a book is written in. */
public record Units(DistanceUnit distance, SpeedUnit speed, LengthUnit length) {
    public static final Units DEFAULT = new Units(DistanceUnit.YARD, SpeedUnit.MILES_PER_HOUR, LengthUnit.INCH);
}
