package org.bagwright.workbook.pen;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbl;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDLblPos;

/** The settings of one sleeve on one club: gauge loft over gauge lie, each point with its mark. */
public final class ClockChart {
    private final XSSFSheet sheet;
    private final XSSFChart chart;
    private final XDDFValueAxis lies;
    private final XDDFValueAxis lofts;
    private final XDDFScatterChartData data;

    public ClockChart(XSSFSheet sheet, int column, int row, int columns, int rows, String title) {
        this.sheet = sheet;
        chart = ChartParts.chart(sheet, column, row, columns, rows);
        ChartParts.title(chart, title);
        lies = axis(AxisPosition.BOTTOM, "Gauge lie [deg], more upright to the right");
        lofts = axis(AxisPosition.LEFT, "Gauge loft [deg]");
        data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, lies, lofts);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
    }

    private XDDFValueAxis axis(AxisPosition position, String title) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        axis.setTitle(title);
        axis.setCrosses(AxisCrosses.MIN);
        axis.setNumberFormat("0.0");
        ChartParts.dress(axis);
        axis.getOrAddMajorGridProperties().setLineProperties(ChartParts.line("E4EBED", 0.5));
        return axis;
    }

    /** The part of the plane that is shown, degrees. */
    public void window(double leastLieDeg, double mostLieDeg, double leastLoftDeg, double mostLoftDeg) {
        lies.setMinimum(Math.floor(leastLieDeg - 0.5));
        lies.setMaximum(Math.ceil(mostLieDeg + 0.5));
        lofts.setMinimum(Math.floor(leastLoftDeg - 0.5));
        lofts.setMaximum(Math.ceil(mostLoftDeg + 0.5));
    }

    /** Adds points without a line between them; {@code labels} is empty or holds one text a point. */
    public void points(
            String title,
            int firstRow,
            int lastRow,
            int lieColumn,
            int loftColumn,
            SeriesLook look,
            List<String> labels) {
        var drawn = (XDDFScatterChartData.Series) data.addSeries(
                ChartCells.numbers(sheet, new CellRangeAddress(firstRow, lastRow, lieColumn, lieColumn)),
                ChartCells.numbers(sheet, new CellRangeAddress(firstRow, lastRow, loftColumn, loftColumn)));
        drawn.setTitle(title, null);
        drawn.setMarkerStyle(look.marker);
        drawn.setMarkerSize((short) look.size);
        drawn.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
        CTScatterSer series = drawn.getCTScatterSer();
        ChartParts.fill(series.getMarker(), look);
        label(series, labels);
    }

    private static void label(CTScatterSer series, List<String> labels) {
        if (labels.isEmpty()) {
            return;
        }
        CTDLbls all = series.addNewDLbls();
        for (int point = 0; point < labels.size(); point++) {
            CTDLbl one = all.addNewDLbl();
            one.addNewIdx().setVal(point);
            var body = one.addNewTx().addNewRich();
            body.addNewBodyPr();
            var run = body.addNewP().addNewR();
            run.addNewRPr().setSz(900);
            run.setT(labels.get(point));
            one.addNewDLblPos().setVal(STDLblPos.R);
            one.addNewShowLegendKey().setVal(false);
            one.addNewShowVal().setVal(true);
            one.addNewShowCatName().setVal(false);
            one.addNewShowSerName().setVal(false);
            one.addNewShowPercent().setVal(false);
            one.addNewShowBubbleSize().setVal(false);
        }
        all.addNewShowLegendKey().setVal(false);
        all.addNewShowVal().setVal(false);
        all.addNewShowCatName().setVal(false);
        all.addNewShowSerName().setVal(false);
        all.addNewShowPercent().setVal(false);
        all.addNewShowBubbleSize().setVal(false);
    }

    public void plot() {
        chart.plot(data);
    }
}
