package org.bagwright.workbook.text;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;

/** Degrees Celsius and Fahrenheit as fitters write them. */
public final class Temperatures {
    private static final double F_PER_C = 1.8;
    private static final double ZERO_C_IN_F = 32;

    private Temperatures() {}

    public static Optional<Boolean> isFahrenheit(String unit) {
        return switch (CloseNames.key(unit)
                .replaceAll("[\u00b0\u00ba.]", "")
                .replace("degrees ", "")
                .replace("deg ", "")
                .strip()) {
            case "c", "celsius", "centigrade" -> Optional.of(false);
            case "f", "fahrenheit" -> Optional.of(true);
            default -> Optional.empty();
        };
    }

    public static OptionalDouble celsius(CellContent content, boolean bookInF) {
        if (content instanceof CellContent.Words words) {
            String number = words.text().replaceAll("[^0-9]*$", "");
            String unit = words.text().substring(number.length());
            Optional<Boolean> inF =
                    unit.isBlank() || unit.strip().equals("\u00b0") ? Optional.of(bookInF) : isFahrenheit(unit);
            Optional<NumberText.Parsed> parsed = NumberText.parse(number, Quantity.PLAIN);
            return inF.isEmpty() || parsed.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(celsius(parsed.get().valueMeasureUnits(), inF.get()));
        }
        return content instanceof CellContent.Amount amount && !amount.dated()
                ? OptionalDouble.of(celsius(amount.valueMeasureUnits(), bookInF))
                : OptionalDouble.empty();
    }

    private static double celsius(double value, boolean inF) {
        return inF ? (value - ZERO_C_IN_F) / F_PER_C : value;
    }

    public static String inWords(Limit limit, boolean inF) {
        return inF
                ? Numbers.trimmed(limit.leastMeasureUnits() * F_PER_C + ZERO_C_IN_F) + " to "
                        + Numbers.trimmed(limit.mostMeasureUnits() * F_PER_C + ZERO_C_IN_F) + " F"
                : limit.inWords();
    }
}
