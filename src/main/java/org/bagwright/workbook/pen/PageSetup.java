package org.bagwright.workbook.pen;

import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.PaneInformation;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How a sheet prints: A4, on as few pages next to each other as leave its letters large enough to read, with the names of file
 * and sheet and the page number at the foot. Rows and columns count from 0.
 *
 * @param landscape whether the page is wider than high
 * @param headingRow the row that is repeated on every page, -1 for none
 * @param lastRow the last row that is printed
 * @param lastColumn the last column that is printed
 */
public record PageSetup(boolean landscape, int headingRow, int lastRow, int lastColumn) {
    /** Letters of 10 points are printed in 8 points or more. A program that rounds the scale down needs a little more. */
    private static final double LEAST_SCALE_RATIO = 0.805;

    /** A hidden column far from every table. */
    private static final int HIDDEN_COLUMN = 701;

    /** About the same in the whole percents of a page's fixed scale; it leaves a little for letters that are made to fit. */
    private static final short LEAST_SCALE_PERCENT = 82;

    private static final double POINTS_PER_INCH = 72;
    /** How wide a digit of 10 points is where it is widest; the widths of columns are counted in digits. */
    private static final double DIGIT_POINTS = 5.6;

    private static final double COLUMN_UNITS_PER_DIGIT = 256;
    private static final double A4_SHORT_INCHES = 8.27;
    private static final double A4_LONG_INCHES = 11.69;
    private static final double SIDE_INCHES = 0.3;
    private static final double CARD_SIDE_INCHES = 0.3;
    private static final double CARD_BOTTOM_INCHES = 0.55;
    private static final double CARD_TOP_INCHES = 0.35;
    private static final double TOP_INCHES = 0.4;
    private static final double BOTTOM_INCHES = 0.55;

    public static PageSetup landscape(int headingRow, int lastRow, int lastColumn) {
        return new PageSetup(true, headingRow, lastRow, lastColumn);
    }

    public static PageSetup upright(int headingRow, int lastRow, int lastColumn) {
        return new PageSetup(false, headingRow, lastRow, lastColumn);
    }

    /** An upright page with narrow margins, without a row that is repeated. */
    public static PageSetup card(int lastRow, int lastColumn) {
        return new PageSetup(false, -1, lastRow, lastColumn);
    }

    /**
     * Leaves a sheet out when its whole book is printed: its print area is hidden. Hiding the sheet does not do, since some
     * programs print hidden sheets.
     */
    public static void leaveOut(XSSFSheet sheet) {
        sheet.setColumnHidden(HIDDEN_COLUMN, true);
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), HIDDEN_COLUMN, HIDDEN_COLUMN, 0, 0);
    }

    void applyTo(XSSFSheet sheet) {
        page(sheet);
        margins(sheet);
        sheet.getFooter().setLeft("&F - &A");
        sheet.getFooter().setRight("&P / &N");
        if (headingRow >= 0) {
            sheet.setRepeatingRows(new CellRangeAddress(headingRow, headingRow, -1, -1));
        }
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, lastColumn, 0, lastRow);
        sheet.setDisplayGridlines(false);
    }

    private void page(XSSFSheet sheet) {
        sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
        sheet.getPrintSetup().setLandscape(landscape);
        sheet.setFitToPage(true);
        sheet.setAutobreaks(true);
        sheet.getPrintSetup().setFitWidth((short) pagesWide(sheet));
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    /** How many points of rows a page has room for, at the scale at which all columns fit. */
    public double rowsPoints(XSSFSheet sheet) {
        return paperHeightPoints() * Math.max(1, widthPoints(sheet, lastColumn + 1) / paperWidthPoints());
    }

    /**
     * Prints a sheet at the smallest scale at which its letters can be read, so that a page has as many rows as it can, and
     * gives a page to fill with them. A sheet that is too wide for it keeps its scale.
     *
     * @param headingPoints how high the rows are that every page repeats
     */
    public PageFill fillSmall(XSSFSheet sheet, double headingPoints) {
        if (pagesWide(sheet) > 1) {
            return new PageFill(sheet, rowsPoints(sheet) - headingPoints);
        }
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale(LEAST_SCALE_PERCENT);
        return new PageFill(sheet, paperHeightPoints() * 100 / LEAST_SCALE_PERCENT - headingPoints);
    }

    private double paperHeightPoints() {
        return landscape
                ? (A4_SHORT_INCHES - TOP_INCHES - BOTTOM_INCHES) * POINTS_PER_INCH
                : (A4_LONG_INCHES - CARD_TOP_INCHES - CARD_BOTTOM_INCHES) * POINTS_PER_INCH;
    }

    private double paperWidthPoints() {
        return ((landscape ? A4_LONG_INCHES : A4_SHORT_INCHES) - 2 * sideInches()) * POINTS_PER_INCH;
    }

    /** The columns that stay in view are repeated on each page. */
    private int pagesWide(XSSFSheet sheet) {
        double pagePoints = paperWidthPoints() / LEAST_SCALE_RATIO;
        double widthPoints = widthPoints(sheet, lastColumn + 1);
        if (widthPoints <= pagePoints) {
            return 1;
        }
        PaneInformation pane = sheet.getPaneInformation();
        int fixed = pane == null ? 0 : pane.getVerticalSplitLeftColumn();
        if (fixed > 0) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, fixed - 1));
        }
        double fixedPoints = widthPoints(sheet, fixed);
        return (int) Math.ceil((widthPoints - fixedPoints) / (pagePoints - fixedPoints));
    }

    private static double widthPoints(XSSFSheet sheet, int columns) {
        return IntStream.range(0, columns)
                .filter(column -> !sheet.isColumnHidden(column))
                .mapToDouble(column -> sheet.getColumnWidth(column) / COLUMN_UNITS_PER_DIGIT * DIGIT_POINTS)
                .sum();
    }

    private double sideInches() {
        return landscape ? SIDE_INCHES : CARD_SIDE_INCHES;
    }

    private void margins(XSSFSheet sheet) {
        double sideInches = sideInches();
        sheet.setMargin(PageMargin.LEFT, sideInches);
        sheet.setMargin(PageMargin.RIGHT, sideInches);
        sheet.setMargin(PageMargin.TOP, landscape ? TOP_INCHES : CARD_TOP_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, landscape ? BOTTOM_INCHES : CARD_BOTTOM_INCHES);
    }
}
