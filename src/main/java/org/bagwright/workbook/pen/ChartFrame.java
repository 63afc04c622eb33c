package org.bagwright.workbook.pen;

import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xddf.usermodel.text.XDDFRunProperties;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What every chart of the book shares: its frame, title and axes, and the cells of the sheet that it shows. */
final class ChartFrame {
    /** What a chart keeps clear of the table to its left, and half of it of the row above. */
    private static final int INSET_EMU = 120_000;

    private final XSSFSheet sheet;
    private final Sheet cells;
    private final XSSFChart chart;

    /** A chart whose upper left corner is a cell, with a size in columns and rows. */
    ChartFrame(XSSFSheet sheet, int column, int row, int columns, int rows) {
        this(sheet, sheet, new XSSFClientAnchor(
                INSET_EMU, INSET_EMU / 2, 0, 0, column, row, column + columns, row + rows));
    }

    /** A chart that fills cells of the sheet of a pen. */
    ChartFrame(SheetPen pen, int column, int row, int columns, int rows) {
        this(pen.sheet(), pen.rows(), new XSSFClientAnchor(0, 0, 0, 0, column, row, column + columns, row + rows));
    }

    private ChartFrame(XSSFSheet sheet, Sheet cells, XSSFClientAnchor anchor) {
        this.sheet = sheet;
        this.cells = cells;
        chart = sheet.createDrawingPatriarch().createChart(anchor);
        chart.displayBlanksAs(DisplayBlanks.GAP);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        chart.getOrAddShapeProperties().setFillProperties(BookColour.PAPER.rgb().fill());
        chart.getOrAddShapeProperties().setLineProperties(BookColour.RULE.rgb().line(0.75));
    }

    XSSFChart chart() {
        return chart;
    }

    void title(String text) {
        chart.setTitleText(text);
        chart.setTitleOverlay(false);
        chart.getTitle().getBody().getParagraph(0).getTextRuns().forEach(run -> {
            run.setFontSize(12.0);
            run.setBold(true);
            run.setFontColor(XDDFColor.from(BookColour.INK.rgb().bytes()));
        });
    }

    /** An axis of numbers with lines of the grid in a colour. */
    XDDFValueAxis valueAxis(AxisPosition position, String title, String format, BookColour grid) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        if (!title.isEmpty()) {
            axis.setTitle(title);
        }
        axis.setCrosses(AxisCrosses.MIN);
        axis.setNumberFormat(format);
        dress(axis);
        axis.getOrAddMajorGridProperties().setLineProperties(grid.rgb().line(0.5));
        return axis;
    }

    /** Gives an axis the book's colours and letters. */
    void dress(XDDFChartAxis axis) {
        axis.getOrAddShapeProperties().setLineProperties(BookColour.FAINT.rgb().line(0.75));
        XDDFRunProperties text = axis.getOrAddTextProperties();
        text.setFontSize(9.0);
        text.setFillProperties(BookColour.INK.rgb().fill());
    }

    /**
     * The numbers that cells of a column hold; a cell that holds none is left out of the chart. The library's own sources
     * calculate every formula again, and everything it refers to, for each chart: minutes for a team.
     */
    XDDFNumericalDataSource<Double> numbers(CellRangeAddress range) {
        Double[] values = new Double[range.getNumberOfCells()];
        fill(values, range, CellType.NUMERIC, Cell::getNumericCellValue);
        return XDDFDataSourcesFactory.fromArray(values, address(range));
    }

    /** The texts that cells of a column hold; a cell that holds none is left out of the chart. */
    XDDFCategoryDataSource texts(CellRangeAddress range) {
        String[] values = new String[range.getNumberOfCells()];
        fill(values, range, CellType.STRING, Cell::getStringCellValue);
        return XDDFDataSourcesFactory.fromArray(values, address(range));
    }

    private <T> void fill(T[] values, CellRangeAddress range, CellType type, Function<Cell, T> value) {
        for (int index = 0; index < values.length; index++) {
            Row row = cells.getRow(range.getFirstRow() + index);
            Cell cell = row == null ? null : row.getCell(range.getFirstColumn());
            values[index] = cell != null && shownType(cell) == type ? value.apply(cell) : null;
        }
    }

    private static CellType shownType(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    private String address(CellRangeAddress range) {
        return range.formatAsString(sheet.getSheetName(), true);
    }
}
