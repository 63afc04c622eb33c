package org.bagwright.workbook.pen;

import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Fills pages with blocks of rows: what does not fit on the rest of a page begins the next one. */
public final class PageFill {
    private static final double USUAL_POINTS = 15;

    private final XSSFSheet sheet;
    private final double pagePoints;
    private double filledPoints;
    private int end;

    /** @param pagePoints how much of a page there is for rows */
    PageFill(XSSFSheet sheet, double pagePoints) {
        this.sheet = sheet;
        this.pagePoints = pagePoints;
    }

    /** Begins a page with a row, unless there is room for it and the rows before another row. Blocks come in order. */
    public void keepTogether(int first, int next) {
        filledPoints += filledPoints > 0 ? heightPoints(end, first) : 0;
        double heightPoints = heightPoints(first, next);
        if (filledPoints > 0 && filledPoints + heightPoints > pagePoints) {
            sheet.setRowBreak(first - 1);
            filledPoints = 0;
        }
        filledPoints += heightPoints;
        end = next;
    }

    /**
     * Keeps only the first rows of a table together, and its last two; the rows between may be on two pages.
     *
     * @param middle the first row that may be on the next page
     */
    public void mayDivide(int first, int middle, int next) {
        int tail = Math.max(middle, next - 2);
        keepTogether(first, Math.min(middle, next));
        for (int row = middle; row < tail; row++) {
            keepTogether(row, row + 1);
        }
        if (tail < next) {
            keepTogether(tail, next);
        }
    }

    private double heightPoints(int first, int next) {
        double heightPoints = 0;
        for (int row = first; row < next; row++) {
            XSSFRow written = sheet.getRow(row);
            heightPoints += written == null ? USUAL_POINTS : written.getHeightInPoints();
        }
        return heightPoints;
    }
}
