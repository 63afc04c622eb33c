package org.bagwright.page;

import java.io.IOException;
import java.nio.file.Path;
import org.bagwright.BookSketch;

/** Small books that a page must make sense of. */
enum PageBooks {
    /** No setting keeps the look that the golfer accepts, nor the gap that he asks for. */
    BROKEN {
        @Override
        BookSketch sketch() {
            BookSketch book = golfer("Golfer A", "R").put("Golfers", 1, "Most closed", -1);
            book.put("Golfers", 1, "Most open", -1.5).put("Golfers", 1, "Gap least", 15);
            book.put("Golfers", 1, "Most changes", 1);
            clubs(ring(book, "Sleeve P")).row(1, "Driver", "driver", 10.5, 58, "Sleeve P", "5");
            return book.row(2, "3 wood", "wood", 15, 57, "Sleeve P", "1")
                    .row(3, "5 wood", "wood", 17, 57.5, null, null);
        }
    },
    /** A sleeve of which only the table is known. */
    RATED {
        @Override
        BookSketch sketch() {
            BookSketch book = golfer("Golfer A", "R").sheet("Sleeves", "Sleeve, Setting, Loft change, Lie change");
            for (int step = -2; step <= 2; step++) {
                book.row("Tabled", step == 0 ? "Std" : (step > 0 ? "+" : "") + step, step * 0.75, Math.abs(step) * 0.5);
            }
            clubs(book).row(1, "Driver", "driver", 10.5, 58, "Tabled", "Std");
            return book.row(2, "3 wood", "wood", 15, 57, "Tabled", "+1").row(3, "5 wood", "wood", 18, 58, null, null);
        }
    },
    /** One golfer who plays from the other side. */
    LEFT {
        @Override
        BookSketch sketch() {
            BookSketch book = clubs(ring(golfer("Golfer L", "L"), "Sleeve P"));
            book.row(1, "Driver", "driver", 10.5, 58, "Sleeve P", "4");
            return book.row(2, "3 wood", "wood", 15, 57, "Sleeve P", "1").row(3, "7 iron", "iron", 32, 62, null, null);
        }
    },
    /** Fourteen drivers for one slot. */
    CANDIDATES {
        @Override
        BookSketch sketch() {
            BookSketch book = clubs(ring(golfer("Golfer A", "R"), "Sleeve P"));
            for (int head = 1; head <= 14; head++) {
                book.row(1, "Driver " + head, "driver", 8 + 0.5 * head, 57 + 0.1 * head, "Sleeve P", "1");
            }
            return book.row(2, "3 wood", "wood", 15, 57, "Sleeve P", "1").row(3, "5 iron", "iron", 25, 61, null, null);
        }
    },
    /** Names that would do harm as markup or as script, or that turn the line round. */
    HOSTILE {
        @Override
        BookSketch sketch() {
            String golfer = "</script><script>document.title='hit'</script>";
            BookSketch book = ring(golfer(golfer, "R"), "</style><b>\"P\"");
            clubs(book).row(1, "<img src=x onerror=document.title='hit'>", "driver", 10.5, 58, "</style><b>\"P\"", "4");
            book.row(2, "'\"&amp;<!--", "wood", 15, 57, "</style><b>\"P\"", "1");
            book.row(3, "\u05d0\u05d1\u202e gnorw", "hybrid", 20, 58, null, null);
            return book.row(4, "\ud83c\udfcc\ufe0f\u200d\u2642\ufe0f iron", "iron", 27, 61, null, null);
        }
    };

    abstract BookSketch sketch();

    static BookSketch golfer(String name, String hand) {
        return new BookSketch().sheet("Golfers", "Golfer, Hand, Driver speed").row(name, hand, 95);
    }

    static BookSketch ring(BookSketch book, String name) {
        book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend");
        for (int mark = 1; mark <= 8; mark++) {
            book.row(name, String.valueOf(mark), mark == 1 ? 12 : 1.5 * (mark - 1), 1.5);
        }
        return book;
    }

    static BookSketch clubs(BookSketch book) {
        return book.sheet("Clubs", "Slot, Club, Kind, Loft, Lie, Sleeve, Setting");
    }

    Path write(Path file) throws IOException {
        return sketch().write(file);
    }
}
