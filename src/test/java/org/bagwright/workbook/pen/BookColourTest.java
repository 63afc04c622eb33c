package org.bagwright.workbook.pen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.workbook.Contrast;
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
        Contrast contrast = new Contrast(one.hex(), other.hex());
        return grey ? contrast.inGrey() : contrast.inColour();
    }
}
