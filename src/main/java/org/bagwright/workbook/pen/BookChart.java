package org.bagwright.workbook.pen;

import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.Grouping;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** One chart on a sheet, in the look of the book: every colour set, since the book has no theme to take it from. */
public final class BookChart {
    /** One series: rows from first to last, names from one column and values from another. */
    public record Series(
            String title, int firstRow, int lastRow, int categoryColumn, int valueColumn, SeriesLook look) {}

    private final XSSFSheet sheet;
    private final XSSFChart chart;
    private XDDFCategoryAxis categories;
    private XDDFValueAxis values;
    private int index;

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    public BookChart(XSSFSheet sheet, int column, int row, int columns, int rows) {
        this.sheet = sheet;
        this.chart = ChartParts.chart(sheet, column, row, columns, rows);
        chart.displayBlanksAs(DisplayBlanks.GAP);
    }

    public void title(String text) {
        ChartParts.title(chart, text);
    }

    public void axes(String category, String value) {
        categories = chart.createCategoryAxis(AxisPosition.BOTTOM);
        values = chart.createValueAxis(AxisPosition.LEFT);
        categories.setTitle(category);
        values.setTitle(value);
        categories.setCrosses(AxisCrosses.AUTO_ZERO);
        categories.setTickLabelPosition(AxisTickLabelPosition.LOW);
        values.setCrosses(AxisCrosses.MIN);
        values.setCrossBetween(AxisCrossBetween.BETWEEN);
        values.setNumberFormat("0");
        ChartParts.dress(categories);
        ChartParts.dress(values);
        values.getOrAddMajorGridProperties().setLineProperties(ChartParts.line("DDE4E7", 0.5));
    }

    /** Lets the value axis start above 0. */
    public void startAt(double least) {
        values.setMinimum(least);
    }

    /** How numbers stand on the value axis, such as {@code 0.0}; whole numbers where nothing is said. */
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
        XDDFLineChartData data = (XDDFLineChartData) chart.createData(ChartTypes.LINE, categories, values);
        data.setGrouping(Grouping.STANDARD);
        data.setVaryColors(false);
        many.forEach(series -> add(data, series, pointsOnly && series.look() != SeriesLook.BAND));
        chart.plot(data);
    }

    public void line(Series series) {
        lines(List.of(series));
    }

    private void add(XDDFLineChartData data, Series series, boolean pointsOnly) {
        XDDFLineChartData.Series drawn = (XDDFLineChartData.Series) data.addSeries(categories(series), values(series));
        drawn.setTitle(series.title(), null);
        drawn.setSmooth(false);
        drawn.setMarkerStyle(series.look().marker);
        drawn.setMarkerSize((short) series.look().size);
        drawn.setLineProperties(
                pointsOnly || series.look().pointsOnly()
                        ? new XDDFLineProperties(new XDDFNoFillProperties())
                        : ChartParts.line(series.look().rgb, series.look().linePoints()));
        if (series.look().marker != MarkerStyle.NONE) {
            ChartParts.fill(drawn.getCTLineSer().getMarker(), series.look());
        }
        number(drawn.getCTLineSer().getIdx(), drawn.getCTLineSer().getOrder());
    }

    public void columns(List<Series> many) {
        XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, categories, values);
        data.setBarDirection(BarDirection.COL);
        data.setBarGrouping(BarGrouping.CLUSTERED);
        data.setVaryColors(false);
        data.setGapWidth(60);
        for (Series series : many) {
            XDDFBarChartData.Series drawn =
                    (XDDFBarChartData.Series) data.addSeries(categories(series), values(series));
            drawn.setTitle(series.title(), null);
            drawn.setFillProperties(ChartParts.solid(series.look().rgb));
            number(drawn.getCTBarSer().getIdx(), drawn.getCTBarSer().getOrder());
        }
        chart.plot(data);
    }

    /** Series of a chart that mixes columns and lines are numbered through, or spreadsheets drop some. */
    private void number(
            org.openxmlformats.schemas.drawingml.x2006.chart.CTUnsignedInt seriesIndex,
            org.openxmlformats.schemas.drawingml.x2006.chart.CTUnsignedInt order) {
        seriesIndex.setVal(index);
        order.setVal(index);
        index++;
    }

    private XDDFDataSource<?> categories(Series series) {
        XSSFRow first = sheet.getRow(series.firstRow());
        XSSFCell name = first == null ? null : first.getCell(series.categoryColumn());
        if (name != null && name.getCellType() == CellType.NUMERIC) {
            return ChartCells.numbers(sheet, range(series, series.categoryColumn()));
        }
        return ChartCells.texts(sheet, range(series, series.categoryColumn()));
    }

    private XDDFNumericalDataSource<Double> values(Series series) {
        return ChartCells.numbers(sheet, range(series, series.valueColumn()));
    }

    private static CellRangeAddress range(Series series, int column) {
        return new CellRangeAddress(series.firstRow(), series.lastRow(), column, column);
    }
}
