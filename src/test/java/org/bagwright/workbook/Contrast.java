package org.bagwright.workbook;

/**
 * How well two colours can be told apart, from 1 to 21, as in WCAG 2.1 [memory].
 *
 * @param one six hexadecimal digits
 * @param other six hexadecimal digits
 */
public record Contrast(String one, String other) {
    public double inColour() {
        return ratio(luminance(one), luminance(other));
    }

    /** As they are printed in grey. */
    public double inGrey() {
        return ratio(linear(grey(one)), linear(grey(other)));
    }

    private static double ratio(double first, double second) {
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * linear(part(hex, 0)) + 0.7152 * linear(part(hex, 1)) + 0.0722 * linear(part(hex, 2));
    }

    private static double grey(String hex) {
        return 0.299 * part(hex, 0) + 0.587 * part(hex, 1) + 0.114 * part(hex, 2);
    }

    private static double part(String hex, int index) {
        return Integer.parseInt(hex.substring(2 * index, 2 * index + 2), 16) / 255.0;
    }

    private static double linear(double part) {
        return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
