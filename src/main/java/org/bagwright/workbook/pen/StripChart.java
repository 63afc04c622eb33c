package org.bagwright.workbook.pen;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTManualLayout;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutMode;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutTarget;

/** A chart next to some rows of a table, in which each row of the table has its own line; rows count from 0. */
public final class StripChart {
    /** The height of the lower edge; 0 is out of sight, for a mark that is not there. */
    public static final double BOTTOM = 100;

    /** Some programs print a chart a little smaller than the table next to it. */
    private static final double LETTERS_POINTS = 11;

    private static final double BAND_POINTS = 0.75;
    private static final double SIDE_RATIO = 0.06;

    /**
     * How marks look. Some programs draw the first series on top and know no fills that let through; others draw the last on
     * top, but let it be seen through. The hollow mark is a disc in a larger one for the former, a ring for the latter.
     */
    public enum Look {
        LIVE(BookColour.CLOSE, BookColour.INK, MarkerStyle.SQUARE, 6, 100),
        PLAN(BookColour.SLATE, BookColour.SLATE, MarkerStyle.DIAMOND, 10, 30),
        HOLLOW(BookColour.PAPER, BookColour.PAPER, MarkerStyle.CIRCLE, 9, 0),
        TODAY(BookColour.INK, BookColour.INK, MarkerStyle.CIRCLE, 12, 0),
        BAND(BookColour.RULE, BookColour.FAINT, MarkerStyle.NONE, 2, 0);

        private static final int EDGE_EMU = 12_700;
        private static final int PER_CENT = 1000;

        private final BookColour fill;
        private final BookColour edge;
        private final MarkerStyle marker;
        private final short size;
        private final int opaquePercent;

        Look(BookColour fill, BookColour edge, MarkerStyle marker, int size, int opaquePercent) {
            this.fill = fill;
            this.edge = edge;
            this.marker = marker;
            this.size = (short) size;
            this.opaquePercent = opaquePercent;
        }

        private void paint(CTMarker drawn) {
            var shape = drawn.addNewSpPr();
            var colour = shape.addNewSolidFill().addNewSrgbClr();
            colour.setVal(fill.rgb().bytes());
            colour.addNewAlpha().setVal(opaquePercent * PER_CENT);
            if (this == HOLLOW) {
                shape.addNewLn().addNewNoFill();
                return;
            }
            shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(edge.rgb().bytes());
            shape.getLn().setW(EDGE_EMU);
        }
    }

    /** One series: the columns with where its marks are across the chart, and on which line. */
    public record Marks(String title, int acrossColumn, int lineColumn, Look look) {}

    private final ChartFrame frame;
    private final int firstRow;
    private final int lastRow;

    /** A chart as wide as a column; one row more is for the numbers of its axis. All rows are equally high. */
    public StripChart(SheetPen pen, int column, int firstRow, int lastRow) {
        this.frame = new ChartFrame(pen, column, firstRow, 1, lastRow - firstRow + 2);
        this.firstRow = firstRow;
        this.lastRow = lastRow;
    }

    /** Draws marks from minus to plus a span. */
    public void draw(double span, List<Marks> series) {
        int rows = lastRow - firstRow + 1;
        XDDFValueAxis across = frame.valueAxis(AxisPosition.BOTTOM, "", "+0;-0;0", BookColour.GRID);
        across.setMinimum(-span);
        across.setMaximum(span);
        across.setMajorUnit(span);
        across.setTickLabelPosition(AxisTickLabelPosition.LOW);
        across.getOrAddTextProperties().setFontSize(LETTERS_POINTS);
        XDDFValueAxis lines = frame.valueAxis(AxisPosition.LEFT, "", "0", BookColour.GRID);
        lines.setMinimum(BOTTOM);
        lines.setMaximum(BOTTOM + rows);
        lines.setMajorUnit(1);
        lines.setTickLabelPosition(AxisTickLabelPosition.NONE);
        lines.setMajorTickMark(AxisTickMark.NONE);
        across.setMajorTickMark(AxisTickMark.NONE);
        var data = (XDDFScatterChartData) frame.chart().createData(ChartTypes.SCATTER, across, lines);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
        series.forEach(marks -> add(data, marks));
        frame.chart().plot(data);
        fillThePlot(rows);
    }

    private void add(XDDFScatterChartData data, Marks marks) {
        var drawn = (XDDFScatterChartData.Series)
                data.addSeries(frame.numbers(column(marks.acrossColumn())), frame.numbers(column(marks.lineColumn())));
        drawn.setTitle(marks.title(), null);
        drawn.setMarkerStyle(marks.look().marker);
        drawn.setMarkerSize(marks.look().size);
        drawn.setSmooth(false);
        if (marks.look().marker == MarkerStyle.NONE) {
            drawn.setLineProperties(marks.look().edge.rgb().line(BAND_POINTS));
        } else {
            drawn.setLineProperties(SeriesLook.noLine());
            marks.look().paint(drawn.getCTScatterSer().getMarker());
        }
    }

    private CellRangeAddress column(int column) {
        return new CellRangeAddress(firstRow, lastRow, column, column);
    }

    /** The lines of the chart are as high as the rows of the table; its cells may be in hidden columns. */
    private void fillThePlot(int rows) {
        frame.chart().getCTChart().getPlotVisOnly().setVal(false);
        var plot = frame.chart().getCTChart().getPlotArea();
        CTManualLayout layout = (plot.isSetLayout() ? plot.getLayout() : plot.addNewLayout()).addNewManualLayout();
        layout.addNewLayoutTarget().setVal(STLayoutTarget.INNER);
        layout.addNewXMode().setVal(STLayoutMode.EDGE);
        layout.addNewYMode().setVal(STLayoutMode.EDGE);
        layout.addNewX().setVal(SIDE_RATIO);
        layout.addNewY().setVal(0);
        layout.addNewW().setVal(1 - 2 * SIDE_RATIO);
        layout.addNewH().setVal(rows / (rows + 1.0));
    }
}
