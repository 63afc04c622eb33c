package org.bagwright.workbook.plan;

import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.ColumnSpec;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;

/** Reads what a person has chosen and pinned on the sheet Plan of an earlier run. */
public final class LiveChoiceReader {
    private static final Column GOLFER = ColumnSpec.of(Column.Kind.TEXT, "Golfer", "Whose slot.");
    private static final Column SLOT = ColumnSpec.of(Column.Kind.WHOLE, "Slot", "The slot.");
    private static final Column CLUB = ColumnSpec.of(Column.Kind.TEXT, "Live club", "The club.");
    private static final Column SETTING = ColumnSpec.of(Column.Kind.MARK, "Live setting", "The setting.");
    private static final Column WEIGHTING = ColumnSpec.of(Column.Kind.MARK, "Live weighting", "The weighting.");
    private static final Column LOFT_BEND = ColumnSpec.of(Column.Kind.NUMBER, "Live loft bend", "The loft bend.");
    private static final Column LIE_BEND = ColumnSpec.of(Column.Kind.NUMBER, "Live lie bend", "The lie bend.");
    private static final Column PIN = ColumnSpec.yesNo("Pin", "yes: the next plan keeps this choice.");

    private static final SheetSchema SHEET = new SheetSchema(
            PlanSheet.NAME,
            "One row a slot.",
            List.of(GOLFER, SLOT, CLUB, SETTING, WEIGHTING, LOFT_BEND, LIE_BEND, PIN),
            List.of());

    private LiveChoiceReader() {}

    /** The choices in the order of the sheet; none where the book has no sheet Plan that the tool has made. */
    public static List<LiveChoice> read(XSSFWorkbook workbook, BookContext context) {
        if (workbook.getSheet(PlanSheet.NAME) == null || !new ResultSheets(workbook).isMarked(PlanSheet.NAME)) {
            return List.of();
        }
        return InputTable.on(workbook.getSheet(PlanSheet.NAME), SHEET, context).stream()
                .flatMap(table -> table.rows().stream())
                .flatMap(row -> choice(row).stream())
                .toList();
    }

    /** The choice of a row; empty for the rows of the tables below the slots, which have no number of a slot. */
    private static Optional<LiveChoice> choice(InputRow row) {
        Optional<String> golfer = shown(row, GOLFER);
        if (golfer.isEmpty() || !(row.content(SLOT) instanceof CellContent.Amount slot)) {
            return Optional.empty();
        }
        return Optional.of(new LiveChoice(
                golfer.get(),
                (int) Math.round(slot.valueMeasureUnits()),
                shown(row, CLUB).orElse(""),
                new LiveChoice.Written(
                        shown(row, SETTING), shown(row, WEIGHTING), shown(row, LOFT_BEND), shown(row, LIE_BEND)),
                row.yesNo(PIN).orElse(false),
                row.cell(PIN)));
    }

    /** What a cell shows, right or wrong: only a choice that is used must be an option. */
    private static Optional<String> shown(InputRow row, Column column) {
        CellContent content = row.content(column);
        if (content instanceof CellContent.Words words) {
            return Optional.of(words.text());
        }
        if (content instanceof CellContent.Amount amount) {
            return Optional.of(Numbers.trimmed(amount.valueMeasureUnits()));
        }
        return content.isBlank() ? Optional.empty() : Optional.of(content.shown());
    }
}
