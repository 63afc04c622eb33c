package org.bagwright.workbook.pen;

import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;

/**
 * How a series looks. Live is the largest, then today, then planned: drawn in this order, each is seen where they are equal.
 * They differ in shape and lightness too, so that they print in grey.
 */
public enum SeriesLook {
    LIVE(BookColour.CLOSE, BookColour.CLOSE, MarkerStyle.SQUARE, 15),
    TODAY(BookColour.GREY, BookColour.GREY, MarkerStyle.CIRCLE, 11),
    PLANNED(BookColour.INK, BookColour.INK, MarkerStyle.DIAMOND, 7),
    CLOSED(BookColour.FAINT, BookColour.FAINT, MarkerStyle.X, 6),
    ALLOWED(BookColour.FAINT, BookColour.FAINT, MarkerStyle.CIRCLE, 5),
    PREDICTED(BookColour.SLATE, BookColour.SLATE, MarkerStyle.DASH, 9),
    CURVE(BookColour.RULE, BookColour.RULE, MarkerStyle.NONE, 2),
    BAND(BookColour.RULE, BookColour.RULE, MarkerStyle.NONE, 2);

    private static final int MARKER_LINE_EMU = 19050;

    final MarkerStyle marker;
    final short size;
    private final BookColour fill;
    private final BookColour edge;

    SeriesLook(BookColour fill, BookColour edge, MarkerStyle marker, int size) {
        this.fill = fill;
        this.edge = edge;
        this.marker = marker;
        this.size = (short) size;
    }

    /** Whether the series is points without a line between them. */
    boolean pointsOnly() {
        return this == LIVE;
    }

    /** The line between its points. */
    XDDFLineProperties line() {
        return edge.rgb().line(this == BAND ? 0.75 : 1.5);
    }

    /** The colour of its columns. */
    Rgb ofColumns() {
        return switch (this) {
            case BAND, TODAY -> BookColour.BAND.rgb();
            case PLANNED -> BookColour.SLATE.rgb();
            default -> fill.rgb();
        };
    }

    static XDDFLineProperties noLine() {
        return new XDDFLineProperties(new XDDFNoFillProperties());
    }

    /** Gives the colours to a marker. */
    void paint(CTMarker drawn) {
        var shape = drawn.addNewSpPr();
        shape.addNewSolidFill().addNewSrgbClr().setVal(fill.rgb().bytes());
        shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(edge.rgb().bytes());
        shape.getLn().setW(MARKER_LINE_EMU);
    }
}
