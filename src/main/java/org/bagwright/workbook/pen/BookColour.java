package org.bagwright.workbook.pen;

/**
 * Every colour of cells and charts. Fills that may touch differ by at least 1.5 in contrast, in colour and printed in grey,
 * and letters by at least 4.5 from the fill under them (contrast of WCAG 2.1 [memory]).
 */
public enum BookColour {
    /** Letters. */
    INK("22313A"),
    /** Letters of remarks. */
    FAINT("4F5D65"),
    /** Hair lines and thin frames. */
    RULE("B9C6CB"),
    /** Lines of the grid of a chart. */
    GRID("DDE4E7"),
    PAPER("FFFFFF"),
    /** Headings, with letters in the colour of paper. */
    SLATE("2F4A56"),
    /** Names across a table, and what is marked. */
    BAND("C8D4D9"),
    /** Cells to choose and fill in. */
    SAND("E4D193"),
    /** Marks of today in charts. */
    GREY("6F7F87"),
    /** A measure that is near its tolerance; marks of live in charts. */
    CLOSE("D6A044"),
    /** A measure outside its tolerance, with letters in the colour of paper. */
    OFF("A8452B");

    private final String hex;

    BookColour(String hex) {
        this.hex = hex;
    }

    /** Its six hexadecimal digits. */
    public String hex() {
        return hex;
    }

    /** The colour of letters on a fill of this colour. */
    public BookColour letters() {
        return this == SLATE || this == OFF ? PAPER : INK;
    }

    Rgb rgb() {
        return new Rgb(hex);
    }
}
