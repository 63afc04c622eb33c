package org.bagwright.domain.units;

/**
 * The units a book is written in.
 *
 * @param distance the unit of carries and gaps
 * @param speed the unit of head and ball speeds
 * @param length the unit of club lengths
 */
public record Units(LengthUnit distance, SpeedUnit speed, LengthUnit length) {
    public static final Units DEFAULT = new Units(LengthUnit.YARD, SpeedUnit.MILES_PER_HOUR, LengthUnit.INCH);
}
