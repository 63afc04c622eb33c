package org.bagwright.workbook.text;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;

/**
 * Guesses the number that was meant by one outside its limit.
 *
 * @param limit what is allowed, in the domain's unit
 * @param unit the unit in which the number is written
 */
public record NumberTypos(Limit limit, Unit unit) {
    /** {@code " Maybe 58?"} when one plain slip (sign, decimal point, a key hit twice) explains the value, else nothing. */
    public String maybe(double value) {
        List<List<Double>> slips = List.of(List.of(-value), List.of(value / 10, value * 10), oneDigitLess(value));
        for (List<Double> slip : slips) {
            List<Double> fitting =
                    slip.stream().filter(this::isAllowed).distinct().toList();
            if (fitting.size() == 1) {
                return " Maybe " + Numbers.trimmed(fitting.get(0)) + "?";
            }
        }
        return "";
    }

    private boolean isAllowed(double value) {
        return limit.holds(unit.toDomain(value));
    }

    private static List<Double> oneDigitLess(double value) {
        String text = Numbers.trimmed(value);
        return IntStream.range(0, text.length())
                .filter(index -> Character.isDigit(text.charAt(index)))
                .mapToObj(index -> text.substring(0, index) + text.substring(index + 1))
                .filter(shorter -> shorter.matches("-?\\d+(\\.\\d+)?"))
                .map(Double::valueOf)
                .toList();
    }
}
