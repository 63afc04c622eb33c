package org.bagwright.workbook.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Limit;
import org.bagwright.domain.units.SpeedUnit;

/**
 * One way to write a quantity.
 *
 * @param label how the tool writes it
 * @param sizeMeasureUnits its size in the unit that the domain keeps the quantity in
 * @param names every way a fitter may write it, in lower case without spaces
 */
public record Unit(String label, double sizeMeasureUnits, List<String> names) {
    public Unit {
        names = List.copyOf(names);
    }

    public static Unit of(String label, double sizeMeasureUnits, String... names) {
        return new Unit(label, sizeMeasureUnits, List.of(names));
    }

    static Unit of(LengthUnit unit, String... names) {
        return of(unit.label(), unit.toM(1), names);
    }

    static Unit of(SpeedUnit unit, String... names) {
        return of(unit.label(), unit.toMps(1), names);
    }

    boolean isCalled(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
        return names.contains(plain) || names.contains(plain.replaceAll("\\.$", ""));
    }

    /** The unit after a number in words. */
    public String spoken() {
        return label.equals("in") ? "inches" : label;
    }

    public double toDomain(double value) {
        return value * sizeMeasureUnits;
    }

    /** A limit of the domain as the fitter writes it, such as {@code 17.9 to 179 mph}. */
    public String inWords(Limit limit) {
        String least = rounded(limit.leastMeasureUnits(), RoundingMode.CEILING);
        String most = rounded(limit.mostMeasureUnits(), RoundingMode.FLOOR);
        return (least + " to " + most + " " + label).strip();
    }

    /** A bound in this unit, rounded toward the inside to one decimal where the unit is not the domain's own. */
    private String rounded(double boundMeasureUnits, RoundingMode inward) {
        double bound = boundMeasureUnits / sizeMeasureUnits;
        return Numbers.trimmed(BigDecimal.valueOf(bound)
                .setScale(6, RoundingMode.HALF_UP)
                .setScale(sizeMeasureUnits == 1 ? 4 : 1, inward)
                .doubleValue());
    }
}
