package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** On the sheet Team: the stock that all golfers share. */
final class StockTable {
    private static final List<String> HEADINGS =
            List.of("Item", "Available", "Taken today", "Taken by the plan", "Left by the plan");
    private static final double ITEM_CHARS = 24;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;

    StockTable(SheetPen pen, TablePen table, BookResult result) {
        this.pen = pen;
        this.table = table;
        this.result = result;
    }

    /** Writes from a row on and gives the last row used. */
    int write(int row) {
        table.band(row, HEADINGS.size() - 1, "Shared stock");
        if (result.stock().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "The book limits no stock.");
            return row + 1;
        }
        table.headings(row + 1, HEADINGS, 30);
        for (int item = 0; item < result.stock().size(); item++) {
            item(row + 2 + item, item);
        }
        return row + 1 + result.stock().size();
    }

    private void item(int row, int item) {
        StockLimit limit = result.stock().get(item);
        int planned = result.taken(item, BagResult::planned);
        String words = limit.item().inWords();
        pen.text(row, 0, Role.CELL, words);
        pen.number(row, 1, Role.COUNT, "0", limit.available());
        pen.number(row, 2, Role.COUNT, "0", result.taken(item, BagResult::today));
        pen.number(row, 3, Role.COUNT, "0", planned);
        pen.number(row, 4, Role.COUNT, "0;-0;0", limit.available() - planned);
        pen.height(row, TablePen.heightPoints(words, ITEM_CHARS));
    }
}
