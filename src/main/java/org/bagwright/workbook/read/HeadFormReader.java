package org.bagwright.workbook.read;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.NumberTypos;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/** Reads what a row of Clubs gives about the form of its head. */
final class HeadFormReader {
    private static final double HEEL_TOE_OVER_FORE_AFT = 1.25;
    private static final Pattern TWO_RADII = Pattern.compile("(.+?)\\s*/\\s*(.+)");

    private record Sole(OptionalDouble foreAftMm, OptionalDouble heelToeMm) {
        static final Sole ASSUMED = new Sole(OptionalDouble.empty(), OptionalDouble.empty());
    }

    private final InputRow row;
    private final OptionalDouble lengthM;

    /** @param lengthM the length of the club, where its row gives one */
    HeadFormReader(InputRow row, OptionalDouble lengthM) {
        this.row = row;
        this.lengthM = lengthM;
    }

    /** The form of a head; kind and length of its club decide what it weighs where the row does not give that. */
    HeadForm form(Optional<ClubKind> kind) {
        Sole sole = sole();
        OptionalDouble massKg = row.number(ClubColumn.HEAD_MASS);
        OptionalDouble inertiaKgM2 = row.number(ClubColumn.HEAD_INERTIA);
        if (kind.isPresent() && inertiaKgM2.isPresent()) {
            OptionalDouble headKg = row.isGiven(ClubColumn.HEAD_MASS) ? massKg : usualMassKg(kind.get());
            headKg.ifPresent(value -> checkInertia(kind.get(), value, inertiaKgM2.getAsDouble()));
        }
        return new HeadForm(
                massKg,
                sole.foreAftMm(),
                sole.heelToeMm(),
                row.number(ClubColumn.CG_HEIGHT),
                row.number(ClubColumn.CG_DEPTH),
                inertiaKgM2);
    }

    private OptionalDouble usualMassKg(ClubKind kind) {
        OptionalDouble loftDeg = row.number(ClubColumn.LOFT);
        if (row.isGiven(ClubColumn.LENGTH) ? lengthM.isEmpty() : loftDeg.isEmpty()) {
            return OptionalDouble.empty();
        }
        double usualM = lengthM.orElseGet(() -> kind.usualLengthM(loftDeg.getAsDouble()));
        return OptionalDouble.of(kind.usualHeadMassKg(usualM));
    }

    private void checkInertia(ClubKind kind, double massKg, double inertiaKgM2) {
        Limit limit = kind.headInertiaLimitKgM2(massKg);
        if (!limit.holds(inertiaKgM2)) {
            Unit unit = row.unit(ClubColumn.HEAD_INERTIA);
            String assumed = row.isGiven(ClubColumn.HEAD_MASS) ? "" : " (assumed)";
            row.problem(
                    ClubColumn.HEAD_INERTIA,
                    "head inertia must be " + unit.inWords(limit) + " for a head of "
                            + Numbers.trimmed(massKg * 1000, 1)
                            + " g" + assumed + " and at most " + Numbers.trimmed(kind.mostHeelToeMm())
                            + " mm from heel to toe, found "
                            + row.content(ClubColumn.HEAD_INERTIA).shown() + "."
                            + new NumberTypos(limit, unit).maybe(inertiaKgM2 / unit.sizeMeasureUnits()));
        }
    }

    private Sole sole() {
        if (row.content(ClubColumn.SOLE_RADIUS) instanceof CellContent.Words words) {
            Matcher two = TWO_RADII.matcher(words.text());
            if (two.matches()) {
                return twoRadii(two.group(1), two.group(2));
            }
        }
        OptionalDouble one = row.number(ClubColumn.SOLE_RADIUS);
        return one.isEmpty()
                ? Sole.ASSUMED
                : new Sole(one, OptionalDouble.of(one.getAsDouble() * HEEL_TOE_OVER_FORE_AFT));
    }

    private Sole twoRadii(String foreAft, String heelToe) {
        Unit usual = row.unit(ClubColumn.SOLE_RADIUS);
        Optional<NumberText> second = NumberText.parse(heelToe, Quantity.SMALL_LENGTH);
        Unit written = second.flatMap(NumberText::unit).orElse(usual);
        OptionalDouble foreAftMm = radiusMm(NumberText.parse(foreAft, Quantity.SMALL_LENGTH), written);
        OptionalDouble heelToeMm = radiusMm(second, written);
        if (foreAftMm.isPresent() && heelToeMm.isPresent()) {
            return new Sole(foreAftMm, heelToeMm);
        }
        row.problem(
                ClubColumn.SOLE_RADIUS,
                "sole radius must be one number, or two as 200/250, each " + usual.inWords(limit()) + ", found "
                        + row.content(ClubColumn.SOLE_RADIUS).shown() + ".");
        return Sole.ASSUMED;
    }

    private static OptionalDouble radiusMm(Optional<NumberText> parsed, Unit usual) {
        return parsed.map(number -> number.toDomain(usual))
                .filter(limit()::holds)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private static Limit limit() {
        return ClubColumn.SOLE_RADIUS.limit().orElseThrow();
    }
}
