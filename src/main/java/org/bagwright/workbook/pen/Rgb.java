package org.bagwright.workbook.pen;

import java.util.HexFormat;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xssf.usermodel.XSSFColor;

/** A colour by its six hexadecimal digits. A book may have any theme, so cells and charts set every colour themselves. */
record Rgb(String hex) {
    /** The schema of a cell's colour wants its opacity too. */
    private static final String OPAQUE = "FF";

    byte[] bytes() {
        return HexFormat.of().parseHex(hex);
    }

    XSSFColor ofCell() {
        return new XSSFColor(HexFormat.of().parseHex(OPAQUE + hex), null);
    }

    XDDFSolidFillProperties fill() {
        return new XDDFSolidFillProperties(XDDFColor.from(bytes()));
    }

    XDDFLineProperties line(double widthPoints) {
        XDDFLineProperties line = new XDDFLineProperties(fill());
        line.setWidth(widthPoints);
        return line;
    }
}
