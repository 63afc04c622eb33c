package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheets;

/** The sheet Messages: everything assumed, surprising or to check, with its cell. */
final class MessagesSheet {
    static final String NAME = "Messages";
    private static final int HEADING_ROW = 3;
    private static final String EVALUATION = "Adjustable clubs need the governing body's evaluation in every setting.";

    private MessagesSheet() {}

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        pen.text(0, 0, Role.TITLE, "Messages");
        pen.text(1, 0, Role.FAINT, "What was assumed, what may surprise, what to check. " + ResultSheets.MADE_ANEW);
        pen.heading(HEADING_ROW, 0, "Cell", 18);
        pen.heading(HEADING_ROW, 1, "Kind", 12);
        pen.heading(HEADING_ROW, 2, "Message", 110);
        int row = HEADING_ROW + 1;
        for (Message message : result.messages()) {
            line(pen, row++, message.cell(), message.severity().name().toLowerCase(Locale.ROOT), message.text());
        }
        for (String caution : BenchCautions.LINES) {
            line(pen, row++, "", "caution", caution);
        }
        line(pen, row++, "", "caution", EVALUATION);
        pen.sheet().createFreezePane(0, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, row - 1, 2));
    }

    private static void line(SheetPen pen, int row, String cell, String kind, String text) {
        pen.text(row, 0, Role.WRAPPED, cell);
        pen.text(row, 1, Role.WRAPPED, kind);
        pen.text(row, 2, Role.WRAPPED, text);
        pen.height(row, 14.5 * (1 + text.length() / 140));
    }
}
