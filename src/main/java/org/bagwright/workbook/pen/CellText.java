package org.bagwright.workbook.pen;

/**
 * How much room a text needs in a cell, in letters of 10 points. Widths are counted in digits.
 *
 * @param text the text
 */
public record CellText(String text) {
    private static final double LINE_HEIGHT_POINTS = 12.4;
    /** What a row has besides its lines. */
    private static final double ROW_POINTS = 0.8;

    /** Between the widths of a digit in the programs that draw it narrowest and widest, letters of 10 points. */
    private static final double DIGIT_POINTS = 5.5;
    /** The indent and what is kept free at the edges of a cell. */
    private static final double EDGE_CHARS = 2.3;

    private static final double LINE_EDGE_CHARS = 0.95;
    private static final double WIDEST_DIGIT_POINTS = 5.85;

    private static final String NARROW = " .,:;'!|()[]/-fijlrtI";
    private static final String WIDE = "mwMWABCDEGHKNOPQRSUVXY";
    private static final double NARROW_POINTS = 2.8;
    private static final double USUAL_POINTS = 5.6;
    private static final double WIDE_POINTS = 7.2;
    private static final double ARROW_POINTS = 10;
    private static final char ARROW = '\u2192';

    /** How wide the column must be for the text on one line, without an indent. */
    public double widthChars() {
        return text.chars().mapToDouble(CellText::points).sum() / WIDEST_DIGIT_POINTS + LINE_EDGE_CHARS;
    }

    /** How high the row must be in a column that wraps the text between words. */
    public double heightPoints(double widthChars) {
        int lines = text.lines().mapToInt(line -> lines(line, widthChars)).sum();
        return ROW_POINTS + LINE_HEIGHT_POINTS * Math.max(1, lines);
    }

    private static int lines(String paragraph, double widthChars) {
        double room = (widthChars - EDGE_CHARS) * DIGIT_POINTS;
        double filled = 0;
        int lines = 1;
        for (String word : paragraph.split(" ")) {
            double width = word.chars().mapToDouble(CellText::points).sum();
            if (filled > 0 && filled + NARROW_POINTS + width > room) {
                lines++;
                filled = 0;
            }
            filled += (filled > 0 ? NARROW_POINTS : 0) + width;
        }
        return lines;
    }

    private static double points(int letter) {
        if (letter == ARROW) {
            return ARROW_POINTS;
        }
        if (NARROW.indexOf(letter) >= 0) {
            return NARROW_POINTS;
        }
        return WIDE.indexOf(letter) >= 0 ? WIDE_POINTS : USUAL_POINTS;
    }
}
