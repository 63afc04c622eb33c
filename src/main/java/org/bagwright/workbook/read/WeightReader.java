package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.WeightColumns;

/** Reads the sheet Weights. */
final class WeightReader {
    private static final List<Column> NEEDED =
            List.of(WeightColumns.KIT, WeightColumns.WEIGHTING, WeightColumns.PORT, WeightColumns.MASS);

    private final Drafts<KitDraft> kits = Drafts.ofSheet();

    static Drafts<KitDraft> read(InputTable table, Findings findings) {
        WeightReader reader = new WeightReader();
        List<InputRow> rows = table.rows();
        if (!rows.isEmpty()) {
            table.requireColumns(NEEDED);
        }
        rows.forEach(reader::readRow);
        reader.kits.all().forEach(kit -> kit.sayAssumedPlaces(findings));
        table.warnOfCloseHeadings(NEEDED);
        return reader.kits;
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
        if (name.isEmpty()) {
            kits.names().missesOne();
            return;
        }
        KitDraft kit = kits.named(name.get(), row.cell(WeightColumns.KIT), KitDraft::new);
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
