package org.bagwright.workbook.pen;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How a sheet prints: A4, as wide as the page, with the names of file and sheet and the page number at the foot. Rows and
 * columns count from 0.
 *
 * @param landscape whether the page is wider than high
 * @param headingRow the row that is repeated on every page, -1 for none
 * @param lastRow the last row that is printed
 * @param lastColumn the last column that is printed
 */
public record PageSetup(boolean landscape, int headingRow, int lastRow, int lastColumn) {
    private static final double SIDE_INCHES = 0.4;
    private static final double CARD_SIDE_INCHES = 0.3;
    private static final double CARD_BOTTOM_INCHES = 0.55;
    private static final double CARD_TOP_INCHES = 0.35;
    private static final double TOP_INCHES = 0.5;
    private static final double BOTTOM_INCHES = 0.6;

    public static PageSetup landscape(int headingRow, int lastRow, int lastColumn) {
        return new PageSetup(true, headingRow, lastRow, lastColumn);
    }

    /** An upright page with narrow margins, without a row that is repeated. */
    public static PageSetup card(int lastRow, int lastColumn) {
        return new PageSetup(false, -1, lastRow, lastColumn);
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
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    private void margins(XSSFSheet sheet) {
        double sideInches = landscape ? SIDE_INCHES : CARD_SIDE_INCHES;
        sheet.setMargin(PageMargin.LEFT, sideInches);
        sheet.setMargin(PageMargin.RIGHT, sideInches);
        sheet.setMargin(PageMargin.TOP, landscape ? TOP_INCHES : CARD_TOP_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, landscape ? BOTTOM_INCHES : CARD_BOTTOM_INCHES);
    }
}
