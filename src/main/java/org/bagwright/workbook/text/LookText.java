package org.bagwright.workbook.text;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A look at address in words: {@code 1 open}, {@code 2 deg closed} or {@code square}.
 *
 * @param closedDeg degrees closed
 */
public record LookText(double closedDeg) {
    private static final Pattern SIDE = Pattern.compile("\\b(open|closed)\\b");

    /** The look, or nothing where the text names no side. */
    public static Optional<LookText> parse(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.equals("square")) {
            return Optional.of(new LookText(0));
        }
        Matcher side = SIDE.matcher(plain);
        if (!side.find()) {
            return Optional.empty();
        }
        String name = side.group(1);
        return NumberText.parse(side.replaceFirst(" "), Quantity.ANGLE)
                .map(size -> of(Math.abs(size.valueMeasureUnits()), name));
    }

    private static LookText of(double sizeDeg, String side) {
        return new LookText(side.equals("open") && sizeDeg > 0 ? -sizeDeg : sizeDeg);
    }
}
