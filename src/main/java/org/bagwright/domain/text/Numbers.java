package org.bagwright.domain.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them, the same in every locale. */
public final class Numbers {
    private Numbers() {}

    /** The value with at most four decimals and no trailing zeros: {@code 1.5}, {@code 0}, {@code -2}. */
    public static String trimmed(double value) {
        return trimmed(value, 4);
    }

    /** The value rounded half up to {@code decimals} places, without trailing zeros. */
    public static String trimmed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** As {@link #trimmed(double)}, but with a power of ten where that would be a row of digits or nothing but 0. */
    public static String brief(double value) {
        double size = Math.abs(value);
        boolean usual = size == 0 || (size >= 1e-4 && size < 1e12);
        return usual
                ? trimmed(value)
                : new BigDecimal(value)
                        .round(new MathContext(5))
                        .stripTrailingZeros()
                        .toString();
    }

    /** The value rounded half up to exactly {@code decimals} places, never a negative zero. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    /** As {@link #fixed} with a plus sign before values that round above zero. */
    public static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        boolean positive = new BigDecimal(text).signum() > 0;
        return positive ? "+" + text : text;
    }
}
