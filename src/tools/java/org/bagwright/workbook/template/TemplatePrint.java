package org.bagwright.workbook.template;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.workbook.pen.PageSetup;

/** How the template's sheets print. */
final class TemplatePrint {
    private static final double MARGIN_INCHES = 0.4;
    /** How many characters are as wide as a page across, printed in letters of 8 points or more. */
    private static final double PAGE_CHARS = 172;

    private TemplatePrint() {}

    /**
     * A4 across, on as few pages next to each other as can be read, with the sheet's name and the page number at the foot. Its
     * print area is hidden, so that a whole book prints its results alone: who wants the sheet on paper clears the area.
     *
     * @param widthChars how wide the sheet is
     * @param fixedChars how much of it is repeated on each page
     */
    static void fit(XSSFSheet sheet, double widthChars, double fixedChars) {
        int pages = (int) Math.ceil((widthChars - fixedChars) / (PAGE_CHARS - fixedChars));
        PrintSetup print = sheet.getPrintSetup();
        sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
        print.setLandscape(true);
        sheet.setFitToPage(true);
        print.setFitWidth((short) pages);
        print.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.TOP, MARGIN_INCHES);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
        PageSetup.leaveOut(sheet);
    }
}
