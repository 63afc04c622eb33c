package org.bagwright.workbook.template;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.pen.BookStyles.Role;
import org.bagwright.workbook.schema.StartSetting;

/** Adds the sheet Start to the template: how to fill the book, its settings, the clock and the cautions. */
final class TemplateStart {
    private static final List<String> STEPS = List.of(
            "1.  Here: choose the units of the book and the air in which the shots fly.",
            "2.  Golfers: one row per golfer. The note on each heading says what to enter and what blank means.",
            "3.  Sleeves: one row for every setting, from the clock on the right or from the sleeve's own table.",
            "4.  Clubs: one row per club of today, or per club that might fill its slot, and what may change.",
            "5.  Readings: your gauge readings, if any. Run bagwright gauge to see what they mean.",
            "6.  Shots: what was measured, and with which set-up; bagwright add-shots reads files of shots.",
            "7.  Weights: one row for every piece of every weighting of a kit, if heads have ports.",
            "8.  Stock: pieces, sleeves or heads that are limited. What is not listed is never short.",
            "9.  Aims: how much each measure counts. Leave them as they are at first.",
            "10. Save the book. Run bagwright check to find problems, then bagwright plan.");
    private static final List<String> CAUTIONS = List.of(
            "Wear eye protection when you bend or drill.",
            "Do not bend a hosel whose maker does not allow it.",
            "Tighten a sleeve bolt with a torque tool to its maker's stated value, and stop at the click.",
            "Work with epoxy in gloves and fresh air, and let it cure fully before a ball is hit.",
            "Check after the first shots that nothing works loose.",
            "Local rules and licensed practice come first.");
    private static final int STEPS_ROW = 3;
    private static final int SETTINGS_ROW = STEPS_ROW + STEPS.size() + 2;
    private static final int CAUTIONS_ROW = SETTINGS_ROW + StartSetting.values().length + 3;
    private static final int HELP_COLUMN = 2;
    private static final int CLOCK_COLUMN = 4;
    private static final int CLOCK_ROWS = 22;
    private static final float ROW_POINTS = 18;
    private static final int[] WIDTHS = {20, 22, 58, 3, 66};

    private final XSSFWorkbook workbook;
    private final TemplateStyles styles;
    private final XSSFSheet sheet;

    TemplateStart(XSSFWorkbook workbook, TemplateStyles styles) {
        this.workbook = workbook;
        this.styles = styles;
        this.sheet = workbook.createSheet(StartSetting.SHEET);
    }

    /** The row, from 0, in which the template asks for a setting; its value is in column B. */
    static int rowOf(StartSetting setting) {
        return SETTINGS_ROW + 2 + List.of(StartSetting.values()).indexOf(setting);
    }

    void add() throws IOException {
        for (int column = 0; column < WIDTHS.length; column++) {
            sheet.setColumnWidth(column, WIDTHS[column] * 256);
        }
        for (int row = 0; row <= CAUTIONS_ROW + CAUTIONS.size(); row++) {
            sheet.createRow(row).setHeightInPoints(ROW_POINTS);
        }
        sheet.getRow(0).setHeightInPoints(28);
        put(0, 0, "A golfer's bag", Role.TITLE);
        put(1, 0, "Fill in the yellow cells, sheet by sheet. Grey rows are examples and are not read.", Role.SUBTITLE);
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, CLOCK_COLUMN));
        addLines(STEPS_ROW, "How to fill this book", STEPS);
        addSettings();
        addLines(CAUTIONS_ROW, "Cautions at the bench", CAUTIONS);
        addClock();
        sheet.setDisplayGridlines(false);
        TemplatePrint.fit(sheet, Arrays.stream(WIDTHS).sum(), 0);
    }

    private void addLines(int row, String group, List<String> lines) {
        addGroup(row, group);
        for (int index = 0; index < lines.size(); index++) {
            int at = row + 1 + index;
            put(at, 0, lines.get(index), Role.TEXT);
            put(at, 1, "", Role.TEXT);
            put(at, HELP_COLUMN, "", Role.TEXT);
            sheet.addMergedRegion(new CellRangeAddress(at, at, 0, HELP_COLUMN));
        }
    }

    private void addGroup(int row, String group) {
        for (int column = 0; column <= HELP_COLUMN; column++) {
            put(row, column, column == 0 ? group : "", Role.GROUP);
        }
    }

    private void addSettings() {
        addGroup(SETTINGS_ROW, "Settings of this book");
        put(SETTINGS_ROW + 1, 0, "Setting", Role.HEADING);
        put(SETTINGS_ROW + 1, 1, "Value", Role.HEADING);
        put(SETTINGS_ROW + 1, HELP_COLUMN, "What it is", Role.HEADING);
        for (StartSetting setting : StartSetting.values()) {
            int row = rowOf(setting);
            put(row, 0, setting.label(), Role.TEXT);
            put(row, 1, setting.usual(), Role.INPUT).setCellStyle(styles.centred(Role.INPUT, "General"));
            put(row, HELP_COLUMN, setting.help(), Role.FAINT).setCellStyle(styles.indented(Role.FAINT));
            if (!setting.words().isEmpty()) {
                TemplateValidations.words(
                        sheet, new CellRangeAddressList(row, row, 1, 1), setting.words(), setting.label());
            }
        }
    }

    private void addClock() throws IOException {
        put(STEPS_ROW, CLOCK_COLUMN, "The clock: which way the shaft leans off the bore", Role.GROUP);
        int picture = workbook.addPicture(ClockPicture.png(), Workbook.PICTURE_TYPE_PNG);
        XSSFClientAnchor anchor = new XSSFClientAnchor();
        anchor.setCol1(CLOCK_COLUMN);
        anchor.setRow1(STEPS_ROW + 1);
        anchor.setCol2(CLOCK_COLUMN);
        double widthPoints = CLOCK_ROWS * ROW_POINTS * ClockPicture.WIDTH / ClockPicture.HEIGHT;
        anchor.setDx2(Units.toEMU(widthPoints));
        anchor.setRow2(STEPS_ROW + 1 + CLOCK_ROWS);
        anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
        sheet.createDrawingPatriarch()
                .createPicture(anchor, picture)
                .getCTPicture()
                .getNvPicPr()
                .getCNvPr()
                .setDescr(ClockPicture.IN_WORDS);
    }

    private XSSFCell put(int row, int column, String text, Role role) {
        XSSFRow cells = sheet.getRow(row);
        XSSFCell cell = cells.createCell(column);
        cell.setCellStyle(styles.of(role));
        if (text.matches("\\d+")) {
            cell.setCellValue(Double.parseDouble(text));
        } else if (!text.isEmpty()) {
            cell.setCellValue(text);
        }
        return cell;
    }
}
