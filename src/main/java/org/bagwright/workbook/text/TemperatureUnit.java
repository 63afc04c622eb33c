package org.bagwright.workbook.text;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;

/** Degrees Celsius or Fahrenheit as fitters write them. */
public enum TemperatureUnit {
    CELSIUS,
    FAHRENHEIT;

    private static final double F_PER_C = 1.8;
    private static final double ZERO_C_IN_F = 32;

    public static Optional<TemperatureUnit> called(String unit) {
        return switch (CloseNames.key(unit)
                .replaceAll("[\u00b0\u00ba.]", "")
                .replace("degrees ", "")
                .replace("deg ", "")
                .strip()) {
            case "c", "celsius", "centigrade" -> Optional.of(CELSIUS);
            case "f", "fahrenheit" -> Optional.of(FAHRENHEIT);
            default -> Optional.empty();
        };
    }

    /** The temperature that a cell holds, in this unit where it writes none, in degrees Celsius. */
    public OptionalDouble celsius(CellContent content) {
        if (content instanceof CellContent.Words words) {
            String number = words.text().replaceAll("[^0-9]*$", "");
            String written = words.text().substring(number.length());
            Optional<TemperatureUnit> unit =
                    written.isBlank() || written.strip().equals("\u00b0") ? Optional.of(this) : called(written);
            Optional<NumberText> parsed = NumberText.parse(number, Quantity.PLAIN);
            return unit.isEmpty() || parsed.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(unit.get().toCelsius(parsed.get().valueMeasureUnits()));
        }
        return content instanceof CellContent.Amount amount && !amount.dated()
                ? OptionalDouble.of(toCelsius(amount.valueMeasureUnits()))
                : OptionalDouble.empty();
    }

    private double toCelsius(double value) {
        return this == FAHRENHEIT ? (value - ZERO_C_IN_F) / F_PER_C : value;
    }

    /** A limit in degrees Celsius as it is written in this unit. */
    public String inWords(Limit limitC) {
        return this == FAHRENHEIT
                ? Numbers.trimmed(limitC.leastMeasureUnits() * F_PER_C + ZERO_C_IN_F) + " to "
                        + Numbers.trimmed(limitC.mostMeasureUnits() * F_PER_C + ZERO_C_IN_F) + " F"
                : limitC.inWords();
    }
}
