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

    CellLook filled(BookColour colour) {
        style.setFillForegroundColor(colour.rgb().ofCell());
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

    /** With smaller letters where a text is too long. */
    CellLook shrunk() {
        style.setShrinkToFit(true);
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

    CellLook underlined(BookColour colour) {
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(colour.rgb().ofCell());
        return this;
    }

    CellLook lineAbove(BookColour colour) {
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(colour.rgb().ofCell());
        return this;
    }

    CellLook framed(BookColour colour) {
        return framed(BorderStyle.THIN, colour);
    }

    CellLook framedHeavily(BookColour colour) {
        return framed(BorderStyle.MEDIUM, colour);
    }

    private CellLook framed(BorderStyle line, BookColour colour) {
        style.setBorderTop(line);
        style.setBorderBottom(line);
        style.setBorderLeft(line);
        style.setBorderRight(line);
        style.setTopBorderColor(colour.rgb().ofCell());
        style.setBottomBorderColor(colour.rgb().ofCell());
        style.setLeftBorderColor(colour.rgb().ofCell());
        style.setRightBorderColor(colour.rgb().ofCell());
        return this;
    }
}
