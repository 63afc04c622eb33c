package org.bagwright.workbook;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.HeadForm;
import org.bagwright.domain.Limit;

/** Reads what a row of Clubs says of the form of its head. */
final class HeadFormReader {
    private static final double HEEL_TOE_OVER_FORE_AFT = 1.25;
    private static final Pattern TWO_RADII = Pattern.compile("(.+?)\\s*/\\s*(.+)");

    private record Sole(OptionalDouble foreAftMm, OptionalDouble heelToeMm) {
        static final Sole ASSUMED = new Sole(OptionalDouble.empty(), OptionalDouble.empty());
    }

    private HeadFormReader() {}

    static HeadForm form(InputRow row) {
        Sole sole = sole(row);
        return new HeadForm(
                row.number(ClubColumns.HEAD_MASS),
                sole.foreAftMm(),
                sole.heelToeMm(),
                row.number(ClubColumns.CG_HEIGHT));
    }

    private static Sole sole(InputRow row) {
        if (row.content(ClubColumns.SOLE_RADIUS) instanceof CellContent.Words words) {
            Matcher two = TWO_RADII.matcher(words.text());
            if (two.matches()) {
                return twoRadii(row, two.group(1), two.group(2));
            }
        }
        OptionalDouble one = row.number(ClubColumns.SOLE_RADIUS);
        return one.isEmpty()
                ? Sole.ASSUMED
                : new Sole(one, OptionalDouble.of(one.getAsDouble() * HEEL_TOE_OVER_FORE_AFT));
    }

    private static Sole twoRadii(InputRow row, String foreAft, String heelToe) {
        Unit usual = row.unit(ClubColumns.SOLE_RADIUS);
        Optional<NumberText.Parsed> second = NumberText.parse(heelToe, Quantity.SMALL_LENGTH);
        Unit written = second.flatMap(NumberText.Parsed::unit).orElse(usual);
        OptionalDouble foreAftMm = radiusMm(NumberText.parse(foreAft, Quantity.SMALL_LENGTH), written);
        OptionalDouble heelToeMm = radiusMm(second, written);
        if (foreAftMm.isPresent() && heelToeMm.isPresent()) {
            return new Sole(foreAftMm, heelToeMm);
        }
        row.problem(
                ClubColumns.SOLE_RADIUS,
                "sole radius must be one number, or two as 200/250, each " + usual.inWords(limit()) + ", found "
                        + row.content(ClubColumns.SOLE_RADIUS).shown() + ".");
        return Sole.ASSUMED;
    }

    private static OptionalDouble radiusMm(Optional<NumberText.Parsed> parsed, Unit usual) {
        return parsed.map(number -> number.unit().orElse(usual).toDomain(number.valueMeasureUnits()))
                .filter(limit()::holds)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private static Limit limit() {
        return ClubColumns.SOLE_RADIUS.limit().orElseThrow();
    }
}
