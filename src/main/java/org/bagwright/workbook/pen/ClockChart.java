package org.bagwright.workbook.pen;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBoolean;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbl;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDLblPos;

/** The settings of one sleeve on one club: gauge loft over gauge lie, each point with its mark. */
public final class ClockChart {
    /** The cells of a series: its rows from first to last, and the columns of lies and lofts. */
    public record Rows(int firstRow, int lastRow, int lieColumn, int loftColumn) {
        private CellRangeAddress of(int column) {
            return new CellRangeAddress(firstRow, lastRow, column, column);
        }
    }

    private final ChartFrame frame;
    private final XDDFValueAxis lies;
    private final XDDFValueAxis lofts;
    private final XDDFScatterChartData data;

    public ClockChart(XSSFSheet sheet, ChartPlace place, String title) {
        frame = new ChartFrame(sheet, place);
        frame.title(title);
        lies = axis(AxisPosition.BOTTOM, "Gauge lie [deg], flat to upright");
        lofts = axis(AxisPosition.LEFT, "Gauge loft [deg]");
        data = (XDDFScatterChartData) frame.chart().createData(ChartTypes.SCATTER, lies, lofts);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
    }

    private XDDFValueAxis axis(AxisPosition position, String title) {
        return frame.valueAxis(position, title, "0", BookColour.GRID);
    }

    /** Shows the part of the plane that holds all these lies and lofts, degrees. */
    public void window(DoubleSummaryStatistics liesDeg, DoubleSummaryStatistics loftsDeg) {
        span(lies, liesDeg);
        span(lofts, loftsDeg);
    }

    private static void span(XDDFValueAxis axis, DoubleSummaryStatistics anglesDeg) {
        axis.setMinimum(Math.floor(anglesDeg.getMin() - 0.5));
        axis.setMaximum(Math.ceil(anglesDeg.getMax() + 0.5));
        axis.setMajorUnit(1);
    }

    /** Adds points without a line between them; {@code labels} is empty or holds one text a point. */
    public void points(String title, Rows rows, SeriesLook look, List<String> labels) {
        var drawn = series(title, rows);
        drawn.setMarkerStyle(look.marker);
        drawn.setMarkerSize(look.size);
        drawn.setLineProperties(SeriesLook.noLine());
        look.paint(drawn.getCTScatterSer().getMarker());
        if (!labels.isEmpty()) {
            label(drawn.getCTScatterSer(), 0, labels);
        }
    }

    /** Adds a line from point to point; {@code round} lets it bend through them. */
    public void curve(String title, Rows rows, boolean round) {
        var drawn = series(title, rows);
        drawn.setSmooth(round);
        drawn.setMarkerStyle(SeriesLook.CURVE.marker);
        drawn.setLineProperties(SeriesLook.CURVE.line());
    }

    private XDDFScatterChartData.Series series(String title, Rows rows) {
        var drawn = (XDDFScatterChartData.Series)
                data.addSeries(frame.numbers(rows.of(rows.lieColumn())), frame.numbers(rows.of(rows.loftColumn())));
        drawn.setTitle(title, null);
        return drawn;
    }

    /** Gives texts to points of a series from one on. */
    static void label(CTScatterSer series, int first, List<String> labels) {
        CTDLbls all = series.addNewDLbls();
        for (int point = 0; point < labels.size(); point++) {
            label(all.addNewDLbl(), first + point, labels.get(point));
        }
        off(
                all.addNewShowLegendKey(),
                all.addNewShowVal(),
                all.addNewShowCatName(),
                all.addNewShowSerName(),
                all.addNewShowPercent(),
                all.addNewShowBubbleSize());
    }

    private static void label(CTDLbl label, int point, String text) {
        label.addNewIdx().setVal(point);
        text(label, text);
        label.addNewDLblPos().setVal(STDLblPos.R);
        label.addNewShowVal().setVal(true);
        off(
                label.addNewShowLegendKey(),
                label.addNewShowCatName(),
                label.addNewShowSerName(),
                label.addNewShowPercent(),
                label.addNewShowBubbleSize());
    }

    private static void text(CTDLbl label, String text) {
        var body = label.addNewTx().addNewRich();
        body.addNewBodyPr();
        var run = body.addNewP().addNewR();
        run.addNewRPr().setSz((int) (ChartFrame.HUNDREDTHS * ChartFrame.LETTERS_POINTS));
        run.setT(text);
    }

    private static void off(CTBoolean... flags) {
        for (CTBoolean flag : flags) {
            flag.setVal(false);
        }
    }

    public void plot() {
        frame.chart().plot(data);
    }
}
