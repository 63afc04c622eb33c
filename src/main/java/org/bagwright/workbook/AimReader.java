package org.bagwright.workbook;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.Aim;
import org.bagwright.domain.Aims;
import org.bagwright.domain.Measure;

/** Reads the sheet Aims; what it leaves out keeps the default. */
final class AimReader {
    private static final Map<String, Measure> MEASURES =
            Arrays.stream(Measure.values()).collect(Collectors.toMap(Measure::label, measure -> measure));

    private final Map<Measure, Aim> aims = new EnumMap<>(Aims.defaults().byMeasure());
    private final Map<Measure, String> given = new EnumMap<>(Measure.class);

    private AimReader() {}

    static Aims read(InputTable table) {
        AimReader reader = new AimReader();
        List<InputRow> rows = table.rows();
        List<Column> needed = List.of(AimColumns.MEASURE);
        if (!rows.isEmpty()) {
            table.requireColumns(needed);
        }
        rows.forEach(reader::readRow);
        table.warnOfCloseHeadings(needed);
        return new Aims(reader.aims);
    }

    private void readRow(InputRow row) {
        row.require(AimColumns.MEASURE);
        Optional<Measure> measure = row.choice(AimColumns.MEASURE, MEASURES, AimColumns.usedLabels());
        measure.ifPresent(found -> unique(row, found));
        boolean distance = measure.filter(Measure::isDistance).isPresent();
        OptionalDouble tolerance = tolerance(row, distance ? Quantity.DISTANCE : Quantity.PLAIN);
        OptionalDouble importance = row.number(AimColumns.IMPORTANCE);
        Optional<Boolean> must = row.yesNo(AimColumns.MUST);
        if (!row.isSpoilt()) {
            Aim usual = Aims.defaults().of(measure.orElseThrow());
            Aim aim = new Aim(
                    usual.measure(),
                    tolerance.orElse(usual.toleranceMeasureUnits()),
                    importance.orElse(usual.importancePoints()),
                    must.orElse(usual.must()));
            aims.put(aim.measure(), aim);
            warnIfNotUsed(row, aim, usual);
        }
    }

    private void unique(InputRow row, Measure measure) {
        String first = given.putIfAbsent(measure, row.cell(AimColumns.MEASURE));
        if (first != null) {
            row.problem(
                    AimColumns.MEASURE,
                    "measure must have one row only, found \"" + measure.label() + "\" again, first in " + first + ".");
        }
    }

    private static OptionalDouble tolerance(InputRow row, Quantity quantity) {
        OptionalDouble tolerance = row.number(AimColumns.TOLERANCE, quantity);
        if (tolerance.orElse(1) > 0) {
            return tolerance;
        }
        row.problem(
                AimColumns.TOLERANCE,
                "tolerance must be above 0, found "
                        + row.content(AimColumns.TOLERANCE).shown() + ".");
        return OptionalDouble.empty();
    }

    private static void warnIfNotUsed(InputRow row, Aim aim, Aim usual) {
        if (!AimColumns.USED.contains(aim.measure()) && !aim.equals(usual)) {
            row.warning(
                    AimColumns.MEASURE, "the measure " + aim.measure().label() + " is not used yet by this version.");
        }
    }
}
