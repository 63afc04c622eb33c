package org.bagwright.workbook.text;

import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.bagwright.domain.text.Numbers;

/** Guesses the number that was meant by one outside its limits. */
public final class NumberTypos {
    private NumberTypos() {}

    /** {@code " Maybe 58?"} when one plain slip (sign, decimal point, a key hit twice) explains the value, else nothing. */
    public static String maybe(double value, DoublePredicate allowed) {
        List<List<Double>> slips = List.of(List.of(-value), List.of(value / 10, value * 10), oneDigitLess(value));
        for (List<Double> slip : slips) {
            List<Double> fitting =
                    slip.stream().filter(allowed::test).distinct().toList();
            if (fitting.size() == 1) {
                return " Maybe " + Numbers.trimmed(fitting.get(0)) + "?";
            }
        }
        return "";
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
