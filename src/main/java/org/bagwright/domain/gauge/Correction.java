package org.bagwright.domain.gauge;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.bagwright.domain.units.Checks;

/**
 * One input cell of a book with the number that gauge readings give for it.
 *
 * @param place the row
 * @param item the column
 * @param valueMeasureUnits the number for the cell, degrees or hours
 * @param standardErrorMeasureUnits its standard error in the same unit
 * @param statedMeasureUnits what the book states now, in the same unit
 * @param source where the number comes from, in plain words
 */
public record Correction(
        Place place,
        Item item,
        double valueMeasureUnits,
        double standardErrorMeasureUnits,
        double statedMeasureUnits,
        String source) {
    public Correction {
        Checks.finite(valueMeasureUnits, "correction");
        Checks.notNegative(standardErrorMeasureUnits, "standard error");
        Checks.named(source, "source");
    }

    /** A row of the book. */
    public sealed interface Place permits ClubRow, SettingRow {}

    /** The row of a club, by the cell that names it. */
    public record ClubRow(String clubCell) implements Place {}

    /** The row of one setting of a sleeve. */
    public record SettingRow(String sleeve, String mark) implements Place {}

    /** What a cell holds. */
    public enum Item {
        LOFT("loft", "degrees"),
        LIE("lie", "degrees"),
        FACE("face", "degrees"),
        CLOCK("clock", "hours"),
        BEND("bend", "degrees"),
        CLOCK_2("clock 2", "hours"),
        BEND_2("bend 2", "degrees");

        private final String label;
        private final String unit;

        Item(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        public String label() {
            return label;
        }

        public String unit() {
            return unit;
        }
    }

    /** Whether the cell names an hour of the clock. */
    public boolean isClock() {
        return item == Item.CLOCK || item == Item.CLOCK_2;
    }

    /** A number as it is written into the book, to a hundredth of a degree or an hour. */
    public static double rounded(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).doubleValue() + 0.0;
    }
}
