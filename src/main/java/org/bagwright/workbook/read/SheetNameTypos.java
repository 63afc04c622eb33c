package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.schema.AimColumns;
import org.bagwright.workbook.schema.ReadingColumns;
import org.bagwright.workbook.schema.Schema;
import org.bagwright.workbook.schema.ShotColumns;
import org.bagwright.workbook.schema.StockColumns;
import org.bagwright.workbook.schema.WeightColumns;

/** Sheets that a book calls a little otherwise than they must be called to be read. */
final class SheetNameTypos {
    private static final List<String> UNNEEDED = List.of(
            Schema.START,
            ReadingColumns.SHEET.name(),
            ShotColumns.SHEET.name(),
            WeightColumns.SHEET.name(),
            StockColumns.SHEET.name(),
            AimColumns.SHEET.name());

    private SheetNameTypos() {}

    /** Warns of every sheet that is passed over though its name is a slip of one that the book can do without. */
    static void warn(List<String> sheets, Findings findings) {
        for (String wanted : UNNEEDED) {
            boolean missing =
                    sheets.stream().noneMatch(name -> CloseNames.key(name).equals(CloseNames.key(wanted)));
            Optional<String> slip = slip(sheets, wanted);
            if (missing && slip.isPresent()) {
                findings.warning(
                        slip.get(), "no input sheet has this name, so it is not read. Maybe \"" + wanted + "\"?");
            }
        }
    }

    /** The sheet whose name is probably a slip of a wanted one. */
    static Optional<String> slip(List<String> sheets, String wanted) {
        return sheets.stream()
                .filter(name -> !Schema.knows(name))
                .filter(name -> CloseNames.closest(name, List.of(wanted)).isPresent())
                .findFirst();
    }
}
