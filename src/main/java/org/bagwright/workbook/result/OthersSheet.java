package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.PageFill;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Others: other good plans next to the plan, and what holds the plan back, golfer by golfer. */
final class OthersSheet {
    static final String NAME = "Others";

    /** Rows that are not divided by the end of a page: the figures of a golfer's plans, and a slot. */
    private static final int ROWS_TOGETHER = 9;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;
    private final int lastColumn;

    OthersSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.table = new TablePen(pen, result.book().settings().units());
        this.result = result;
        int most = result.bags().stream()
                .mapToInt(bag -> bag.others().size() + 1)
                .max()
                .orElse(1);
        this.lastColumn = Math.max(RelaxationTable.LAST_COLUMN, most);
    }

    void write() {
        table.title(
                "Other plans",
                "Nearly as good, but different. A star marks what differs from the plan. " + ResultSheet.REBUILT);
        headings();
        table.finishUpright(1, table.golfers(result.bags(), lastColumn, this::golfer), lastColumn);
    }

    private void headings() {
        List<String> headings = new ArrayList<>(List.of("", "The plan"));
        pen.width(0, OtherPlans.LABEL_CHARS);
        pen.width(1, OtherPlans.PLAN_CHARS);
        for (int column = 2; column <= lastColumn; column++) {
            headings.add("Other " + (column - 1));
            pen.width(column, OtherPlans.PLAN_CHARS);
        }
        table.headings(TablePen.HEADING_ROW, headings, 18);
    }

    private int golfer(BagResult bag, int row, PageFill page) {
        table.band(row, lastColumn, bag.golfer().name());
        int next = new OtherPlans(pen, table, result.book().settings(), bag, lastColumn).write(row + 1);
        page.mayDivide(row, row + ROWS_TOGETHER, next);
        table.between(next);
        int free = new RelaxationTable(pen, table, bag.relaxations()).write(next + 1);
        for (String unsettled : bag.reasons().unsettled()) {
            pen.text(free++, 0, Role.FAINT, "Not settled in the time: " + unsettled);
        }
        page.keepTogether(next + 1, free);
        return free;
    }
}
