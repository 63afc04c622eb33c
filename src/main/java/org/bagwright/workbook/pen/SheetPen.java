package org.bagwright.workbook.pen;

import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes cells of one sheet; rows and columns count from 0. */
public final class SheetPen {
    /** How high a row must be for letters of a title. */
    public static final double TITLE_ROW_POINTS = 26;

    private final XSSFSheet sheet;
    private final Sheet rows;
    private final BookStyles styles;

    public SheetPen(XSSFSheet sheet, BookStyles styles) {
        this(sheet, sheet, styles);
    }

    /** A pen for a sheet whose rows are kept elsewhere. */
    public SheetPen(XSSFSheet sheet, Sheet rows, BookStyles styles) {
        this.sheet = sheet;
        this.rows = rows;
        this.styles = styles;
    }

    /** The sheet itself: all but its rows. */
    public XSSFSheet sheet() {
        return sheet;
    }

    /** Where its rows are kept. */
    Sheet rows() {
        return rows;
    }

    public Cell text(int row, int column, BookStyles.Role role, String text) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role));
        cell.setCellValue(text);
        return cell;
    }

    public Cell number(int row, int column, BookStyles.Role role, String format, double value) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role, format));
        cell.setCellValue(value);
        return cell;
    }

    public Cell blank(int row, int column, BookStyles.Role role) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role));
        return cell;
    }

    /** A text that is a plain number becomes a number, so that what a person types by hand equals it. */
    public Cell mark(int row, int column, BookStyles.Role role, String mark) {
        return mark.matches("0|[1-9][0-9]{0,8}")
                ? number(row, column, role, "General", Double.parseDouble(mark))
                : text(row, column, role, mark);
    }

    /** A formula with the value that a reader shows who does not calculate. */
    public Cell formula(int row, int column, BookStyles.Role role, String format, String formula, double cached) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role, format));
        cell.setCellFormula(formula);
        cell.setCellValue(cached);
        return cell;
    }

    public Cell formula(int row, int column, BookStyles.Role role, String formula, String cached) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role));
        cell.setCellFormula(formula);
        cell.setCellValue(cached);
        return cell;
    }

    /** A formula that gives a number or a blank text. */
    public Cell formula(
            int row, int column, BookStyles.Role role, String format, String formula, OptionalDouble cached) {
        Cell cell = cell(row, column);
        cell.setCellStyle(styles.of(role, format));
        cell.setCellFormula(formula);
        if (cached.isPresent()) {
            cell.setCellValue(cached.getAsDouble());
        } else {
            cell.setCellValue("");
        }
        return cell;
    }

    public void heading(int row, int column, String text, double widthChars) {
        text(row, column, BookStyles.Role.HEADING, text);
        width(column, widthChars);
    }

    public void width(int column, double widthChars) {
        sheet.setColumnWidth(column, (int) Math.round(widthChars * 256));
    }

    public void height(int row, double points) {
        row(row).setHeightInPoints((float) points);
    }

    /** Hides a row. */
    public void hide(int row) {
        row(row).setZeroHeight(true);
    }

    /** The height of a row that has none of its own yet. */
    public void usualHeight(int row, double points) {
        Row found = row(row);
        if (found.getHeight() == sheet.getDefaultRowHeight()) {
            found.setHeightInPoints((float) points);
        }
    }

    /** Merges cells that no other merge may overlap: the library's check of that takes minutes for a large team. */
    public void merge(int firstRow, int lastRow, int firstColumn, int lastColumn) {
        if (firstRow < lastRow || firstColumn < lastColumn) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(firstRow, lastRow, firstColumn, lastColumn));
        }
    }

    public void print(PageSetup page) {
        page.applyTo(sheet);
    }

    /**
     * Locks the computed cells without a password: cells to choose and fill in stay open. Sorting, filtering, the widths and
     * heights, hidden columns and rows, and charts stay free.
     */
    public void protect() {
        sheet.enableLocking();
        sheet.lockSort(false);
        sheet.lockAutoFilter(false);
        sheet.lockFormatColumns(false);
        sheet.lockFormatRows(false);
        sheet.lockSelectLockedCells(false);
        sheet.lockSelectUnlockedCells(false);
        sheet.lockObjects(false);
        sheet.lockScenarios(false);
    }

    /** The number of the format by which a rule fills cells with a colour. */
    public int ruleFill(BookColour colour) {
        return styles.ruleFill(colour);
    }

    private Row row(int row) {
        Row found = rows.getRow(row);
        return found == null ? rows.createRow(row) : found;
    }

    private Cell cell(int row, int column) {
        return row(row).createCell(column);
    }

    /** A reference such as {@code $C7}: the column held, the row free. */
    public static String ref(int row, int column) {
        return new CellReference(row, column, false, true).formatAsString();
    }

    /** A reference such as {@code $C$7}. */
    public static String held(int row, int column) {
        return new CellReference(row, column, true, true).formatAsString();
    }

    public static String letters(int column) {
        return CellReference.convertNumToColString(column);
    }
}
