package org.bagwright.workbook.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.WeightColumns;

/** Reads the sheet Weights. */
final class WeightReader {
    private static final List<Column> NEEDED =
            List.of(WeightColumns.KIT, WeightColumns.WEIGHTING, WeightColumns.PORT, WeightColumns.MASS);

    private final Map<String, KitDraft> byKey = new LinkedHashMap<>();
    private boolean namesRead = true;
    private boolean missing;

    static WeightReader read(InputTable table, BookContext context) {
        WeightReader reader = new WeightReader();
        List<InputRow> rows = table.rows();
        if (!rows.isEmpty()) {
            table.requireColumns(NEEDED);
        }
        rows.forEach(reader::readRow);
        reader.byKey.values().forEach(kit -> kit.sayAssumedPlaces(context.findings()));
        table.warnOfCloseHeadings(NEEDED);
        return reader;
    }

    /** No sheet at all: nothing is known of any kit. */
    static WeightReader none() {
        WeightReader reader = new WeightReader();
        reader.missing = true;
        reader.namesRead = false;
        return reader;
    }

    boolean isMissing() {
        return missing;
    }

    /** Whether every kit's name could be read, so that a name not found is really not there. */
    boolean namesRead() {
        return namesRead;
    }

    Optional<KitDraft> find(String name) {
        return Optional.ofNullable(byKey.get(CloseNames.key(name)));
    }

    List<KitDraft> known() {
        return List.copyOf(byKey.values());
    }

    List<String> names() {
        return byKey.values().stream().map(KitDraft::name).toList();
    }

    /** The kits that have nothing wrong in their rows. */
    List<Kit> kits() {
        return byKey.values().stream().flatMap(kit -> kit.kit().stream()).toList();
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        Optional<String> name = row.text(WeightColumns.KIT);
        Optional<String> weighting = row.text(WeightColumns.WEIGHTING);
        Optional<String> port = row.text(WeightColumns.PORT);
        OptionalDouble massKg = row.number(WeightColumns.MASS);
        OptionalDouble xMm = row.number(WeightColumns.X);
        OptionalDouble yMm = row.number(WeightColumns.Y);
        OptionalDouble zMm = row.number(WeightColumns.Z);
        namesRead &= name.isPresent();
        if (name.isEmpty()) {
            return;
        }
        KitDraft kit = byKey.computeIfAbsent(CloseNames.key(name.get()), key -> new KitDraft(name.get()));
        kit.take(row, weighting, port, massKg);
        if (row.isSpoilt()) {
            kit.spoil();
        } else if (massKg.getAsDouble() > 0) {
            firstBlankPlace(row).ifPresent(kit::placeAssumed);
            kit.add(
                    weighting.orElseThrow(),
                    new PortPiece(
                            port.orElseThrow(), massKg.getAsDouble(), xMm.orElse(0), yMm.orElse(0), zMm.orElse(0)));
        }
    }

    private static Optional<String> firstBlankPlace(InputRow row) {
        return Stream.of(WeightColumns.X, WeightColumns.Y, WeightColumns.Z)
                .filter(column -> !row.isGiven(column))
                .map(row::cell)
                .findFirst();
    }
}
