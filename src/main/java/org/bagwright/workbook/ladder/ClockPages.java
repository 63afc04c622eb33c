package org.bagwright.workbook.ladder;

import org.bagwright.workbook.pen.ChartPlace;
import org.bagwright.workbook.pen.SheetPen;

/**
 * Where on the sheet Ladder the charts of a golfer's sleeves go, one by one: two next to each other under the chart of his
 * carries as long as that of his gaps reaches further down, then five next to each other on pages of their own.
 */
final class ClockPages {
    private static final int ROWS = 12;
    private static final int LINES_A_PAGE = 3;
    private static final int A_LINE_UNDER_CARRIES = 2;
    private static final int A_LINE = 5;

    private final SheetPen pen;
    private final int endOfPage;
    private boolean underCarries = true;
    private int row;
    private int place;
    private int line;

    /** @param endOfPage the first row below the charts */
    ClockPages(SheetPen pen, int firstRow, int endOfPage) {
        this.pen = pen;
        this.row = firstRow;
        this.endOfPage = endOfPage;
    }

    /** The place of the next chart. */
    ChartPlace next() {
        int most = underCarries ? A_LINE_UNDER_CARRIES : A_LINE;
        if (place == most) {
            place = 0;
            line++;
            row += ROWS;
        }
        if (place == 0) {
            turnPage();
        }
        return underCarries
                ? new ChartPlace(
                        LadderCharts.FIRST_COLUMN, row, LadderCharts.COLUMNS, ROWS, place++, A_LINE_UNDER_CARRIES)
                : new ChartPlace(0, row, LadderCharts.LAST_COLUMN + 1, ROWS, place++, A_LINE);
    }

    private void turnPage() {
        if (underCarries && row + ROWS > endOfPage) {
            underCarries = false;
            row = Math.max(row, endOfPage) + 1;
            line = 0;
            pen.sheet().setRowBreak(row - 1);
        } else if (!underCarries && line > 0 && line % LINES_A_PAGE == 0) {
            pen.sheet().setRowBreak(row - 1);
        }
    }

    /** The first row below all charts so far. */
    int end() {
        return place == 0 ? row : row + ROWS;
    }
}
