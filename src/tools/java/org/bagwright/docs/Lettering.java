package org.bagwright.docs;

/**
 * How words are set.
 *
 * @param anchor which part of the words stands at their place: start, middle or end
 */
record Lettering(double sizePx, boolean bold, String anchor, String colour) {
    static final Lettering TITLE = new Lettering(16, true, "start", Palette.INK);
    static final Lettering HEADING = new Lettering(13, true, "start", Palette.SLATE);
    static final Lettering LABEL = new Lettering(12, false, "start", Palette.INK);
    static final Lettering NOTE = new Lettering(11.5, false, "start", Palette.FAINT);

    Lettering middle() {
        return new Lettering(sizePx, bold, "middle", colour);
    }

    Lettering end() {
        return new Lettering(sizePx, bold, "end", colour);
    }

    Lettering strong() {
        return new Lettering(sizePx, true, anchor, colour);
    }

    /** Where words of this many letters begin, px from their place; a sans-serif letter is about half its size wide. */
    double startPx(int letters) {
        double widthPx = widthPx(letters);
        return anchor.equals("end") ? -widthPx : anchor.equals("middle") ? -widthPx / 2 : 0;
    }

    double widthPx(int letters) {
        return (bold ? 0.56 : 0.51) * sizePx * letters;
    }
}
