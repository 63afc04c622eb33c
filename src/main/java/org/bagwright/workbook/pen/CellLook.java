package org.bagwright.workbook.pen;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** The style of a cell while it is put together. */
final class CellLook {
    private final XSSFCellStyle style;

    CellLook(XSSFCellStyle style) {
        this.style = style;
        style.setVerticalAlignment(VerticalAlignment.CENTER);
    }

    CellLook filled(String rgb) {
        style.setFillForegroundColor(new Rgb(rgb).ofCell());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        return this;
    }

    CellLook centred() {
        style.setAlignment(HorizontalAlignment.CENTER);
        return this;
    }

    CellLook right() {
        style.setAlignment(HorizontalAlignment.RIGHT);
        return this;
    }

    /** Kept off the left edge of the cell. */
    CellLook indented() {
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
        return this;
    }

    CellLook wrapped() {
        style.setWrapText(true);
        return this;
    }

    CellLook paragraph() {
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return wrapped();
    }

    /** Open to a person on a protected sheet. */
    CellLook open() {
        style.setLocked(false);
        return this;
    }

    CellLook underlined(String rgb) {
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(new Rgb(rgb).ofCell());
        return this;
    }

    CellLook lineAbove(String rgb) {
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(new Rgb(rgb).ofCell());
        return this;
    }

    CellLook framed(String rgb) {
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        style.setTopBorderColor(new Rgb(rgb).ofCell());
        style.setBottomBorderColor(new Rgb(rgb).ofCell());
        style.setLeftBorderColor(new Rgb(rgb).ofCell());
        style.setRightBorderColor(new Rgb(rgb).ofCell());
        return this;
    }
}
