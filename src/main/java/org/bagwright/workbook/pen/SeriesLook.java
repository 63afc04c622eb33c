package org.bagwright.workbook.pen;

import org.apache.poi.xddf.usermodel.chart.MarkerStyle;

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

    final String rgb;
    final MarkerStyle marker;
    final int size;

    SeriesLook(String rgb, MarkerStyle marker, int size) {
        this.rgb = rgb;
        this.marker = marker;
        this.size = size;
    }

    /** How thick its line is, points. */
    double linePoints() {
        return this == BAND ? 0.75 : 1.5;
    }

    /** Whether the series is points without a line between them. */
    boolean pointsOnly() {
        return this == LIVE || this == WISH;
    }
}
