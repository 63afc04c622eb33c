package org.bagwright.workbook.ladder;

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
    static final int COLUMNS = 8;
    static final int LAST_COLUMN = FIRST_COLUMN + COLUMNS - 1;
    /** How wide each column under the charts is. */
    static final double COLUMN_CHARS = 8.25;

    static final int CARRY_ROWS = 17;
    /** How many rows of a golfer a page has room for. */
    static final int PAGE_ROWS = 41;

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

    /** Draws the carries to the right from a row on, and the gaps under the table; gives the first free row. */
    int draw(int row) {
        carries(row);
        GapChart gaps = new GapChart(pen, distance, bag, firstRow, lastRow);
        gaps.write(row - 1);
        return Math.max(row + CARRY_ROWS, gaps.draw(lastRow + 1));
    }

    private void carries(int row) {
        BookChart chart = new BookChart(pen.sheet(), FIRST_COLUMN, row, COLUMNS, CARRY_ROWS);
        chart.title("Carry by club, " + bag.golfer().name());
        chart.axes("", "Carry [" + distance.label() + "]");
        chart.startAt(axisStart());
        List<BookChart.Series> series = new ArrayList<>();
        if (bag.outlook().isPresent()) {
            series.add(band("8 in 10 shots", OutlookTable.LOW_COLUMN));
            series.add(band("", OutlookTable.HIGH_COLUMN));
        }
        series.add(series("Live", 2, SeriesLook.LIVE));
        series.add(series("Today", 0, SeriesLook.TODAY));
        series.add(series("Planned", 1, SeriesLook.PLANNED));
        if (mayBeBlank()) {
            chart.points(series);
        } else {
            chart.lines(series);
        }
    }

    private BookChart.Series band(String title, int column) {
        return new BookChart.Series(title, firstRow, lastRow, 0, column, SeriesLook.BAND);
    }

    /** A blank is drawn as 0 by some programs: points alone then stay out of sight below the axis, a line would not. */
    private boolean mayBeBlank() {
        return bag.options().slots().stream().anyMatch(SlotOptions::hasCandidates);
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

    private BookChart.Series series(String title, int state, SeriesLook look) {
        return new BookChart.Series(title, firstRow, lastRow, 0, LadderTable.CARRY_COLUMN + state, look);
    }
}
