package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Message;

/** The sheet Messages: everything assumed, surprising or to check, with its cell. */
final class MessagesSheet {
    static final String NAME = "Messages";
    private static final int HEADING_ROW = 3;
    private static final List<String> CAUTIONS = List.of(
            "Wear eye protection when bending or drilling. Do not bend a hosel whose maker does not allow it.",
            "Tighten a sleeve bolt with a torque tool to its maker's stated value and stop at the click.",
            "Use epoxy with gloves and fresh air, and let it cure in full before a ball is hit.",
            "Check after the first shots that nothing works loose.",
            "The makers' instructions, local rules and licensed practice come first.",
            "Rules of Golf 4.1a(3): no stroke with a club whose lie or loft was changed on purpose during the round."
                    + " Adjustable clubs need the governing body's evaluation in every setting.");

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
        for (String caution : CAUTIONS) {
            line(pen, row++, "", "caution", caution);
        }
        pen.sheet().createFreezePane(0, HEADING_ROW + 1);
        ResultSheets.printLandscape(pen.sheet(), HEADING_ROW, row - 1, 2);
    }

    private static void line(SheetPen pen, int row, String cell, String kind, String text) {
        pen.text(row, 0, Role.WRAPPED, cell);
        pen.text(row, 1, Role.WRAPPED, kind);
        pen.text(row, 2, Role.WRAPPED, text);
        pen.height(row, 14.5 * (1 + text.length() / 140));
    }
}
