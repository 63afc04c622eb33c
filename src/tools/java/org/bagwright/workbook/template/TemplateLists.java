package org.bagwright.workbook.template;

import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.schema.SleeveColumn;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.schema.WeightColumn;

/**
 * Adds the hidden sheet behind the drop-downs of names: each golfer, sleeve and kit once, worked out by formulas that
 * every spreadsheet program knows, and named sizes of the units chosen on the sheet Start.
 */
final class TemplateLists {
    static final String SHEET = "Drop-downs";
    static final String GOLFERS = "GolferNames";
    static final String SLEEVES = "SleeveNames";
    static final String KITS = "KitNames";
    static final String LENGTH_UNIT = "LengthUnit";
    static final String SPEED_UNIT = "SpeedUnit";
    static final String DISTANCE_UNIT = "DistanceUnit";
    private static final int NAMES = 120;
    private static final int LAST_ROW = NAMES + 1;

    private final XSSFWorkbook workbook;

    TemplateLists(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    void add() {
        XSSFSheet sheet = workbook.createSheet(SHEET);
        sheet.createRow(0);
        for (int row = 1; row <= NAMES; row++) {
            sheet.createRow(row);
        }
        addNames(sheet, 0, GolferColumn.SHEET.name(), GOLFERS);
        addNames(sheet, 3, SleeveColumn.SHEET.name(), SLEEVES);
        addNames(sheet, 6, WeightColumn.SHEET.name(), KITS);
        nameUnits();
        workbook.setSheetVisibility(workbook.getSheetIndex(sheet), SheetVisibility.HIDDEN);
    }

    /** Three columns: the cell of the input sheet, its number among different names, the names without holes. */
    private void addNames(XSSFSheet sheet, int first, String input, String name) {
        String all = letter(first);
        String number = letter(first + 1);
        sheet.getRow(0).createCell(first).setCellValue("all " + input);
        sheet.getRow(0).createCell(first + 1).setCellValue("number");
        sheet.getRow(0).createCell(first + 2).setCellValue("once each");
        for (int row = 2; row <= LAST_ROW; row++) {
            XSSFRow cells = sheet.getRow(row - 1);
            String here = all + row;
            cells.createCell(first)
                    .setCellFormula("INDEX(" + input + "!$A:$A,ROW()+" + (TemplateLayout.FIRST_ROW - 1) + ")&\"\"");
            cells.createCell(first + 1)
                    .setCellFormula("IF(OR(" + here + "=\"\",LEFT(" + here + ",7)=\"Example\"),\"\",IF(COUNTIF(" + all
                            + "$2:" + here + "," + here + ")=1,MAX(" + number + "$1:" + number + (row - 1)
                            + ")+1,\"\"))");
            cells.createCell(first + 2)
                    .setCellFormula("IFERROR(INDEX(" + all + "$2:" + all + "$" + LAST_ROW + ",MATCH(ROW()-1," + number
                            + "$2:" + number + "$" + LAST_ROW + ",0)),\"\")");
        }
        String sheetName = "'" + SHEET + "'!";
        define(
                name,
                "OFFSET(" + sheetName + "$" + letter(first + 2) + "$2,0,0,MAX(1,MAX(" + sheetName + "$" + number
                        + "$2:$" + number + "$" + LAST_ROW + ")),1)");
    }

    private void nameUnits() {
        define(LENGTH_UNIT, "IF(" + start(StartSetting.LENGTH) + "=\"mm\",0.001,0.0254)");
        define(DISTANCE_UNIT, "IF(" + start(StartSetting.DISTANCE) + "=\"m\",1,0.9144)");
        String speed = start(StartSetting.SPEED);
        define(SPEED_UNIT, "IF(" + speed + "=\"m/s\",1,IF(" + speed + "=\"km/h\",1/3.6,0.44704))");
    }

    private static String start(StartSetting setting) {
        return "Start!$B$" + (TemplateStart.rowOf(setting) + 1);
    }

    private void define(String name, String formula) {
        Name defined = workbook.createName();
        defined.setNameName(name);
        defined.setRefersToFormula(formula);
    }

    private static String letter(int column) {
        return org.apache.poi.ss.util.CellReference.convertNumToColString(column);
    }
}
