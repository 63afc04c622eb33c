package org.bagwright.workbook.pen;

import java.util.HexFormat;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.text.XDDFRunProperties;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;

/** What every chart of the book shares; every colour is set, since the book has no theme to take it from. */
final class ChartParts {
    private static final int MARKER_LINE_EMU = 19050;
    /** What a chart keeps clear of the table to its left, and half of it of the row above. */
    private static final int INSET_EMU = 120_000;

    private ChartParts() {}

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    static XSSFChart chart(XSSFSheet sheet, int column, int row, int columns, int rows) {
        XSSFClientAnchor anchor =
                new XSSFClientAnchor(INSET_EMU, INSET_EMU / 2, 0, 0, column, row, column + columns, row + rows);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
        chart.displayBlanksAs(DisplayBlanks.GAP);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        chart.getOrAddShapeProperties().setFillProperties(solid("FFFFFF"));
        chart.getOrAddShapeProperties().setLineProperties(line(BookStyles.RULE, 0.75));
        return chart;
    }

    static void title(XSSFChart chart, String text) {
        chart.setTitleText(text);
        chart.setTitleOverlay(false);
        chart.getTitle().getBody().getParagraph(0).getTextRuns().forEach(run -> {
            run.setFontSize(12.0);
            run.setBold(true);
            run.setFontColor(XDDFColor.from(rgb(BookStyles.INK)));
        });
    }

    static void dress(XDDFChartAxis axis) {
        axis.getOrAddShapeProperties().setLineProperties(line(BookStyles.FAINT, 0.75));
        XDDFRunProperties text = axis.getOrAddTextProperties();
        text.setFontSize(9.0);
        text.setFillProperties(solid(BookStyles.INK));
    }

    static void fill(CTMarker marker, SeriesLook look) {
        var shape = marker.addNewSpPr();
        shape.addNewSolidFill().addNewSrgbClr().setVal(rgb(look.rgb));
        shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(rgb(look.rgb));
        shape.getLn().setW(MARKER_LINE_EMU);
    }

    static XDDFSolidFillProperties solid(String rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(rgb(rgb)));
    }

    static XDDFLineProperties line(String rgb, double points) {
        XDDFLineProperties line = new XDDFLineProperties(solid(rgb));
        line.setWidth(points);
        return line;
    }

    static byte[] rgb(String rgb) {
        return HexFormat.of().parseHex(rgb);
    }
}
