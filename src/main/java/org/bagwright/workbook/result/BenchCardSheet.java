package org.bagwright.workbook.result;

import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;

/** The sheet Bench card: for each golfer one printed page of what to do at the bench and what to read afterwards. */
final class BenchCardSheet {
    static final String NAME = "Bench card";

    /** A4 upright less the margins of the sheet, points. */
    private static final double PAGE_WIDTH_POINTS = 530;

    private static final double PAGE_HEIGHT_POINTS = 755;
    /** About what a column of one character takes, points. */
    private static final double CHAR_POINTS = 5.4;
    /** Letters of 10 points are still read at arm's length when printed at this size. */
    private static final double LEAST_SCALE_RATIO = 0.58;

    private final SheetPen pen;
    private final BookResult result;

    BenchCardSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.result = result;
    }

    void write() {
        int row = 0;
        double highestPoints = 0;
        for (BagResult bag : result.bags()) {
            int next = new BenchCard(pen, result.book(), bag).write(row);
            highestPoints = Math.max(highestPoints, heightPoints(row, next));
            pen.sheet().setRowBreak(next - 1);
            row = next;
        }
        widths(highestPoints);
        pen.print(PageSetup.portrait(row - 1, BenchColumn.LAST));
    }

    private double heightPoints(int first, int next) {
        double points = 0;
        for (int row = first; row < next; row++) {
            points += pen.sheet().getRow(row) == null
                    ? pen.sheet().getDefaultRowHeightInPoints()
                    : pen.sheet().getRow(row).getHeightInPoints();
        }
        return points;
    }

    /** A page is printed as wide as the paper; a long card gets wider columns, so that it shrinks to one page. */
    private void widths(double highestPoints) {
        double natural = BenchColumn.ALL_CHARS * CHAR_POINTS;
        double scale = Math.min(PAGE_WIDTH_POINTS / natural, PAGE_HEIGHT_POINTS / highestPoints);
        double stretch = PAGE_WIDTH_POINTS / natural / Math.max(scale, LEAST_SCALE_RATIO);
        for (BenchColumn column : BenchColumn.values()) {
            pen.width(column.ordinal(), column.widthChars() * Math.max(1, stretch));
        }
    }
}
