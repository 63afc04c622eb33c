package org.bagwright.workbook.template;

import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.pen.BookStyles.Role;
import org.bagwright.workbook.schema.Column;

/** Adds one input sheet with headings to the template. */
final class TemplateSheet {
    private static final float POINTS_A_LINE = 14;
    private static final int USUAL_WIDTH_CHARS = 8;

    /** Letters are wider in some fonts than in others. */
    private static final double SURE_SHARE = 0.95;

    private static final int WIDTH_UNITS_PER_CHARACTER = 256;
    private static final int ABOUT_COLUMNS = 10;
    private static final int LEAST_ABOUT_COLUMNS = 6;
    private static final int HEADING_SPARE = 2;
    private static final int NOTE_COLUMNS = 4;
    private static final int NOTE_ROWS = 6;
    private static final int NOTE_CHARACTERS_A_ROW = 36;

    private final TemplateStyles styles;
    private final TemplateLayout layout;
    private final XSSFWorkbook workbook;
    private final XSSFSheet sheet;

    TemplateSheet(XSSFWorkbook workbook, TemplateStyles styles, TemplateLayout layout) {
        this.workbook = workbook;
        this.styles = styles;
        this.layout = layout;
        this.sheet = workbook.createSheet(layout.schema().name());
    }

    void add() {
        addTitle();
        addGroups();
        addHeadings();
        addInputRows();
        sheet.createFreezePane(layout.fixedColumns(), TemplateLayout.HEADING_ROW + 1);
        sheet.setDisplayGridlines(false);
        TemplatePrint.fit(sheet, widthChars(layout.columns().size()), widthChars(layout.fixedColumns()));
        if (sheet.getPrintSetup().getFitWidth() > 1) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, layout.fixedColumns() - 1));
        }
        sheet.setRepeatingRows(new CellRangeAddress(TemplateLayout.HEADING_ROW, TemplateLayout.HEADING_ROW, -1, -1));
    }

    private void addTitle() {
        XSSFRow title = sheet.createRow(TemplateLayout.TITLE_ROW);
        title.setHeightInPoints(26);
        put(title, 0, layout.schema().name(), Role.TITLE);
        XSSFRow about = sheet.createRow(TemplateLayout.ABOUT_ROW);
        put(about, 0, layout.schema().about(), Role.SUBTITLE);
        int last = Math.max(
                        LEAST_ABOUT_COLUMNS,
                        Math.min(ABOUT_COLUMNS, layout.columns().size()))
                - 1;
        sheet.addMergedRegion(new CellRangeAddress(TemplateLayout.ABOUT_ROW, TemplateLayout.ABOUT_ROW, 0, last));
        about.setHeightInPoints(POINTS_A_LINE * Math.max(2, aboutLines(last)));
    }

    /** On how many lines the description of the sheet fits across its first columns. */
    private int aboutLines(int lastColumn) {
        double widthChars = widthChars(lastColumn + 1);
        widthChars += USUAL_WIDTH_CHARS
                * Math.max(0, lastColumn + 1 - layout.columns().size());
        return (int) Math.ceil(layout.schema().about().length() / (SURE_SHARE * widthChars));
    }

    /** How wide the first columns are together. */
    private double widthChars(int columns) {
        return layout.columns().stream()
                .limit(columns)
                .mapToInt(TemplateSheet::width)
                .sum();
    }

    private void addGroups() {
        XSSFRow row = sheet.createRow(TemplateLayout.GROUP_ROW);
        if (!layout.groups().isEmpty()) {
            row.setHeightInPoints(18);
            for (int index = 0; index < layout.columns().size(); index++) {
                String group = layout.groups().getOrDefault(layout.columns().get(index), "");
                put(row, index, group, Role.GROUP);
            }
        }
    }

    private void addHeadings() {
        XSSFRow row = sheet.createRow(TemplateLayout.HEADING_ROW);
        row.setHeightInPoints(32);
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        for (int index = 0; index < layout.columns().size(); index++) {
            Column column = layout.columns().get(index);
            put(row, index, column.header(), Role.HEADING);
            addNote(drawing, row.getCell(index), column.note());
            sheet.setColumnWidth(index, width(column) * WIDTH_UNITS_PER_CHARACTER);
        }
    }

    private void addNote(XSSFDrawing drawing, XSSFCell cell, String text) {
        int row = cell.getRowIndex();
        int column = cell.getColumnIndex();
        int rows = Math.max(NOTE_ROWS, text.length() / NOTE_CHARACTERS_A_ROW + 2);
        ClientAnchor anchor =
                drawing.createAnchor(0, 0, 0, 0, column + 1, row + 1, column + 1 + NOTE_COLUMNS, row + 1 + rows);
        Comment note = drawing.createCellComment(anchor);
        note.setString(workbook.getCreationHelper().createRichTextString(text));
        note.setAuthor("Bagwright");
        cell.setCellComment(note);
    }

    private void addInputRows() {
        int first = TemplateLayout.FIRST_ROW;
        if (!layout.example().isEmpty()) {
            addRow(first, layout.example(), Role.FAINT);
            first++;
        }
        for (int row = first; row <= layout.lastRow(); row++) {
            int index = row - first;
            addRow(row, index < layout.filled().size() ? layout.filled().get(index) : List.of(), Role.INPUT);
        }
    }

    private void addRow(int index, List<Object> values, Role role) {
        XSSFRow row = sheet.createRow(index);
        row.setHeightInPoints(16);
        for (int column = 0; column < layout.columns().size(); column++) {
            Object value = column < values.size() ? values.get(column) : "";
            XSSFCell cell = put(row, column, value, role);
            cell.setCellStyle(style(role, layout.columns().get(column)));
        }
    }

    private XSSFCell put(XSSFRow row, int index, Object value, Role role) {
        XSSFCell cell = row.createCell(index);
        cell.setCellStyle(styles.of(role));
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (!value.toString().isEmpty()) {
            cell.setCellValue(value.toString());
        }
        return cell;
    }

    /** Names to the left, values in the middle; marks are text, so that 4-1 does not become a date. */
    private XSSFCellStyle style(Role role, Column column) {
        return switch (column.kind()) {
            case TEXT, GOLFER, SLEEVE, KIT -> styles.of(role);
            case MARK, MARKS -> styles.centred(role, "@");
            case DATE -> styles.centred(role, "yyyy-mm-dd");
            default -> styles.centred(role, "General");
        };
    }

    private static int width(Column column) {
        int content =
                switch (column.kind()) {
                    case TEXT -> column.header().equals("Note") ? 30 : 16;
                    case GOLFER, SLEEVE, KIT -> 16;
                    case MARKS, DATE -> 10;
                    default -> 7;
                };
        int word = Arrays.stream(column.header().split(" "))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        int twoLines = (column.header().length() + 1) / 2;
        return Math.max(content, Math.max(word, twoLines) + HEADING_SPARE);
    }
}
