package org.bagwright.workbook.pen;

import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Where on a sheet a chart is: over some columns, or over one of equal parts of their width. Rows and columns count from 0.
 *
 * @param column the first column
 * @param row the first row
 * @param columns over how many columns
 * @param rows over how many rows
 * @param part which part of the width, from 0
 * @param parts in how many parts the width is divided
 */
public record ChartPlace(int column, int row, int columns, int rows, int part, int parts) {
    /** What a chart keeps clear of what is to its left, and half of it of the row above. */
    private static final int INSET_PIXELS = 12;

    public static ChartPlace whole(int column, int row, int columns, int rows) {
        return new ChartPlace(column, row, columns, rows, 0, 1);
    }

    XSSFClientAnchor anchor(XSSFSheet sheet) {
        double widthPixels = 0;
        for (int index = 0; index < columns; index++) {
            widthPixels += sheet.getColumnWidthInPixels(column + index);
        }
        XSSFClientAnchor anchor = new XSSFClientAnchor();
        double leftPixels = widthPixels * part / parts + INSET_PIXELS;
        int left = columnAt(sheet, leftPixels);
        anchor.setCol1(left);
        anchor.setDx1(Units.pixelToEMU((int) Math.round(leftPixels - before(sheet, left))));
        double rightPixels = widthPixels * (part + 1) / parts;
        int right = columnAt(sheet, rightPixels);
        anchor.setCol2(right);
        anchor.setDx2(Units.pixelToEMU((int) Math.round(rightPixels - before(sheet, right))));
        anchor.setRow1(row);
        anchor.setDy1(Units.pixelToEMU(INSET_PIXELS / 2));
        anchor.setRow2(row + rows);
        return anchor;
    }

    /** The column that is so far from the left edge of the first one. */
    private int columnAt(XSSFSheet sheet, double pixels) {
        int found = column;
        while (found < column + columns && before(sheet, found + 1) <= pixels) {
            found++;
        }
        return found;
    }

    private double before(XSSFSheet sheet, int end) {
        double pixels = 0;
        for (int index = column; index < end; index++) {
            pixels += sheet.getColumnWidthInPixels(index);
        }
        return pixels;
    }
}
