package org.bagwright.workbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.PlannedDemos;
import org.bagwright.domain.units.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;

/** The charts of the sheet Ladder of each demo, as they are in the file. */
@Tag("regression")
class LadderChartsTest {
    private List<XSSFChart> charts(XSSFWorkbook book) {
        return book.getSheet(LadderSheet.NAME).createDrawingPatriarch().getCharts();
    }

    private static Stream<CTMarker> markers(XSSFChart chart) {
        var plot = chart.getCTChart().getPlotArea();
        return Stream.concat(
                        plot.getLineChartList().stream()
                                .flatMap(lines -> lines.getSerList().stream())
                                .filter(series -> series.isSetTx())
                                .map(series -> series.getMarker()),
                        plot.getScatterChartList().stream()
                                .flatMap(points -> points.getSerList().stream())
                                .filter(series -> series.isSetTx())
                                .map(series -> series.getMarker()))
                .filter(marker -> marker != null && marker.isSetSymbol());
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full"})
    void todayPlannedAndLive_differByShape(String demo) throws Exception {
        try (XSSFWorkbook book = PlannedDemos.open(demo)) {
            assertTrue(charts(book).size() >= 2, "charts");
            for (XSSFChart chart : charts(book)) {
                Set<String> shapes = markers(chart)
                        .map(marker -> marker.getSymbol().getVal().toString())
                        .collect(Collectors.toSet());
                assertTrue(
                        shapes.containsAll(Set.of("square", "circle", "diamond")),
                        chart.getTitleText() + ": " + shapes);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full"})
    void curveOfASleeve_isClosed(String demo) throws Exception {
        try (XSSFWorkbook book = PlannedDemos.open(demo)) {
            long curves = charts(book).stream()
                    .flatMap(chart -> chart.getCTChart().getPlotArea().getScatterChartList().stream())
                    .flatMap(points -> points.getSerList().stream())
                    .filter(LadderChartsTest::isCurve)
                    .peek(LadderChartsTest::checkClosed)
                    .count();
            assertTrue(curves > 0, "curves");
        }
    }

    /** Joined by a line: its line has a colour. */
    private static boolean isCurve(CTScatterSer series) {
        return series.isSetSpPr()
                && series.getSpPr().isSetLn()
                && series.getSpPr().getLn().isSetSolidFill();
    }

    private static void checkClosed(CTScatterSer series) {
        var across = series.getXVal().getNumRef().getNumCache().getPtList();
        var up = series.getYVal().getNumRef().getNumCache().getPtList();
        assertEquals(across.get(0).getV(), across.get(across.size() - 1).getV());
        assertEquals(up.get(0).getV(), up.get(up.size() - 1).getV());
    }
    /** Legend, title and names of the axes take about a quarter of a chart's height (measured on pictures of the three demos). */
    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void threeYardsOffTheWish_are20PixelsOff(String demo) throws Exception {
        try (XSSFWorkbook book = PlannedDemos.open(demo)) {
            List<XSSFChart> ofGaps = charts(book).stream()
                    .filter(chart -> chart.getTitleText().getString().startsWith("Gap to"))
                    .toList();
            assertTrue(!ofGaps.isEmpty(), "charts of gaps");
            for (XSSFChart chart : ofGaps) {
                var axis = chart.getCTChart().getPlotArea().getValAxArray(0);
                LengthUnit unit = axis.getTitle().toString().contains("[m]") ? LengthUnit.METRE : LengthUnit.YARD;
                double span = axis.getScaling().getMax().getVal()
                        - axis.getScaling().getMin().getVal();
                double off = unit.fromM(LengthUnit.YARD.toM(3)) / span;
                double pixels = 0.75 * off * heightPixels(book.getSheet(LadderSheet.NAME), chart);
                assertTrue(pixels >= 20, chart.getTitleText() + ": " + pixels);
            }
        }
    }

    private static double heightPixels(XSSFSheet sheet, XSSFChart chart) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        String id = '"' + drawing.getRelationId(chart) + '"';
        CTTwoCellAnchor place = drawing.getCTDrawing().getTwoCellAnchorList().stream()
                .filter(anchor -> anchor.isSetGraphicFrame()
                        && anchor.getGraphicFrame().xmlText().contains(id))
                .findFirst()
                .orElseThrow();
        return IntStream.range(place.getFrom().getRow(), place.getTo().getRow())
                        .mapToDouble(row -> sheet.getRow(row) == null
                                ? sheet.getDefaultRowHeightInPoints()
                                : sheet.getRow(row).getHeightInPoints())
                        .sum()
                * Units.PIXEL_DPI
                / Units.POINT_DPI;
    }
}
