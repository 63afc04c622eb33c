package org.bagwright.domain.units;

import org.bagwright.domain.text.Numbers;

/**
 * The values that a quantity can sensibly have, both ends included. Wide enough for any club that can be built, narrow
 * enough to catch a typing error such as a lie of 158.
 *
 * @param leastMeasureUnits the least value, in {@code unit}
 * @param mostMeasureUnits the greatest value, in {@code unit}
 * @param unit the unit as people write it
 */
public record Limit(double leastMeasureUnits, double mostMeasureUnits, String unit) {
    public static final Limit LOFT_DEG = new Limit(0, 75, "degrees");
    public static final Limit LIE_DEG = new Limit(40, 80, "degrees");
    public static final Limit FACE_DEG = new Limit(-10, 10, "degrees");
    public static final Limit BEND_DEG = new Limit(0, 6, "degrees");
    public static final Limit HOSEL_BEND_DEG = new Limit(-8, 8, "degrees");
    public static final Limit CLOCK_H = new Limit(0, 12, "hours");
    public static final Limit LEAN_DEG = new Limit(-10, 20, "degrees");
    public static final Limit SITS_DEG = new Limit(-15, 15, "degrees");
    public static final Limit CLUB_LENGTH_M = new Limit(0.4, 1.4, "m");
    public static final Limit HEAD_SPEED_MPS = new Limit(8, 80, "m/s");
    public static final Limit BALL_SPEED_MPS = new Limit(5, 110, "m/s");
    public static final Limit CARRY_M = new Limit(1, 400, "m");
    public static final Limit LAUNCH_DEG = new Limit(-5, 70, "degrees");
    public static final Limit SPIN_RPM = new Limit(0, 16000, "rpm");
    public static final Limit ATTACK_DEG = new Limit(-15, 15, "degrees");
    public static final Limit AIR_TEMPERATURE_C = new Limit(-30, 55, "C");
    public static final Limit ALTITUDE_M = new Limit(-450, 5000, "m");
    public static final Limit HUMIDITY_RATIO = new Limit(0, 1, "of saturation");
    public static final Limit WIND_MPS = new Limit(-25, 25, "m/s");

    public Limit {
        if (!(leastMeasureUnits <= mostMeasureUnits)) {
            throw new IllegalArgumentException("a limit needs its least value first");
        }
    }

    /** Whether the value, in this limit's unit, is inside; false for NaN. */
    public boolean holds(double valueMeasureUnits) {
        return valueMeasureUnits >= leastMeasureUnits && valueMeasureUnits <= mostMeasureUnits;
    }

    /** The limit in words, such as {@code 40 to 80 degrees}. */
    public String inWords() {
        return Numbers.trimmed(leastMeasureUnits) + " to " + Numbers.trimmed(mostMeasureUnits) + " " + unit;
    }
}
