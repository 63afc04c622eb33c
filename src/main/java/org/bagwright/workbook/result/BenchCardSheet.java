package org.bagwright.workbook.result;

import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;

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

    void write() {
        int row = 0;
        for (BagResult bag : result.bags()) {
            row = new BenchCard(pen, result.book(), bag).write(row);
            pen.sheet().setRowBreak(row - 1);
        }
        for (BenchColumn column : BenchColumn.values()) {
            pen.width(column.ordinal(), column.widthChars());
        }
        pen.print(PageSetup.portrait(row - 1, BenchColumn.LAST));
    }
}
