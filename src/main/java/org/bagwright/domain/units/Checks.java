package org.bagwright.domain.units;

/** Conditions that a record's constructor states once; each of them fails on NaN too. */
public final class Checks {
    private Checks() {}

    public static void that(boolean condition, String what) {
        if (!condition) {
            throw new IllegalArgumentException(what);
        }
    }

    public static void finite(double value, String what) {
        that(Double.isFinite(value), what + " must be a finite number, found " + value);
    }

    public static void positive(double value, String what) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(what + " must be above 0, found " + value);
        }
    }

    public static void notNegative(double value, String what) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(what + " must be 0 or more, found " + value);
        }
    }

    public static void within(Limit limit, double value, String what) {
        if (!limit.holds(value)) {
            throw new IllegalArgumentException(what + " must be " + limit.inWords() + ", found " + value);
        }
    }

    public static void named(String text, String what) {
        that(text != null && !text.isBlank(), what + " must not be blank");
    }
}
