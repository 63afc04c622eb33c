package org.bagwright.workbook.text;

import java.util.List;
import java.util.Optional;
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
    private static final double MOST_USUAL_M = 1.1;
    private static final Limit USUAL_LENGTH_M = new Limit(0.75, 1.25, "m");

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

    /** As {@link #maybe(double)}; where no slip explains the value, perhaps it is in another unit of its quantity. */
    public String maybe(double value, Quantity quantity) {
        Optional<String> other = quantity.others(unit).stream()
                .filter(each -> usual(quantity).holds(each.toDomain(value)))
                .map(each -> " Maybe " + Numbers.trimmed(value) + " " + each.label() + "?")
                .findFirst();
        String slip = maybe(value);
        boolean isClubLength = quantity == Quantity.LENGTH && limit.holds(MOST_USUAL_M);
        return other.isPresent() && (slip.isEmpty() || isClubLength) ? other.get() : slip;
    }

    /** A length in another unit must be one that a club really has, since its digits would often give a club's too. */
    private Limit usual(Quantity quantity) {
        return quantity == Quantity.LENGTH && limit.holds(MOST_USUAL_M) ? USUAL_LENGTH_M : limit;
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
