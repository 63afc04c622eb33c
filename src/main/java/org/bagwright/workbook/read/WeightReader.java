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
import org.bagwright.workbook.schema.WeightColumn;

/** Reads the sheet Weights. */
final class WeightReader {
    private static final List<Column> NEEDED =
            List.of(WeightColumn.KIT, WeightColumn.WEIGHTING, WeightColumn.PORT, WeightColumn.MASS);

    private final Drafts<KitDraft> kits = Drafts.ofSheet();

    static Drafts<KitDraft> read(InputTable table, Findings findings) {
        WeightReader reader = new WeightReader();
        List<InputRow> rows = table.rows();
        if (!rows.isEmpty()) {
            table.requireColumns(NEEDED);
        }
        rows.forEach(reader::readRow);
        reader.kits.all().forEach(kit -> kit.sayAssumedPlaces(findings));
        table.tellUnread();
        return reader.kits;
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        Optional<String> name = row.text(WeightColumn.KIT);
        Optional<String> weighting = row.text(WeightColumn.WEIGHTING);
        Optional<String> port = row.text(WeightColumn.PORT);
        OptionalDouble massKg = row.number(WeightColumn.MASS);
        Optional<PortPiece> piece = piece(row, port, massKg);
        if (name.isEmpty()) {
            kits.names().missesOne();
            return;
        }
        KitDraft kit = kits.named(name.get(), row.cell(WeightColumn.KIT), KitDraft::new);
        kit.take(row, weighting, port, massKg);
        if (row.isSpoilt()) {
            kit.spoil();
        } else if (piece.isPresent()) {
            firstBlankPlace(row).ifPresent(kit::placeAssumed);
            kit.add(weighting.orElseThrow(), piece.get());
        }
    }

    /** The piece in a port; none where the port stays empty or something is wrong in the row. */
    private static Optional<PortPiece> piece(InputRow row, Optional<String> port, OptionalDouble massKg) {
        double xMm = row.number(WeightColumn.X).orElse(0);
        double yMm = row.number(WeightColumn.Y).orElse(0);
        double zMm = row.number(WeightColumn.Z).orElse(0);
        return row.isSpoilt() || massKg.getAsDouble() == 0
                ? Optional.empty()
                : Optional.of(new PortPiece(port.orElseThrow(), massKg.getAsDouble(), xMm, yMm, zMm));
    }

    private static Optional<String> firstBlankPlace(InputRow row) {
        return Stream.of(WeightColumn.X, WeightColumn.Y, WeightColumn.Z)
                .filter(column -> !row.isGiven(column))
                .map(row::cell)
                .findFirst();
    }
}
