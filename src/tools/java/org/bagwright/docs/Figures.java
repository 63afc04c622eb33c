package org.bagwright.docs;

import java.util.Locale;

/** Numbers as the pages print them. A hair is added before rounding so that a tie falls the same way on every machine. */
final class Figures {
    private static final double HAIR = 1e-7;

    private Figures() {}

    /** With this many decimals and a plain hyphen as minus, for machines to read. */
    static String plain(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value + HAIR);
        return isZero(text) ? text.replace("-", "") : text;
    }

    /** With this many decimals and a true minus sign. */
    static String fixed(double value, int decimals) {
        return plain(value, decimals).replace('-', '\u2212');
    }

    /** As {@link #fixed}, a plus sign before what is above zero. */
    static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        return value > 0 && !isZero(text) ? "+" + text : text;
    }

    private static boolean isZero(String text) {
        return text.chars().noneMatch(letter -> letter >= '1' && letter <= '9');
    }
}
