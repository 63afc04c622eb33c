package org.bagwright.workbook.pen;

import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.Grouping;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFLegendEntry;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTUnsignedInt;

/** One chart on a sheet, of lines, points or columns over names, in the look of the book. */
public final class BookChart {
    private static final double COLUMN_EDGE_POINTS = 0.75;
    private static final int FULL_PERCENT = 100;

    /** One series: rows from first to last, names from one column and values from another; without a title not in the legend. */
    public record Series(
            String title, int firstRow, int lastRow, int categoryColumn, int valueColumn, SeriesLook look) {}

    private final XSSFSheet sheet;
    private final ChartFrame frame;
    private XDDFCategoryAxis categories;
    private XDDFValueAxis values;
    private int index;

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    public BookChart(XSSFSheet sheet, int column, int row, int columns, int rows) {
        this(sheet, ChartPlace.whole(column, row, columns, rows));
    }

    public BookChart(XSSFSheet sheet, ChartPlace place) {
        this.sheet = sheet;
        this.frame = new ChartFrame(sheet, place);
        frame.legend();
    }

    public void title(String text) {
        frame.title(text);
    }

    /** Names both axes; the one of names may go without. */
    public void axes(String category, String value) {
        categories = frame.chart().createCategoryAxis(AxisPosition.BOTTOM);
        if (!category.isEmpty()) {
            frame.title(categories, category);
        }
        values = frame.valueAxis(AxisPosition.LEFT, value, "0", BookColour.GRID);
        values.setCrossBetween(AxisCrossBetween.BETWEEN);
        categories.setCrosses(AxisCrosses.AUTO_ZERO);
        categories.setTickLabelPosition(AxisTickLabelPosition.LOW);
        frame.dress(categories);
    }

    /** Lets the value axis start above 0. */
    public void startAt(double least) {
        values.setMinimum(least);
    }

    /** Lets the value axis show nothing but these values, with a line of the grid at every step. */
    public void span(double least, double most, double step) {
        values.setMinimum(least);
        values.setMaximum(most);
        values.setMajorUnit(step);
        categories.setCrosses(AxisCrosses.MIN);
    }

    /** How the value axis shows numbers, such as {@code 0.0}; without this call as whole numbers. */
    public void valueFormat(String format) {
        values.setNumberFormat(format);
    }

    public void lines(List<Series> many) {
        draw(many, false);
    }

    /** Series without a line between their points, but for bands, which have no points. */
    public void points(List<Series> many) {
        draw(many, true);
    }

    private void draw(List<Series> many, boolean pointsOnly) {
        XDDFLineChartData data = (XDDFLineChartData) frame.chart().createData(ChartTypes.LINE, categories, values);
        data.setGrouping(Grouping.STANDARD);
        data.setVaryColors(false);
        many.forEach(series -> add(data, series, pointsOnly && series.look() != SeriesLook.BAND));
        frame.chart().plot(data);
    }

    /**
     * A band behind what is drawn later.
     *
     * @param from where it begins, above 0
     * @param width how wide it is, in the unit of the axis
     */
    public void band(Series from, Series width) {
        XDDFBarChartData data = (XDDFBarChartData) frame.chart().createData(ChartTypes.BAR, categories, values);
        data.setBarDirection(BarDirection.COL);
        data.setBarGrouping(BarGrouping.STACKED);
        data.setOverlap((byte) FULL_PERCENT);
        data.setVaryColors(false);
        data.setGapWidth(0);
        hideNextInLegend();
        column(data, from).setFillProperties(new XDDFNoFillProperties());
        column(data, width).setFillProperties(width.look().ofColumns().fill());
        frame.chart().plot(data);
    }

    /** Leaves the next series to be drawn out of the legend. */
    private void hideNextInLegend() {
        XDDFLegendEntry hidden = frame.chart().getOrAddLegend().addEntry();
        hidden.setIndex(index);
        hidden.setDelete(true);
    }

    private XDDFLineChartData.Series add(XDDFLineChartData data, Series series, boolean pointsOnly) {
        XDDFLineChartData.Series drawn = (XDDFLineChartData.Series) data.addSeries(categories(series), values(series));
        SeriesLook look = series.look();
        if (series.title().isEmpty()) {
            hideNextInLegend();
        }
        drawn.setTitle(series.title(), null);
        drawn.setSmooth(false);
        drawn.setMarkerStyle(look.marker);
        drawn.setMarkerSize(look.size);
        drawn.setLineProperties(pointsOnly || look.pointsOnly() ? SeriesLook.noLine() : look.line());
        if (look.marker != MarkerStyle.NONE) {
            look.paint(drawn.getCTLineSer().getMarker());
        }
        number(drawn.getCTLineSer().getIdx(), drawn.getCTLineSer().getOrder());
        return drawn;
    }

    public void columns(List<Series> many) {
        XDDFBarChartData data = (XDDFBarChartData) frame.chart().createData(ChartTypes.BAR, categories, values);
        data.setBarDirection(BarDirection.COL);
        data.setBarGrouping(BarGrouping.CLUSTERED);
        data.setVaryColors(false);
        data.setGapWidth(60);
        for (Series series : many) {
            XDDFBarChartData.Series drawn = column(data, series);
            drawn.setFillProperties(series.look().ofColumns().fill());
            drawn.setLineProperties(BookColour.SLATE.rgb().line(COLUMN_EDGE_POINTS));
        }
        frame.chart().plot(data);
    }

    private XDDFBarChartData.Series column(XDDFBarChartData data, Series series) {
        XDDFBarChartData.Series drawn = (XDDFBarChartData.Series) data.addSeries(categories(series), values(series));
        drawn.setTitle(series.title(), null);
        number(drawn.getCTBarSer().getIdx(), drawn.getCTBarSer().getOrder());
        return drawn;
    }

    /** Series of a chart that mixes columns and lines are numbered through, or spreadsheets drop some. */
    private void number(CTUnsignedInt seriesIndex, CTUnsignedInt order) {
        seriesIndex.setVal(index);
        order.setVal(index);
        index++;
    }

    private XDDFDataSource<?> categories(Series series) {
        XSSFRow first = sheet.getRow(series.firstRow());
        XSSFCell name = first == null ? null : first.getCell(series.categoryColumn());
        CellRangeAddress range = range(series, series.categoryColumn());
        return name != null && name.getCellType() == CellType.NUMERIC ? frame.numbers(range) : frame.texts(range);
    }

    private XDDFNumericalDataSource<Double> values(Series series) {
        return frame.numbers(range(series, series.valueColumn()));
    }

    private static CellRangeAddress range(Series series, int column) {
        return new CellRangeAddress(series.firstRow(), series.lastRow(), column, column);
    }
}
