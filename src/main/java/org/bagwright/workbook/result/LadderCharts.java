package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;

/** On the sheet Ladder: the carries and the gaps of one golfer as charts next to the table that holds them. */
final class LadderCharts {
    static final int FIRST_COLUMN = 10;
    static final int LAST_COLUMN = FIRST_COLUMN + 9;
    private static final int COLUMNS = 10;
    private static final int ROWS = 21;

    private final SheetPen pen;
    private final LengthUnit distance;
    private final BagResult bag;
    private final int firstRow;
    private final int lastRow;

    /** Charts of the clubs in these rows. */
    LadderCharts(SheetPen pen, LengthUnit distance, BagResult bag, int firstRow, int lastRow) {
        this.pen = pen;
        this.distance = distance;
        this.bag = bag;
        this.firstRow = firstRow;
        this.lastRow = lastRow;
    }

    /** Draws from a row on. */
    void draw(int row) {
        String name = bag.golfer().name();
        BookChart carries = new BookChart(pen.sheet(), FIRST_COLUMN, row, COLUMNS, ROWS);
        carries.title("Carry by club, " + name);
        carries.axes("Club", "Carry [" + distance.label() + "]");
        carries.startAt(axisStart());
        carryLines(carries);
        BookChart gaps = new BookChart(pen.sheet(), FIRST_COLUMN, row + ROWS + 1, COLUMNS, ROWS);
        gaps.title("Gap to the next club, " + name);
        gaps.axes("From club to club", "Gap [" + distance.label() + "]");
        gaps.columns(series(lastRow - 1, LadderTable.GAP_NAME_COLUMN, LadderTable.GAP_COLUMN));
        gaps.line(new BookChart.Series(
                "Wish", firstRow, lastRow - 1, LadderTable.GAP_NAME_COLUMN, LadderTable.WISH_COLUMN, SeriesLook.WISH));
    }

    /** A blank is drawn as 0 by some programs: points alone then stay out of sight below the axis, a line would not. */
    private void carryLines(BookChart chart) {
        boolean mayBeBlank = bag.options().slots().stream().anyMatch(SlotOptions::hasCandidates);
        List<BookChart.Series> series = series(lastRow, 0, LadderTable.CARRY_COLUMN);
        if (bag.outlook().isPresent()) {
            int low = lastRow + 2 + OutlookTable.ROWS_ABOVE;
            int high = low + lastRow - firstRow;
            series.add(new BookChart.Series("Band low", low, high, 0, OutlookTable.LOW_COLUMN, SeriesLook.BAND));
            series.add(new BookChart.Series("Band high", low, high, 0, OutlookTable.HIGH_COLUMN, SeriesLook.BAND));
        }
        if (mayBeBlank) {
            chart.points(series);
        } else {
            chart.lines(series);
        }
    }

    /** A round number clearly below the shortest carry of any option and of single shots. */
    private double axisStart() {
        DoubleStream optionsM = bag.options().slots().stream()
                .flatMap(club -> club.options().stream())
                .flatMapToDouble(option -> option.carryM().stream());
        DoubleStream bandsM =
                bag.outlook().map(BagOutlook::bands).orElse(List.of()).stream().mapToDouble(CarryBand::lowM);
        double leastM = DoubleStream.concat(optionsM, bandsM).min().orElse(0);
        return Math.max(0, Math.floor((distance.fromM(leastM) - 5) / 20) * 20);
    }

    private List<BookChart.Series> series(int last, int categoryColumn, int firstColumn) {
        List<BookChart.Series> series = new ArrayList<>();
        series.add(new BookChart.Series("Today", firstRow, last, categoryColumn, firstColumn, SeriesLook.TODAY));
        series.add(
                new BookChart.Series("Planned", firstRow, last, categoryColumn, firstColumn + 1, SeriesLook.PLANNED));
        series.add(new BookChart.Series("Live", firstRow, last, categoryColumn, firstColumn + 2, SeriesLook.LIVE));
        return series;
    }
}
