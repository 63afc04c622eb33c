package org.bagwright.workbook.text;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Hours typed as text: {@code 1:30}, {@code 1.5}, {@code 1,5 h}. */
public final class ClockText {
    private static final Pattern HOURS_MINUTES = Pattern.compile("(\\d{1,2}):([0-5]\\d)(?::00)?");

    private ClockText() {}

    /** The hour as written, not yet checked against the clock. */
    public static OptionalDouble hour(String text) {
        Matcher minutes = HOURS_MINUTES.matcher(text.strip());
        if (minutes.matches()) {
            return OptionalDouble.of(Integer.parseInt(minutes.group(1)) + Integer.parseInt(minutes.group(2)) / 60.0);
        }
        return NumberText.parse(text, Quantity.HOURS)
                .map(parsed -> OptionalDouble.of(parsed.valueMeasureUnits()))
                .orElseGet(OptionalDouble::empty);
    }
}
