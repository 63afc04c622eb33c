package org.bagwright.workbook.ladder;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanState;

/** On the sheet Ladder: the gaps of one golfer as a chart, and next to his other tables the numbers that it draws. */
final class GapChart {
    private static final int FIRST_COLUMN = OutlookTable.LAST_COLUMN + 2;
    private static final int STATES = PlanState.values().length;
    private static final int FROM_COLUMN = FIRST_COLUMN + STATES;
    static final int LAST_COLUMN = FROM_COLUMN + 1;
    private static final double CHARS = 9;
    private static final int ROWS = 25;
    /** Where a gap is that does not exist: out of sight. */
    private static final double NOWHERE = -9999;

    private static final String FORMAT = "[<-999]\"\";0.0";

    private final SheetPen pen;
    private final LengthUnit distance;
    private final BagResult bag;
    private final int firstRow;
    private final int lastRow;
    private final double tolerance;

    /** The chart of the clubs in these rows of the sheet; from the last of them there is no gap. */
    GapChart(SheetPen pen, LengthUnit distance, BagResult bag, int firstRow, int lastRow) {
        this.pen = pen;
        this.distance = distance;
        this.bag = bag;
        this.firstRow = firstRow;
        this.lastRow = lastRow;
        this.tolerance = distance.fromM(bag.options().gapAim().toleranceMeasureUnits());
    }

    /** Writes the numbers, from the row of the golfer's name on. */
    void write(int row) {
        for (int column = FIRST_COLUMN; column <= LAST_COLUMN; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        pen.text(row, FIRST_COLUMN, Role.GROUP, "Numbers of the chart of gaps");
        List<String> headings = List.of("Today", "Planned", "Live", "Wish less tolerance", "Twice the tolerance");
        for (int index = 0; index < headings.size(); index++) {
            pen.heading(row + 1, FIRST_COLUMN + index, headings.get(index), CHARS);
        }
        for (int line = firstRow; line < lastRow; line++) {
            for (int state = 0; state < STATES; state++) {
                OptionalDouble gap = shown(line, LadderTable.GAP_COLUMN + state);
                String cell = SheetPen.ref(line, LadderTable.GAP_COLUMN + state);
                number(line, FIRST_COLUMN + state, cell, cell, NOWHERE, gap.orElse(NOWHERE));
            }
            band(line);
        }
    }

    /** From the wish less its tolerance, but not from below 0; where there is no wish, as for the golfer's usual one. */
    private void band(int row) {
        String wish = SheetPen.ref(row, LadderTable.WISH_COLUMN);
        double usual = distance.fromM(bag.options().gapWishM());
        double known = shown(row, LadderTable.WISH_COLUMN).orElse(usual);
        double from = Math.max(0, known - tolerance);
        double usualFrom = Math.max(0, usual - tolerance);
        number(row, FROM_COLUMN, wish, "MAX(0," + wish + "-" + tolerance + ")", usualFrom, from);
        String width = wish + "+" + tolerance + "-" + SheetPen.ref(row, FROM_COLUMN);
        number(row, LAST_COLUMN, wish, width, usual + tolerance - usualFrom, known + tolerance - from);
    }

    /** What is worked out from a cell if that holds a number, and another number if not. */
    private void number(int row, int column, String cell, String formula, double other, double cached) {
        pen.formula(
                row, column, Role.NUMBER, FORMAT, "IF(ISNUMBER(" + cell + ")," + formula + "," + other + ")", cached);
    }

    private OptionalDouble shown(int row, int column) {
        XSSFCell cell = pen.sheet().getRow(row).getCell(column);
        return cell != null && cell.getCachedFormulaResultType() == CellType.NUMERIC
                ? OptionalDouble.of(cell.getNumericCellValue())
                : OptionalDouble.empty();
    }

    /** Draws the chart from a row on and gives the first free row. */
    int draw(int row) {
        GapAxis axis = GapAxis.of(distance, bag, tolerance);
        int rows = ROWS + axis.moreRows();
        BookChart chart = new BookChart(pen.sheet(), 0, row, LadderCharts.FIRST_COLUMN, rows);
        chart.title("Gap to the next club, " + bag.golfer().name());
        chart.axes("", "Gap [" + distance.label() + "]");
        chart.span(axis.leastMeasureUnits(), axis.mostMeasureUnits(), GapAxis.STEP);
        chart.band(
                series("Band from", FROM_COLUMN, SeriesLook.BAND),
                series("Wish, within its tolerance", LAST_COLUMN, SeriesLook.BAND));
        chart.points(List.of(
                series("Live", FIRST_COLUMN + PlanState.LIVE.ordinal(), SeriesLook.LIVE),
                series("Today", FIRST_COLUMN + PlanState.TODAY.ordinal(), SeriesLook.TODAY),
                series("Planned", FIRST_COLUMN + PlanState.PLANNED.ordinal(), SeriesLook.PLANNED)));
        return row + rows;
    }

    private BookChart.Series series(String title, int column, SeriesLook look) {
        return new BookChart.Series(title, firstRow, lastRow - 1, LadderTable.GAP_NAME_COLUMN, column, look);
    }
}
