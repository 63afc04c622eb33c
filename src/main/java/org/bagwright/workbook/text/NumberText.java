package org.bagwright.workbook.text;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number typed as text: {@code 10.5}, {@code 10,5}, {@code 43 1/2 in}, {@code 58°}, or {@code 1:30} for hours.
 *
 * @param valueMeasureUnits the number as written
 * @param unit the unit written after it, if any
 */
public record NumberText(double valueMeasureUnits, Optional<Unit> unit) {
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?)\\s*(\\d+(?:[.,]\\d+)*|[.,]\\d+)(?:\\s+(\\d+)/(\\d+))?\\s*(\\D.*)?");
    private static final Pattern COMMA_GROUPS = Pattern.compile("\\d{1,3}(,\\d{3})+\\.\\d+");
    private static final Pattern POINT_GROUPS = Pattern.compile("\\d{1,3}(\\.\\d{3})+,\\d+");
    private static final Pattern ONE_SEPARATOR = Pattern.compile("\\d*[.,]?\\d+");
    private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern HOURS_MINUTES = Pattern.compile("(\\d{1,2}):([0-5]\\d)(?::00)?");

    /** The number, or nothing when the text is none, its unit is of another quantity, or it can be read two ways. */
    public static Optional<NumberText> parse(String text, Quantity quantity) {
        Matcher minutes = HOURS_MINUTES.matcher(text.strip());
        if (quantity == Quantity.HOURS && minutes.matches()) {
            double hours = Integer.parseInt(minutes.group(1)) + Integer.parseInt(minutes.group(2)) / 60.0;
            return Optional.of(new NumberText(hours, Optional.empty()));
        }
        return decimalOrFraction(text, quantity);
    }

    private static Optional<NumberText> decimalOrFraction(String text, Quantity quantity) {
        Matcher shape =
                SHAPE.matcher(text.replace('\u2212', '-').replace('\u00a0', ' ').strip());
        if (!shape.matches()) {
            return Optional.empty();
        }
        String rest = shape.group(5) == null ? "" : shape.group(5).strip();
        Optional<Unit> unit = rest.isEmpty() ? Optional.empty() : quantity.unit(rest);
        OptionalDouble size = size(shape, quantity);
        if (size.isEmpty() || (!rest.isEmpty() && unit.isEmpty())) {
            return Optional.empty();
        }
        double sign = shape.group(1).equals("-") ? -1 : 1;
        return Optional.of(new NumberText(sign * size.getAsDouble(), unit));
    }

    /** The number in the unit that the domain keeps the quantity in, from the usual unit where none is written. */
    public double toDomain(Unit usual) {
        return unit.orElse(usual).toDomain(valueMeasureUnits);
    }

    /** Whether the text is a number whose separator may be a decimal or a thousands one. */
    public static boolean readsTwoWays(String text, Quantity quantity) {
        Matcher shape = SHAPE.matcher(text.strip());
        return shape.matches() && twoWays(shape.group(2), quantity);
    }

    private static boolean twoWays(String digits, Quantity quantity) {
        boolean comma = digits.contains(",");
        return EITHER.matcher(digits).matches() && (comma || quantity == Quantity.SPIN);
    }

    private static OptionalDouble size(Matcher shape, Quantity quantity) {
        OptionalDouble whole = decimal(shape.group(2), quantity);
        if (whole.isEmpty() || shape.group(3) == null) {
            return whole;
        }
        double below = Double.parseDouble(shape.group(4));
        double fraction = Double.parseDouble(shape.group(3)) / below;
        return fraction < 1 ? OptionalDouble.of(whole.getAsDouble() + fraction) : OptionalDouble.empty();
    }

    private static OptionalDouble decimal(String digits, Quantity quantity) {
        if (twoWays(digits, quantity)) {
            return OptionalDouble.empty();
        }
        if (COMMA_GROUPS.matcher(digits).matches()) {
            return OptionalDouble.of(Double.parseDouble(digits.replace(",", "")));
        }
        if (POINT_GROUPS.matcher(digits).matches()) {
            return OptionalDouble.of(Double.parseDouble(digits.replace(".", "").replace(',', '.')));
        }
        return ONE_SEPARATOR.matcher(digits).matches()
                ? OptionalDouble.of(Double.parseDouble(digits.replace(',', '.')))
                : OptionalDouble.empty();
    }
}
