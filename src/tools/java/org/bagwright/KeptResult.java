package org.bagwright;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.cli.text.Terminal;

/**
 * A small planned book with every result sheet: two golfers who share a stock, one right-handed who squares the face, one
 * left-handed who does not and has a must that cannot be kept; sleeves of both sorts, weights, bends, a candidate, and shots
 * of two days.
 */
public final class KeptResult {
    /** The committed one. */
    public static final Path KEPT = Path.of("src", "test", "books", "result.xlsx");

    private KeptResult() {}

    public static void main(String[] args) throws IOException {
        Files.createDirectories(KEPT.getParent());
        Path folder = Files.createTempDirectory("bagwright-result");
        Files.write(KEPT, Files.readAllBytes(planned(folder)));
    }

    /** Plans it in a folder. */
    public static Path planned(Path folder) throws IOException {
        Path book = folder.resolve("book.xlsx");
        try (XSSFWorkbook made = book();
                OutputStream output = Files.newOutputStream(book)) {
            made.write(output);
        }
        Path result = folder.resolve("result.xlsx");
        Terminal run = Terminal.run("plan", book, "-o", result);
        if (run.code() != 4) {
            throw new IllegalStateException("a must was kept: " + run.code() + run.out() + run.err());
        }
        return result;
    }

    private static XSSFWorkbook book() throws IOException {
        XSSFWorkbook book = BookFiller.blank();
        DemoBooks.introduce(book, "Two small bags", "Shows every result sheet.");
        new BookFiller(book, "Golfers")
                .under("Golfer, Hand, Driver speed, Iron speed, Squares face, Most open, Most closed, Gap wish")
                .row("Golfer A", "R", 96, 80, "yes", -2, 2.5, "even")
                .row("Golfer B", "L", 82, 68, "no", -3, 3, null);
        BookFiller sleeves = new BookFiller(book, "Sleeves");
        DemoBooks.fourMarks(sleeves, "Sleeve P", 1.5);
        sleeves.under("Sleeve, Setting, Loft change, Lie change")
                .row("Sleeve T", "Std", 0, 0)
                .row("Sleeve T", "+1", 1, 0.5)
                .row("Sleeve T", "-1", -1, 0);
        clubs(new BookFiller(book, "Clubs"));
        new BookFiller(book, "Weights")
                .under("Kit, Weighting, Port, Mass, X, Y, Z")
                .row("Kit D", "Even", "heel", 4, 0, 30, -8)
                .row("Kit D", "Heavy", "heel", 12, 0, 30, -8);
        new BookFiller(book, "Stock").under("Item, Count").row("Kit D: 12 g", 1);
        shots(new BookFiller(book, "Shots"));
        new BookFiller(book, "Aims").change("lie", "Must", "yes").change("lie", "Tolerance", 0.4);
        return book;
    }

    private static void clubs(BookFiller clubs) {
        clubs.under("Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Kit, Weighting, In bag, Bend limit,"
                        + " Bend step, Lie target, Swingweight, Swingweight target, Carry target, Gap least")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45.25, "Sleeve P", "A", "Kit D", "Even", "yes", null)
                .row("Golfer A", 1, "Other driver", "driver", 9.5, 58, 45, "Sleeve P", "C", null, null, "no", null)
                .row("Golfer A", 2, "4 hybrid", "hybrid", 22, 59, 40, "Sleeve T", "Std", null, null, "yes", null)
                .row("Golfer A", 3, "7 iron", "iron", 31, 62, 37, null, null, null, null, "yes", 1, 1, 63, "D1", "D2")
                .row("Golfer A", 4, "Putter", "putter", 3, 70, 34)
                .row("Golfer B", 1, "Driver", "driver", 12, 58, 44, "Sleeve P", "B", "Kit D", "Even", "yes", null)
                .row("Golfer B", 2, "7 wood", "wood", 21, 58.5, 41, "Sleeve T", "Std", null, null, "yes", null)
                .row(
                        "Golfer B",
                        3,
                        "8 iron",
                        "iron",
                        36,
                        62,
                        36,
                        null,
                        null,
                        null,
                        null,
                        "yes",
                        1,
                        1,
                        65,
                        null,
                        null,
                        110,
                        12);
    }

    private static void shots(BookFiller shots) {
        shots.under("Golfer, Club, Date, Setting, Head speed, Ball speed, Launch, Spin, Carry, Side");
        String[] days = {"2026-05-14", "2026-09-20"};
        for (int day = 0; day < days.length; day++) {
            for (int shot = 0; shot < 4; shot++) {
                double off = new double[] {-1.5, 0.5, 1, 0}[shot] + day;
                shots.row(
                        "Golfer A",
                        "Driver",
                        days[day],
                        "A",
                        96 + off,
                        141 + off,
                        12.5,
                        2700 + 50 * shot,
                        null,
                        4 * off);
                shots.row(
                        "Golfer A", "7 iron", days[day], null, null, 108 + off, 17.5, 6100 - 40 * shot, 147 + off, off);
                shots.row("Golfer B", "8 iron", days[day], null, null, null, null, null, 112 + 2 * off + 9 * day, null);
            }
        }
    }
}
