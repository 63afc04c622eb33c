package org.bagwright.docs;

/**
 * How a line is drawn.
 *
 * @param dash lengths of dash and space, px, such as {@code 5 4}; empty is unbroken
 */
record Stroke(String colour, double widthPx, String dash) {
    static final Stroke NONE = new Stroke(Palette.NONE, 0, "");
    static final Stroke GRID = new Stroke(Palette.MIST, 1, "");
    static final Stroke AXIS = new Stroke(Palette.FAINT, 1, "");
    static final Stroke THIN = new Stroke(Palette.INK, 1, "");
    static final Stroke HELP = new Stroke(Palette.FAINT, 1, "4 3");
    static final Stroke OUTLINE = new Stroke(Palette.SLATE, 1.5, "");
    static final Stroke FIRST = new Stroke(Palette.SLATE, 2.5, "");
    static final Stroke SECOND = new Stroke(Palette.AMBER, 2.5, "8 4");
    static final Stroke THIRD = new Stroke(Palette.INK, 1.5, "2 3");

    Stroke wide(double widthPx) {
        return new Stroke(colour, widthPx, dash);
    }

    Stroke unbroken() {
        return new Stroke(colour, widthPx, "");
    }
}
