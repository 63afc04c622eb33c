package org.bagwright.sessions;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How a file writes its numbers, told from those that can be read in one way only.
 *
 * @param point whether some have a decimal point
 * @param comma whether some have a decimal comma
 */
record NumberStyle(boolean point, boolean comma) {
    /** The digits and separators of a number, without its sign. */
    static final String DIGITS = "\\d[\\d.,'\\u2019\\u00a0\\u202f ]*|[.,]\\d+";

    private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern POINT_GROUPS = Pattern.compile("[1-9]\\d{0,2}(\\.\\d{3}){2,}");
    private static final Pattern COMMA_GROUPS = Pattern.compile("[1-9]\\d{0,2}(,\\d{3}){2,}");
    private static final Pattern POINT_DECIMAL = Pattern.compile("\\d*\\.\\d+|[1-9]\\d{0,2}(,\\d{3})+\\.\\d+");
    private static final Pattern COMMA_DECIMAL = Pattern.compile("\\d*,\\d+|[1-9]\\d{0,2}(\\.\\d{3})+,\\d+");

    /** The style of a file's numbers. */
    static NumberStyle of(Stream<String> numbers) {
        boolean[] found = new boolean[2];
        numbers.map(NumberStyle::squeezed)
                .map(text -> text.replaceAll("^[^\\d.,]*|[^\\d]*$", ""))
                .filter(text -> !EITHER.matcher(text).matches())
                .forEach(text -> {
                    found[0] |= POINT_DECIMAL.matcher(text).matches()
                            || COMMA_GROUPS.matcher(text).matches();
                    found[1] |= COMMA_DECIMAL.matcher(text).matches()
                            || POINT_GROUPS.matcher(text).matches();
                });
        return new NumberStyle(found[0], found[1]);
    }

    /** Takes the separators of thousands out that are no decimal ones. */
    private static String squeezed(String text) {
        return text.replaceAll("(?<=\\d)['\u2019\u00a0\u202f ](?=\\d{3}(?!\\d))", "");
    }

    /** A number without sign; empty where the text is none or can be read in two ways. */
    OptionalDouble value(String written, ShotField field) {
        String text = squeezed(written.strip());
        if (EITHER.matcher(text).matches()) {
            return either(text, field);
        }
        if (text.matches("\\d+") || POINT_DECIMAL.matcher(text).matches()) {
            return parsed(text.replace(",", ""));
        }
        if (COMMA_DECIMAL.matcher(text).matches()) {
            return parsed(text.replace(".", "").replace(',', '.'));
        }
        boolean groups = POINT_GROUPS.matcher(text).matches()
                || COMMA_GROUPS.matcher(text).matches();
        return groups ? parsed(text.replaceAll("[.,]", "")) : OptionalDouble.empty();
    }

    /** One separator with three digits behind it: the other numbers of the file tell what it is. */
    private OptionalDouble either(String text, ShotField field) {
        boolean isPoint = text.contains(".");
        boolean other = isPoint ? comma : point;
        boolean same = isPoint ? point : comma;
        boolean usualPoint = isPoint && field != ShotField.SPIN;
        if ((same && other) || (!same && !other && !usualPoint)) {
            return OptionalDouble.empty();
        }
        return other ? parsed(text.replaceAll("[.,]", "")) : parsed(text.replace(',', '.'));
    }

    /** So many digits that no number holds them are no number. */
    private static OptionalDouble parsed(String digits) {
        double value = Double.parseDouble(digits);
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Whether a text is a number that can be read in two ways here. */
    boolean readsTwoWays(String written, ShotField field) {
        String text = squeezed(written.strip());
        return EITHER.matcher(text).matches() && either(text, field).isEmpty();
    }
}
