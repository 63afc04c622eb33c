package org.bagwright.workbook.read;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.Quantity;

/** Reads the sheet Aims; what it leaves out keeps the default. */
final class AimReader {
    private static final Map<String, Measure> MEASURES =
            Arrays.stream(Measure.values()).collect(Collectors.toMap(Measure::label, measure -> measure));

    private static final double LEAST_SHARE = 1e-6;

    private final Matching matching;
    private final Map<Measure, Aim> aims;
    private final Map<Measure, InputRow> rows = new EnumMap<>(Measure.class);

    private AimReader(Matching matching) {
        this.matching = matching;
        this.aims = new EnumMap<>(Aims.defaults(matching).byMeasure());
    }

    /** Reads the aims of a book whose clubs are matched as the sheet Start says, on which the unit of spread depends. */
    static AimReader read(InputTable table, Matching matching) {
        AimReader reader = new AimReader(matching);
        List<InputRow> rows = table.rows();
        List<Column> needed = List.of(AimColumn.MEASURE);
        if (!rows.isEmpty()) {
            table.requireColumns(needed);
        }
        rows.forEach(reader::readRow);
        table.tellUnread();
        return reader;
    }

    Aims aims() {
        return new Aims(aims);
    }

    /** The rows of the measures that the sheet gives. */
    Map<Measure, InputRow> rows() {
        return rows;
    }

    private void readRow(InputRow row) {
        row.require(AimColumn.MEASURE);
        Optional<Measure> measure = row.choice(AimColumn.MEASURE, MEASURES, AimColumn.labels());
        measure.ifPresent(found -> unique(row, found));
        OptionalDouble tolerance = measure.map(found -> tolerance(row, found))
                .orElseGet(() -> row.number(AimColumn.TOLERANCE, Quantity.PLAIN));
        OptionalDouble importance = row.number(AimColumn.IMPORTANCE);
        Optional<Boolean> must = row.yesNo(AimColumn.MUST);
        if (!row.isSpoilt()) {
            Aim usual = Aims.defaults(matching).of(measure.orElseThrow());
            aims.put(
                    usual.measure(),
                    new Aim(
                            usual.measure(),
                            tolerance.orElse(usual.toleranceMeasureUnits()),
                            importance.orElse(usual.importancePoints()),
                            must.orElse(usual.must())));
        }
    }

    private void unique(InputRow row, Measure measure) {
        InputRow first = rows.putIfAbsent(measure, row);
        if (first != null) {
            row.problem(
                    AimColumn.MEASURE,
                    "measure must have one row only, found \"" + measure.label() + "\" again, first in "
                            + first.cell(AimColumn.MEASURE) + ".");
        }
    }

    /** Above 0, and not so near to it that every deviation would count without end. */
    private OptionalDouble tolerance(InputRow row, Measure measure) {
        OptionalDouble tolerance = row.number(AimColumn.TOLERANCE, quantity(measure));
        double usual = Aims.defaults(matching).of(measure).toleranceMeasureUnits();
        if (tolerance.orElse(usual) >= LEAST_SHARE * usual) {
            return tolerance;
        }
        row.problem(
                AimColumn.TOLERANCE,
                "tolerance must be "
                        + (tolerance.getAsDouble() > 0 ? "a millionth of the usual one or more" : "above 0")
                        + ", found " + row.content(AimColumn.TOLERANCE).shown() + ".");
        return OptionalDouble.empty();
    }

    private Quantity quantity(Measure measure) {
        return switch (measure.unit()) {
            case DISTANCE -> Quantity.DISTANCE;
            case POINT -> Quantity.POINTS;
            case MATCH -> matching.by() == Matching.By.INERTIA ? Quantity.CLUB_INERTIA : Quantity.POINTS;
            case DEGREE, ITEM -> Quantity.PLAIN;
        };
    }
}
