package org.bagwright.workbook.pen;

import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;

/** How a series looks; the looks differ in lightness and shape, so that they print in grey. */
public enum SeriesLook {
    TODAY("A9B7BD", MarkerStyle.CIRCLE, 7),
    PLANNED("2E4A57", MarkerStyle.DIAMOND, 10),
    LIVE("C98A2D", MarkerStyle.SQUARE, 5),
    WISH("7A4E3A", MarkerStyle.DASH, 16),
    TODAY_RING("A9B7BD", MarkerStyle.CIRCLE, 14),
    CLOSED("D3DBDE", MarkerStyle.X, 7),
    ALLOWED("7C8B92", MarkerStyle.CIRCLE, 6),
    BAND("9AA8AE", MarkerStyle.NONE, 2);

    private static final int MARKER_LINE_EMU = 19050;

    final Rgb colour;
    final MarkerStyle marker;
    final short size;

    SeriesLook(String rgb, MarkerStyle marker, int size) {
        this.colour = new Rgb(rgb);
        this.marker = marker;
        this.size = (short) size;
    }

    /** Whether the series is points without a line between them. */
    boolean pointsOnly() {
        return this == LIVE || this == WISH;
    }

    /** The line between its points. */
    XDDFLineProperties line() {
        return colour.line(this == BAND ? 0.75 : 1.5);
    }

    static XDDFLineProperties noLine() {
        return new XDDFLineProperties(new XDDFNoFillProperties());
    }

    /** Gives the colour to a marker. */
    void paint(CTMarker drawn) {
        var shape = drawn.addNewSpPr();
        shape.addNewSolidFill().addNewSrgbClr().setVal(colour.bytes());
        shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(colour.bytes());
        shape.getLn().setW(MARKER_LINE_EMU);
    }
}
