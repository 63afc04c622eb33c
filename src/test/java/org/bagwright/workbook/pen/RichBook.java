package org.bagwright.workbook.pen;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataConsolidateFunction;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.workbook.RichParts;
import org.bagwright.workbook.schema.ResultSheet;

/** A small bag whose book a fitter has filled with all he likes; the library makes most of it, {@link RichParts} the rest. */
public final class RichBook {
    public static final String SUMS = "My sums";
    public static final String DATA = "My data";
    static final int SUM_ROWS = 6;

    private final XSSFWorkbook workbook;

    private RichBook(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** Input sheets with columns in an order of his own and columns that nobody reads. */
    public static Path plain(Path file) throws IOException {
        return new BookSketch()
                .sheet("Notes first", "Mine")
                .sheet("Golfers", "My column, Golfer, Driver speed")
                .row("left alone", "Golfer A", 95)
                .sheet("Clubs", "Price, Loft, Club, Kind, Lie, Slot, Golfer, Sleeve, Setting, Bend limit, Carry target")
                .row(300, 10.5, "Driver", "driver", 58, 1, "Golfer A", "S", "A", null, 225)
                .row(200, 18, "5 wood", "wood", 58, 2, "Golfer A", "S", "B", null, 190)
                .row(90, 32, "7 iron", "iron", 62.5, 3, "Golfer A", null, null, 2, 145)
                .sheet("Sleeves", "Setting, Sleeve, Bend, Clock")
                .row("A", "S", 1.5, 12)
                .row("B", "S", 1.5, 3)
                .row("C", "S", 1.5, 6)
                .row("D", "S", 1.5, 9)
                .sheet("Readings", "Loft, Lie, Golfer, Club, Setting")
                .row(11.0, 59.2, "Golfer A", "Driver", "A")
                .row(12.8, 57.7, "Golfer A", "Driver", "B")
                .row(11.0, 56.2, "Golfer A", "Driver", "C")
                .row(9.2, 57.7, "Golfer A", "Driver", "D")
                .write(file);
    }

    /** Fills a book that was planned once, as a fitter would: his sheets refer to Plan. */
    public static void fill(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new java.io.ByteArrayInputStream(bytes));
                OutputStream output = Files.newOutputStream(file)) {
            new RichBook(workbook).fill();
            workbook.write(output);
        }
        RichParts.add(file);
    }

    /** The names of a book's sheets in order, without the tool's. */
    public static List<String> sheets(XSSFWorkbook book) {
        return IntStream.range(0, book.getNumberOfSheets())
                .mapToObj(book::getSheetName)
                .filter(name -> !ResultSheet.NAMES.contains(name))
                .toList();
    }

    private void fill() throws IOException {
        inputs();
        sums();
        data();
        drawings();
        hidden();
        workbook.getProperties().getCustomProperties().addProperty("Workshop", "mine");
        workbook.getProperties().getCoreProperties().setCreator("Golfer A");
        workbook.setFirstVisibleTab(1);
    }

    private void inputs() {
        XSSFSheet clubs = workbook.getSheet("Clubs");
        clubs.setColumnHidden(0, true);
        clubs.setColumnWidth(2, 7777);
        clubs.setZoom(85);
        clubs.createFreezePane(3, 1);
        clubs.setTabColor(new Rgb("AA3366").ofCell());
        clubs.setAutoFilter(new CellRangeAddress(0, 3, 0, 10));
        var format = workbook.createCellStyle();
        format.setDataFormat(workbook.createDataFormat().getFormat("0.00\" deg\""));
        clubs.getRow(1).getCell(1).setCellStyle(format);
        clubs.getRow(1).getCell(8).setCellStyle(format);
        note(clubs.getRow(1).getCell(8), "asked for");
        validate(clubs, "Sleeves!$A$2:$A$5", 1, 8);
        clubs.setDefaultColumnStyle(4, format);
        note(clubs.getRow(1).getCell(2), "measured in May");
    }

    private void sums() {
        XSSFSheet sums = workbook.createSheet(SUMS);
        name("my_plan", "Plan!$A$8:$" + letters("Planned club") + "$10");
        name("my_club", "Plan!$" + letters("Planned club") + "$8");
        name("BW_mine", "'" + SUMS + "'!$A$1");
        String carry = letters("Plan carry [yd]");
        String clubs = "Plan!$" + letters("Planned club") + "$8:$" + letters("Planned club") + "$10";
        int carryPlace = 1 + ResultCells.column(workbook.getSheet("Plan"), "Plan carry [yd]");
        formula(sums, 0, 0, "Plan!" + carry + "8");
        formula(
                sums,
                1,
                0,
                "INDEX(Plan!$A$8:$" + letters("Planned club") + "$10,MATCH(\"5 wood\"," + clubs + ",0)," + carryPlace
                        + ")");
        formula(sums, 2, 0, "SUM(INDEX(my_plan,0," + carryPlace + "))");
        formula(sums, 3, 0, "COUNTA(Settings!A:A)+BW_gap_tolerance");
        formula(sums, 4, 0, "A3*2");
        formula(sums, 5, 0, "my_club&\"!\"");
        sums.setArrayFormula("B1:B3*2", CellRangeAddress.valueOf("C1:C3"));
        for (int row = 0; row < 3; row++) {
            sums.getRow(row).createCell(1).setCellValue(row + 1);
        }
        var rules = sums.getSheetConditionalFormatting();
        var rule = rules.createConditionalFormattingRule("A1=Plan!$" + carry + "$8");
        rule.createFontFormatting().setFontStyle(true, true);
        rules.addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("A1:A6")}, rule);
        validate(sums, clubs, 0, 4);
        sums.setActiveCell(new org.apache.poi.ss.util.CellAddress("B2"));
        sums.protectSheet("open sesame");
        workbook.setSheetOrder(SUMS, 1);
    }

    private String letters(String heading) {
        return CellReference.convertNumToColString(ResultCells.column(workbook.getSheet("Plan"), heading));
    }

    private static void validate(XSSFSheet sheet, String list, int row, int column) {
        var helper = sheet.getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createFormulaListConstraint(list), new CellRangeAddressList(row, row + 2, column, column));
        validation.createPromptBox("Club", "one of the plan's");
        sheet.addValidationData(validation);
    }

    private void data() {
        XSSFSheet data = workbook.createSheet(DATA);
        String[][] rows = {{"Club", "Carry"}, {"Driver", "230"}, {"5 wood", "200"}, {"7 iron", "150"}};
        for (int row = 0; row < rows.length; row++) {
            data.createRow(row).createCell(0).setCellValue(rows[row][0]);
            if (row == 0) {
                data.getRow(row).createCell(1).setCellValue(rows[row][1]);
            } else {
                data.getRow(row).createCell(1).setCellValue(Double.parseDouble(rows[row][1]));
            }
        }
        AreaReference area = new AreaReference("A1:B4", SpreadsheetVersion.EXCEL2007);
        XSSFTable table = data.createTable(area);
        table.setName("MyTable");
        table.setDisplayName("MyTable");
        table.getCTTable().addNewAutoFilter().setRef("A1:B4");
        var pivot = data.createPivotTable(area, new CellReference("K2"));
        pivot.addRowLabel(0);
        pivot.addColumnLabel(DataConsolidateFunction.SUM, 1);
        data.groupRow(5, 8);
        data.groupColumn(6, 7);
        data.createRow(6).createCell(0).setCellValue("grouped");
        workbook.setPrintArea(workbook.getSheetIndex(data), "$A$1:$F$20");
        data.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
        data.getHeader().setCenter("&\"Arial,Bold\"My workshop");
        data.getFooter().setRight("&P");
        data.addMergedRegion(CellRangeAddress.valueOf("A12:B13"));
        link(data, 9, HyperlinkType.URL, "https://example.org/clubs");
        link(data, 10, HyperlinkType.DOCUMENT, "Plan!A1");
    }

    private void link(XSSFSheet sheet, int row, HyperlinkType type, String address) {
        var link = workbook.getCreationHelper().createHyperlink(type);
        link.setAddress(address);
        XSSFCell cell = sheet.createRow(row).createCell(3);
        cell.setCellValue("there");
        cell.setHyperlink(link);
    }

    /** One picture shown on two sheets, of which one is the tool's; a chart of his own numbers and one of the plan's. */
    private void drawings() throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB), "png", png);
        int picture = workbook.addPicture(png.toByteArray(), Workbook.PICTURE_TYPE_PNG);
        XSSFDrawing drawing = workbook.getSheet(DATA).createDrawingPatriarch();
        workbook.getSheet("Plan").createDrawingPatriarch().createPicture(anchor(6, 60), picture);
        workbook.getSheet("Steps").createDrawingPatriarch().createPicture(anchor(6, 60), picture);
        note(workbook.getSheet("Plan").getRow(7).getCell(3), "his note on a result");
        chart(drawing, 20, workbook.getSheet(DATA), "A2:A4", "B2:B4");
        String carry = letters("Plan carry [yd]");
        chart(drawing, 40, workbook.getSheet("Plan"), "C8:C10", carry + "8:" + carry + "10");
        drawing.createPicture(anchor(6, 1), picture);
    }

    private static ClientAnchor anchor(int column, int row) {
        return new org.apache.poi.xssf.usermodel.XSSFClientAnchor(0, 0, 0, 0, column, row, column + 5, row + 12);
    }

    private static void chart(XSSFDrawing drawing, int row, XSSFSheet source, String names, String values) {
        XSSFChart chart = drawing.createChart((org.apache.poi.xssf.usermodel.XSSFClientAnchor) anchor(0, row));
        chart.setTitleText("My own chart");
        var data = (XDDFBarChartData) chart.createData(
                ChartTypes.BAR,
                chart.createCategoryAxis(AxisPosition.BOTTOM),
                chart.createValueAxis(AxisPosition.LEFT));
        var series = (XDDFBarChartData.Series) data.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(source, CellRangeAddress.valueOf(names)),
                XDDFDataSourcesFactory.fromNumericCellRange(source, CellRangeAddress.valueOf(values)));
        series.setFillProperties(new Rgb("CC2288").fill());
        chart.plot(data);
    }

    private void hidden() {
        XSSFSheet rough = workbook.createSheet("Rough");
        rough.createRow(2).createCell(2).setCellValue("out of sight");
        rough.getRow(2).setZeroHeight(true);
        workbook.setSheetVisibility(workbook.getSheetIndex(rough), SheetVisibility.VERY_HIDDEN);
        workbook.setSheetVisibility(workbook.getSheetIndex("Notes first"), SheetVisibility.HIDDEN);
    }

    private void name(String name, String refersTo) {
        var defined = workbook.createName();
        defined.setNameName(name);
        defined.setRefersToFormula(refersTo);
    }

    private static void formula(XSSFSheet sheet, int row, int column, String formula) {
        var line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        XSSFCell cell = line.createCell(column);
        cell.setCellFormula(formula);
        sheet.getWorkbook().getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
    }

    private static void note(XSSFCell cell, String text) {
        var comment = cell.getSheet().createDrawingPatriarch().createCellComment(anchor(8, 2));
        comment.setString(text);
        comment.setAuthor("Golfer A");
        cell.setCellComment(comment);
    }
}
