package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Locale;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Messages: everything assumed, surprising or to check, with its cell. */
final class MessagesSheet {
    static final String NAME = "Messages";
    private static final double CELL_CHARS = 18;
    private static final double TEXT_CHARS = 140;
    private static final String EVALUATION = "Adjustable clubs need the governing body's evaluation in every setting.";

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;

    MessagesSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.table = new TablePen(pen, result.book().settings().units());
        this.result = result;
    }

    void write() {
        table.title(NAME, "What was assumed, what may surprise, what to check. " + ResultSheet.REBUILT);
        pen.heading(TablePen.HEADING_ROW, 0, "Cell", CELL_CHARS);
        pen.heading(TablePen.HEADING_ROW, 1, "Kind", 11);
        pen.heading(TablePen.HEADING_ROW, 2, "Message", TEXT_CHARS);
        int row = TablePen.HEADING_ROW + 1;
        for (Message message : result.messages()) {
            line(row++, message.where(), message.severity().name().toLowerCase(Locale.ROOT), message.text());
        }
        for (String caution : BenchCard.CAUTIONS) {
            line(row++, "", "caution", caution);
        }
        line(row, "", "caution", EVALUATION);
        table.finish(0, row, 2);
    }

    private void line(int row, String cell, String kind, String text) {
        pen.text(row, 0, Role.WRAPPED, cell);
        pen.text(row, 1, Role.WRAPPED, kind);
        pen.text(row, 2, Role.WRAPPED, text);
        pen.height(row, Math.max(TablePen.heightPoints(text, TEXT_CHARS), TablePen.heightPoints(cell, CELL_CHARS)));
    }
}
