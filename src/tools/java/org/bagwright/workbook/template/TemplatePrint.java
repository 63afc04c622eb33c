package org.bagwright.workbook.template;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How the template's sheets print. */
final class TemplatePrint {
    private static final double MARGIN_INCHES = 0.4;

    private TemplatePrint() {}

    /** A4, as wide as the page, with the sheet's name and the page number at the foot. */
    static void fit(XSSFSheet sheet, boolean landscape) {
        PrintSetup print = sheet.getPrintSetup();
        sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
        print.setLandscape(landscape);
        sheet.setFitToPage(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.TOP, MARGIN_INCHES);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
    }
}
