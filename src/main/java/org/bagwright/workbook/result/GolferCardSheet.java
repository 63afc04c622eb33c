package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Golfer card: for each golfer a page to take home, with his carries, his gaps and what was changed. */
final class GolferCardSheet {
    static final String NAME = "Golfer card";

    private final SheetPen pen;
    private final BookResult result;

    GolferCardSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.result = result;
    }

    /** Writes the cards, and below what is printed a note for the fitter. */
    void write() {
        int row = 0;
        for (BagResult bag : result.bags()) {
            row = new GolferCard(pen, result.book().settings(), bag).write(row);
            pen.sheet().setRowBreak(row - 1);
        }
        pen.text(row, 0, Role.FAINT, ResultSheet.REBUILT);
        new TablePen(pen, result.book().settings().units()).widths(GolferCard.WIDTHS_CHARS);
        pen.print(PageSetup.card(row - 1, GolferCard.LAST));
    }
}
