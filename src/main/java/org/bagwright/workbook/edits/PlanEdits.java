package org.bagwright.workbook.edits;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.plan.PlanSheet;

/**
 * What a person changed on the sheet Plan of an earlier run in the cells for what is wanted: targets, limits, tolerances,
 * importances and musts.
 */
public final class PlanEdits {
    private final List<PlanEdit> edits;

    private PlanEdits(List<PlanEdit> edits) {
        this.edits = edits;
    }

    /**
     * Finds them. A wrong value, and a value that the input sheet does not take, is reported.
     *
     * @param context with the units of the book
     */
    public static PlanEdits of(XSSFWorkbook workbook, BookContext context) {
        List<PlanEdit> edits = new ArrayList<>();
        if (workbook.getSheet(PlanSheet.NAME) != null && new ResultSheets(workbook).isMarked(PlanSheet.NAME)) {
            edits.addAll(new SlotEdits(workbook, context).all());
            edits.addAll(new AimEdits(workbook, context).all());
        }
        return new PlanEdits(edits);
    }

    public boolean isEmpty() {
        return edits.isEmpty();
    }

    /** One note for each, to be taken before they are written. */
    public List<Message> notes() {
        return edits.stream().map(PlanEdit::note).toList();
    }

    /** Writes them into the input sheets of the workbook. */
    public List<CellChange> write() {
        return edits.stream().map(PlanEdit::write).toList();
    }
}
