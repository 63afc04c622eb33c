package org.bagwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.bagwright.BookSketch;

/** Saves a small book again and again as spreadsheet programs do, some saves going wrong. Each has another loft. */
final class BookSaves {
    private static final double FIRST_LOFT_DEG = 9;
    private static final double STEP_DEG = 0.01;

    private final Path book;
    private final Path scratch;
    private final long pauseMs;
    private int broken;

    /**
     * @param scratch a folder besides that of the book
     * @param pauseMs the shortest time between two saves, milliseconds; others are up to five times as long
     */
    BookSaves(Path book, Path scratch, long pauseMs) {
        this.book = book;
        this.scratch = scratch;
        this.pauseMs = pauseMs;
    }

    static double loftDeg(int number) {
        return FIRST_LOFT_DEG + number * STEP_DEG;
    }

    /** How many saves went wrong so far. */
    int broken() {
        return broken;
    }

    /** Saves number 0 to {@code last}; the last one is whole. */
    void all(int last) throws Exception {
        for (int number = 0; number <= last; number++) {
            save(number, number == last ? 0 : number % 10);
            Thread.sleep(pauseMs * (1 + number * 7 % 5));
        }
    }

    private void save(int number, int how) throws Exception {
        byte[] whole = book(number, loftDeg(number));
        broken += how == 2 || how == 4 || how == 6 || how == 8 ? 1 : 0;
        switch (how) {
            case 2 -> Files.write(book, Arrays.copyOf(whole, whole.length / 2));
            case 3 -> inTwoPieces(whole);
            case 4 -> Files.write(book, new byte[0]);
            case 6 -> Files.deleteIfExists(book);
            case 7 -> deletedBefore(whole);
            case 8 -> Files.write(book, book(number, "ten"));
            default -> plainOrRenamed(number, whole);
        }
    }

    private byte[] book(int number, Object loft) throws IOException {
        Path made = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Gap wish")
                .row("Golfer A", 1, "Driver", "driver", loft, 58, 45, "S", "2", 20)
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "S", "1", 22)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .write(scratch.resolve("save-" + number + ".xlsx"));
        return Files.readAllBytes(made);
    }

    private void inTwoPieces(byte[] whole) throws Exception {
        Files.write(book, Arrays.copyOf(whole, whole.length / 3));
        Thread.sleep(pauseMs / 2);
        Files.write(book, whole);
    }

    private void deletedBefore(byte[] whole) throws Exception {
        Files.deleteIfExists(book);
        Thread.sleep(pauseMs / 2);
        Files.write(book, whole);
    }

    private void plainOrRenamed(int number, byte[] whole) throws IOException {
        if (number % 2 == 0) {
            Files.write(book, whole);
        } else {
            Path temporary = Files.write(book.resolveSibling("~temporary.tmp"), whole);
            Files.move(temporary, book, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
