package org.bagwright.workbook.pen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Colours that can be told apart, on the screen and printed in grey: contrast as in WCAG 2.1 [memory]. */
@Tag("published")
class BookColourTest {
    private static final double LETTERS = 4.5;
    private static final double FILLS = 1.5;
    /** Fills that may touch, from light to dark; bands and cells to fill in are never next to each other. */
    private static final List<BookColour> WITH_BANDS =
            List.of(BookColour.PAPER, BookColour.BAND, BookColour.CLOSE, BookColour.OFF, BookColour.SLATE);

    private static final List<BookColour> WITH_CHOICES =
            List.of(BookColour.PAPER, BookColour.SAND, BookColour.CLOSE, BookColour.OFF, BookColour.SLATE);

    @Test
    void fillsThatTouch_differInColourAndInGrey() {
        for (List<BookColour> fills : List.of(WITH_BANDS, WITH_CHOICES)) {
            for (BookColour one : fills) {
                for (BookColour other : fills) {
                    assertTrue(one == other || contrast(one, other, false) >= FILLS, one + " and " + other);
                    assertTrue(one == other || contrast(one, other, true) >= FILLS, one + " and " + other + " in grey");
                }
            }
        }
    }

    @Test
    void letters_areReadOnEveryFill() {
        for (BookColour fill : WITH_BANDS) {
            assertTrue(contrast(fill, fill.letters(), false) >= LETTERS, "letters on " + fill);
            assertTrue(contrast(fill, fill.letters(), true) >= LETTERS, "letters on " + fill + " in grey");
        }
        assertTrue(contrast(BookColour.SAND, BookColour.SAND.letters(), true) >= LETTERS);
        assertTrue(contrast(BookColour.PAPER, BookColour.FAINT, true) >= LETTERS);
    }

    private static double contrast(BookColour one, BookColour other, boolean grey) {
        double first = luminance(one, grey);
        double second = luminance(other, grey);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(BookColour colour, boolean grey) {
        byte[] rgb = colour.rgb().bytes();
        double red = (rgb[0] & 0xFF) / 255.0;
        double green = (rgb[1] & 0xFF) / 255.0;
        double blue = (rgb[2] & 0xFF) / 255.0;
        return grey
                ? linear(0.299 * red + 0.587 * green + 0.114 * blue)
                : 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double linear(double part) {
        return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
