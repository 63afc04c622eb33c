package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

/**
 * The sheet Bench card: for each golfer a printed page of what to do at the bench and what to read afterwards. It is as wide
 * as the paper, so that its letters are printed about as large as they are.
 */
final class BenchCardSheet {
    static final String NAME = "Bench card";

    private final SheetPen pen;
    private final BookResult result;

    BenchCardSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.result = result;
    }

    /** Writes the cards, and below what is printed a note for the fitter. */
    void write() {
        int row = 0;
        for (BagResult bag : result.bags()) {
            row = new BenchCard(pen, result.book(), bag).write(row);
            pen.sheet().setRowBreak(row - 1);
        }
        pen.text(row, 0, Role.FAINT, ResultSheet.REBUILT);
        for (BenchColumn column : BenchColumn.values()) {
            pen.width(column.ordinal(), column.widthChars());
        }
        pen.print(PageSetup.card(row - 1, BenchColumn.LAST));
    }
}
