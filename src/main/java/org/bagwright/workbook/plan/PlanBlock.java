package org.bagwright.workbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;

/**
 * The rows of one golfer on the sheet Plan: his totals in a line, his slots, and his points by measure. Rows count from 0.
 *
 * @param bag the golfer's bag
 * @param totalsRow the row with his totals; that of the whole book where he is the only one
 * @param firstRow the row of his first slot
 */
public record PlanBlock(BagResult bag, int totalsRow, int firstRow) {
    private static final int HEADING_ROWS = 1;
    private static final int BETWEEN = 1;

    /** The blocks of a book in order. */
    public static List<PlanBlock> all(BookResult result) {
        List<PlanBlock> blocks = new ArrayList<>();
        if (result.bags().size() == 1) {
            return List.of(new PlanBlock(result.bags().get(0), PlanSheet.BOOK_ROW, PlanSheet.FIRST_ROW));
        }
        int row = PlanSheet.FIRST_ROW;
        for (BagResult bag : result.bags()) {
            PlanBlock block = new PlanBlock(bag, row, row + 1);
            blocks.add(block);
            row = block.endRow() + 1;
        }
        return blocks;
    }

    int slots() {
        return bag.options().slots().size();
    }

    /** The row of his last slot. */
    int lastRow() {
        return firstRow + slots() - 1;
    }

    /** The row with the headings of his points by measure. */
    int pointsRow() {
        return lastRow() + 1;
    }

    /** The row that divides him from what follows. */
    int endRow() {
        return pointsRow() + HEADING_ROWS + PlanState.values().length - 1 + BETWEEN;
    }

    String golfer() {
        return bag.golfer().name();
    }
}
