package org.bagwright.workbook.pen;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;

/** Numbers over the days on which they were measured; each series has its name at its last point. */
public final class DateChart {
    private static final String DAY = "yyyy-mm-dd";
    /** Keeps a name clear of its point. */
    private static final String SPACE = "\u2003";
    /** Days at most between two lines of the grid. */
    private static final int STEPS = 5;

    private final ChartFrame frame;
    private final XDDFValueAxis days;
    private final XDDFValueAxis values;
    private final XDDFScatterChartData data;

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    public DateChart(SheetPen pen, int row, int columns, int rows, String title, String value) {
        frame = new ChartFrame(pen, 0, row, columns, rows);
        frame.title(title);
        frame.chart().deleteLegend();
        days = frame.valueAxis(AxisPosition.BOTTOM, "Day", DAY, BookColour.GRID);
        values = frame.valueAxis(AxisPosition.LEFT, value, "0", BookColour.GRID);
        data = (XDDFScatterChartData) frame.chart().createData(ChartTypes.SCATTER, days, values);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
    }

    /** Shows the days from first to last, as a spreadsheet counts them, with room for names, and values from a number on. */
    public void window(double first, double last, double least) {
        double step = Math.max(1, Math.ceil((last - first) / STEPS));
        days.setMinimum(first - Math.ceil(step / 4));
        days.setMaximum(last + step);
        days.setMajorUnit(step);
        values.setMinimum(least);
    }

    /** Adds a series over rows from first to last, named at its last point. */
    public void line(BookChart.Series series) {
        var drawn = add(series);
        drawn.setLineProperties(series.look().line());
        ClockChart.label(
                drawn.getCTScatterSer(), series.lastRow() - series.firstRow(), List.of(SPACE + series.title()));
    }

    /** Adds points without a line and without a name. */
    public void points(BookChart.Series series) {
        add(series).setLineProperties(SeriesLook.noLine());
    }

    private XDDFScatterChartData.Series add(BookChart.Series series) {
        var drawn = (XDDFScatterChartData.Series)
                data.addSeries(numbers(series, series.categoryColumn()), numbers(series, series.valueColumn()));
        drawn.setTitle(series.title(), null);
        drawn.setSmooth(false);
        drawn.setMarkerStyle(series.look().marker);
        drawn.setMarkerSize(series.look().size);
        series.look().paint(drawn.getCTScatterSer().getMarker());
        return drawn;
    }

    private XDDFNumericalDataSource<Double> numbers(BookChart.Series series, int column) {
        return frame.numbers(new CellRangeAddress(series.firstRow(), series.lastRow(), column, column));
    }

    public void plot() {
        frame.chart().plot(data);
    }
}
