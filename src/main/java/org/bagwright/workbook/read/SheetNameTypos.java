package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.InputSheet;
import org.bagwright.workbook.schema.ReadingColumn;
import org.bagwright.workbook.schema.ResultSheet;
import org.bagwright.workbook.schema.ShotColumn;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.schema.StockColumn;
import org.bagwright.workbook.schema.WeightColumn;

/**
 * Finds sheets whose name is probably a slip of one that is read.
 *
 * @param sheets the names of a book's sheets
 */
record SheetNameTypos(List<String> sheets) {
    private static final List<String> UNNEEDED = List.of(
            StartSetting.SHEET,
            ReadingColumn.SHEET.name(),
            ShotColumn.SHEET.name(),
            WeightColumn.SHEET.name(),
            StockColumn.SHEET.name(),
            AimColumn.SHEET.name());

    /** Warns of every sheet that is not read though its name is a slip of one that the book can do without. */
    void warn(Findings findings) {
        for (String wanted : UNNEEDED) {
            boolean missing =
                    sheets.stream().noneMatch(name -> CloseNames.key(name).equals(CloseNames.key(wanted)));
            Optional<String> slip = slipOf(wanted);
            if (missing && slip.isPresent()) {
                findings.warning(
                        slip.get(), "no input sheet has this name, so it is not read. Maybe \"" + wanted + "\"?");
            }
        }
    }

    /** The sheet whose name is probably a slip of a wanted one. */
    Optional<String> slipOf(String wanted) {
        return sheets.stream()
                .filter(name -> !isKnown(name))
                .filter(name -> CloseNames.closest(name, List.of(wanted)).isPresent())
                .findFirst();
    }

    private static boolean isKnown(String sheetName) {
        String key = CloseNames.key(sheetName);
        return key.equals(CloseNames.key(StartSetting.SHEET))
                || InputSheet.called(sheetName).isPresent()
                || ResultSheet.NAMES.stream()
                        .anyMatch(name -> CloseNames.key(name).equals(key));
    }
}
