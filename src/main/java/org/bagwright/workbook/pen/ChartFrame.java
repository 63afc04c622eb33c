package org.bagwright.workbook.pen;

import java.util.Arrays;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
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
import org.openxmlformats.schemas.drawingml.x2006.chart.CTCatAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;

/** What every chart of the book shares: its frame, title and axes, and the cells of the sheet that it shows. */
final class ChartFrame {
    /** Letters that are 8 points or more on a sheet that is printed somewhat smaller. */
    static final double LETTERS_POINTS = 10;

    private static final double TITLE_POINTS = 12;
    /** Sizes of letters are kept in hundredths of a point. */
    static final int HUNDREDTHS = 100;

    private final XSSFSheet sheet;
    private final Sheet cells;
    private final XSSFChart chart;

    ChartFrame(XSSFSheet sheet, ChartPlace place) {
        this(sheet, sheet, place.anchor(sheet));
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
        letters();
        chart.getOrAddShapeProperties().setFillProperties(BookColour.PAPER.rgb().fill());
        chart.getOrAddShapeProperties().setLineProperties(BookColour.RULE.rgb().line(0.75));
    }

    XSSFChart chart() {
        return chart;
    }

    void legend() {
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    }

    /** The letters of all texts that have none of their own. */
    private void letters() {
        CTTextBody letters = chart.getCTChartSpace().addNewTxPr();
        letters.addNewBodyPr();
        CTTextCharacterProperties usual = letters.addNewP().addNewPPr().addNewDefRPr();
        usual.setSz((int) (HUNDREDTHS * LETTERS_POINTS));
        usual.addNewSolidFill().addNewSrgbClr().setVal(BookColour.INK.rgb().bytes());
        usual.addNewLatin().setTypeface(BookStyles.FONT);
    }

    void title(String text) {
        chart.setTitleText(text);
        chart.setTitleOverlay(false);
        chart.getTitle().getBody().getParagraph(0).getTextRuns().forEach(run -> {
            run.setFontSize(TITLE_POINTS);
            run.setBold(true);
            run.setFontColor(XDDFColor.from(BookColour.INK.rgb().bytes()));
        });
    }

    /** An axis of numbers with lines of the grid in a colour. */
    XDDFValueAxis valueAxis(AxisPosition position, String title, String format, BookColour grid) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        if (!title.isEmpty()) {
            title(axis, title);
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
        text.setFontSize(LETTERS_POINTS);
        text.setFillProperties(BookColour.INK.rgb().fill());
    }

    /** Names an axis, in the letters of the chart. */
    void title(XDDFChartAxis axis, String title) {
        axis.setTitle(title);
        CTPlotArea area = chart.getCTChart().getPlotArea();
        Stream.concat(
                        Arrays.stream(area.getCatAxArray()).map(CTCatAx::getTitle),
                        Arrays.stream(area.getValAxArray()).map(CTValAx::getTitle))
                .filter(Objects::nonNull)
                .flatMap(named -> Arrays.stream(named.getTx().getRich().getPArray()))
                .flatMap(paragraph -> Arrays.stream(paragraph.getRArray()))
                .forEach(ChartFrame::plain);
    }

    private static void plain(CTRegularTextRun run) {
        CTTextCharacterProperties letters = run.isSetRPr() ? run.getRPr() : run.addNewRPr();
        letters.setSz((int) (HUNDREDTHS * LETTERS_POINTS));
        letters.setB(false);
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
