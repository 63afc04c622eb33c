package org.bagwright.workbook;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xddf.usermodel.text.XDDFRunProperties;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** One chart on a sheet, in the look of the book: every colour set, since the book has no theme to take it from. */
final class BookChart {
    /** How a series looks; the looks differ in lightness and shape, so that they print in grey. */
    enum Look {
        TODAY("A9B7BD", MarkerStyle.CIRCLE),
        PLANNED("2E4A57", MarkerStyle.DIAMOND),
        LIVE("C98A2D", MarkerStyle.SQUARE),
        WISH("7A4E3A", MarkerStyle.DASH);

        final String rgb;
        final MarkerStyle marker;

        Look(String rgb, MarkerStyle marker) {
            this.rgb = rgb;
            this.marker = marker;
        }
    }

    /** One series: rows from first to last, names from one column and values from another. */
    record Series(String title, int firstRow, int lastRow, int categoryColumn, int valueColumn, Look look) {}

    private final XSSFSheet sheet;
    private final XSSFChart chart;
    private XDDFCategoryAxis categories;
    private XDDFValueAxis values;
    private int index;

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    BookChart(XSSFSheet sheet, int column, int row, int columns, int rows) {
        this.sheet = sheet;
        XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, column, row, column + columns, row + rows);
        this.chart = sheet.createDrawingPatriarch().createChart(anchor);
        chart.getOrAddLegend().setPosition(LegendPosition.TOP_RIGHT);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        chart.getOrAddShapeProperties().setFillProperties(solid("FFFFFF"));
        chart.getOrAddShapeProperties().setLineProperties(line(BookStyles.RULE, 0.75));
    }

    void title(String text) {
        chart.setTitleText(text);
        chart.setTitleOverlay(false);
        chart.getTitle().getBody().getParagraph(0).getTextRuns().forEach(run -> {
            run.setFontSize(12.0);
            run.setBold(true);
            run.setFontColor(XDDFColor.from(rgb(BookStyles.INK)));
        });
    }

    void axes(String category, String value) {
        categories = chart.createCategoryAxis(AxisPosition.BOTTOM);
        values = chart.createValueAxis(AxisPosition.LEFT);
        categories.setTitle(category);
        values.setTitle(value);
        categories.setCrosses(AxisCrosses.AUTO_ZERO);
        categories.setTickLabelPosition(AxisTickLabelPosition.LOW);
        values.setCrosses(AxisCrosses.MIN);
        values.setCrossBetween(AxisCrossBetween.BETWEEN);
        values.setNumberFormat("0");
        dress(categories);
        dress(values);
        values.getOrAddMajorGridProperties().setLineProperties(line("DDE4E7", 0.5));
    }

    private static void dress(XDDFChartAxis axis) {
        axis.getOrAddShapeProperties().setLineProperties(line(BookStyles.FAINT, 0.75));
        XDDFRunProperties text = axis.getOrAddTextProperties();
        text.setFontSize(9.0);
        text.setFillProperties(solid(BookStyles.INK));
    }

    /** Lets the value axis start above 0. */
    void startAt(double least) {
        values.setMinimum(least);
    }

    void lines(List<Series> many) {
        XDDFLineChartData data = (XDDFLineChartData) chart.createData(ChartTypes.LINE, categories, values);
        data.setVaryColors(false);
        many.forEach(series -> add(data, series));
        chart.plot(data);
    }

    void line(Series series) {
        lines(List.of(series));
    }

    private void add(XDDFLineChartData data, Series series) {
        XDDFLineChartData.Series drawn = (XDDFLineChartData.Series) data.addSeries(categories(series), values(series));
        drawn.setTitle(series.title(), null);
        drawn.setSmooth(false);
        drawn.setMarkerStyle(series.look().marker);
        drawn.setMarkerSize((short) (series.look() == Look.PLANNED ? 10 : series.look() == Look.LIVE ? 5 : 7));
        drawn.setLineProperties(
                series.look() == Look.LIVE
                        ? new XDDFLineProperties(new XDDFNoFillProperties())
                        : line(series.look().rgb, 1.5));
        marker(drawn, series.look());
        number(drawn.getCTLineSer().getIdx(), drawn.getCTLineSer().getOrder());
    }

    private static void marker(XDDFLineChartData.Series drawn, Look look) {
        var shape = drawn.getCTLineSer().getMarker().addNewSpPr();
        shape.addNewSolidFill().addNewSrgbClr().setVal(rgb(look.rgb));
        shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(rgb(look.rgb));
        shape.getLn().setW(19050);
    }

    void columns(List<Series> many) {
        XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, categories, values);
        data.setBarDirection(BarDirection.COL);
        data.setBarGrouping(BarGrouping.CLUSTERED);
        data.setVaryColors(false);
        data.setGapWidth(60);
        for (Series series : many) {
            XDDFBarChartData.Series drawn =
                    (XDDFBarChartData.Series) data.addSeries(categories(series), values(series));
            drawn.setTitle(series.title(), null);
            drawn.setFillProperties(solid(series.look().rgb));
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

    private XDDFDataSource<String> categories(Series series) {
        return XDDFDataSourcesFactory.fromStringCellRange(sheet, range(series, series.categoryColumn()));
    }

    private XDDFNumericalDataSource<Double> values(Series series) {
        return XDDFDataSourcesFactory.fromNumericCellRange(sheet, range(series, series.valueColumn()));
    }

    private static CellRangeAddress range(Series series, int column) {
        return new CellRangeAddress(series.firstRow(), series.lastRow(), column, column);
    }

    private static XDDFSolidFillProperties solid(String rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(rgb(rgb)));
    }

    private static XDDFLineProperties line(String rgb, double points) {
        XDDFLineProperties line = new XDDFLineProperties(solid(rgb));
        line.setWidth(points);
        return line;
    }

    private static byte[] rgb(String rgb) {
        return java.util.HexFormat.of().parseHex(rgb);
    }
}
