package org.bagwright;

import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The full build: 14 slots, candidates in six of them, three sleeves, two kits of weights, scarce stock, bends, and
 * swingweights to match.
 */
final class FullDemo {
    private FullDemo() {}

    static XSSFWorkbook book() throws IOException {
        XSSFWorkbook book = BookFiller.blank();
        DemoBooks.introduce(book, "One full build", "Shows candidates, weights, bends, stock and musts.");
        new BookFiller(book, "Golfers")
                .under("Golfer, Hand, Driver speed, Iron speed, Squares face, Most open, Most closed, Gap wish")
                .row("Golfer A", "R", 96, 80, "yes", -2, 2.5, "even");
        sleeves(new BookFiller(book, "Sleeves"));
        BookFiller clubs = new BookFiller(book, "Clubs");
        woods(clubs);
        irons(clubs);
        wedges(clubs);
        shots(new BookFiller(book, "Shots"));
        weights(new BookFiller(book, "Weights"));
        new BookFiller(book, "Stock")
                .under("Item, Count")
                .row("12 g", 1)
                .row("Kit D: 2 g", 1)
                .row("Kit F: 2 g", 1)
                .row("Sleeve Q", 1);
        new BookFiller(book, "Aims")
                .change("sits", "Must", "yes")
                .change("lie", "Must", "yes")
                .change("lie", "Tolerance", 1.5)
                .change("spread", "Tolerance", 1)
                .change("spread", "Importance", 0.1);
        return book;
    }

    /** Two rings of a degree: one sets the loft, the other the lie. */
    private static void sleeves(BookFiller sleeves) {
        DemoBooks.eightMarks(sleeves, "Sleeve P", 1.5);
        DemoBooks.fourMarks(sleeves, "Sleeve Q", 1.0);
        String[] lies = {"flat", "mid", "up"};
        sleeves.under("Sleeve, Setting, Clock, Bend, Clock 2, Bend 2, Turns shaft");
        for (int loft = 0; loft < 3; loft++) {
            for (int lie = 0; lie < 3; lie++) {
                sleeves.row(
                        "Sleeve R",
                        (loft + 1) + " " + lies[lie],
                        loft == 0 ? 9 : 3,
                        loft == 1 ? 0 : 1,
                        lie == 0 ? 6 : 12,
                        lie == 1 ? 0 : 1,
                        "no");
            }
        }
    }

    private static void woods(BookFiller clubs) {
        clubs.under(
                        "Slot, Club, Kind, Loft, Lie, Stated at, Length, Sleeve, Setting, Kit, Weighting, In bag, Carry target,"
                                + " Gap wish, Swingweight target, Head mass, CG height, CG depth, Head inertia")
                .row(
                        1,
                        "Driver",
                        "driver",
                        10.5,
                        58,
                        1,
                        45.25,
                        "Sleeve P",
                        7,
                        "Kit D",
                        "Even",
                        "yes",
                        230,
                        20,
                        "D3",
                        188,
                        30,
                        36,
                        4450)
                .row(
                        1,
                        "Driver deep",
                        "driver",
                        9.5,
                        58.5,
                        1,
                        45.25,
                        "Sleeve P",
                        1,
                        "Kit D",
                        "Even",
                        "no",
                        230,
                        20,
                        "D3",
                        186,
                        28,
                        41,
                        4800)
                .row(
                        2,
                        "3 wood",
                        "wood",
                        15,
                        57.5,
                        1,
                        43,
                        "Sleeve P",
                        1,
                        "Kit F",
                        "Even",
                        "yes",
                        null,
                        null,
                        "D1",
                        204,
                        22,
                        20,
                        2500)
                .row(
                        2,
                        "3 wood short",
                        "wood",
                        15,
                        58,
                        1,
                        42.5,
                        "Sleeve P",
                        1,
                        "Kit F",
                        "Even",
                        "no",
                        null,
                        null,
                        "D1",
                        204,
                        22,
                        20,
                        2500)
                .row(
                        3,
                        "5 wood",
                        "wood",
                        18.5,
                        58,
                        "C",
                        42.25,
                        "Sleeve Q",
                        "B",
                        null,
                        null,
                        "yes",
                        null,
                        null,
                        "D1",
                        219)
                .row(
                        3,
                        "3 hybrid",
                        "hybrid",
                        19,
                        58.5,
                        "C",
                        40.5,
                        "Sleeve Q",
                        "C",
                        null,
                        null,
                        "no",
                        null,
                        null,
                        "D1",
                        235)
                .row(
                        4,
                        "4 hybrid",
                        "hybrid",
                        23,
                        59,
                        "2 mid",
                        39.75,
                        "Sleeve R",
                        "1 flat",
                        null,
                        null,
                        "yes",
                        null,
                        null,
                        "D1",
                        242);
    }

    private static void irons(BookFiller clubs) {
        clubs.under(
                        "Slot, Club, Kind, Loft, Lie, Length, In bag, Bend limit, Bend step, Lie target, Swingweight target,"
                                + " Head mass")
                .row(4, "4 iron", "iron", 21.5, 60.5, 38.5, "no", 2, 0.5, 61, "D1", 249)
                .row(5, "5 iron", "iron", 25, 61, 38, "yes", 2, 0.5, 61.5, "D1", 256)
                .row(5, "5 iron hollow", "iron", 24, 61, 38.25, "no", 1, 0.5, 61.5, "D1", 254)
                .row(6, "6 iron", "iron", 28, 61.5, 37.5, "yes", 2, 0.5, 62, "D1", 263)
                .row(7, "7 iron", "iron", 32.5, 62.5, 37, "yes", 2, 0.5, 62.5, "D1", 270)
                .row(8, "8 iron", "iron", 36, 63, 36.5, "yes", 2, 0.5, 63.5, "D1", 277)
                .row(9, "9 iron", "iron", 41, 63.5, 36, "yes", 2, 0.5, 64, "D1", 284)
                .row(10, "Pitching wedge", "iron", 45, 64, 35.5, "yes", 2, 0.5, 64.5, "D1", 291);
    }

    private static void wedges(BookFiller clubs) {
        clubs.under("Slot, Club, Kind, Loft, Lie, Length, In bag, Optional, Bend limit, Bend step, Lie target,"
                        + " Swingweight target, Head mass")
                .row(11, "50 wedge", "wedge", 50, 64, 35.5, "yes", null, 2, 0.5, 64.5, "D3", 297)
                .row(12, "54 wedge", "wedge", 55, 64, 35.25, "yes", null, 2, 0.5, 64.5, "D3", 300)
                .row(13, "58 wedge", "wedge", 58, 64, 35, "yes", "yes", 2, 0.5, 64.5, "D3", 303)
                .row(13, "60 wedge", "wedge", 60, 64, 35, "no", null, 2, 0.5, 64.5, "D3", 303)
                .row(14, "Putter", "putter", 3, 70, 34, "yes", null, null, null, null, null, 350);
    }

    private static void shots(BookFiller shots) {
        shots.under("Club, Head speed, Ball speed, Launch, Spin, Carry, Shots")
                .row("Driver", 96, 140.5, 10.1, 2400, 222, 8)
                .row("3 wood", 90, 130.5, 12.2, 3500, 208, 8)
                .row("5 wood", 88.5, 127, 13.8, 4050, 199, 8)
                .row("3 hybrid", 86, 122, 14.4, 4400, 188, 8)
                .row("4 hybrid", 84, 117.5, 15.2, 4700, 177, 8)
                .row("5 iron", 82.5, 114.5, 13.9, 5150, 168, 8)
                .row("7 iron", 80, 107.5, 18.6, 6200, 152, 8)
                .row("9 iron", 76, 97, 24, 7350, 130, 8)
                .row("Pitching wedge", 74, 90.5, 26.5, 7900, 118, 8)
                .row("54 wedge", 71, 77, 31.5, 8900, 90, 8);
    }

    private static void weights(BookFiller weights) {
        weights.under("Kit, Weighting, Port, Mass, X, Y, Z")
                .row("Kit D", "Even", "Front", 6, 24, -5, -24)
                .row("Kit D", "Even", "Back", 6, -62, 0, -12)
                .row("Kit D", "Back", "Front", 2, 24, -5, -24)
                .row("Kit D", "Back", "Back", 12, -62, 0, -12)
                .row("Kit D", "Front", "Front", 12, 24, -5, -24)
                .row("Kit D", "Front", "Back", 2, -62, 0, -12)
                .row("Kit D", "Light", "Front", 2, 24, -5, -24)
                .row("Kit D", "Light", "Back", 2, -62, 0, -12)
                .row("Kit F", "Even", "Sole", 6, 4, 0, -16)
                .row("Kit F", "Heavy", "Sole", 12, 4, 0, -16)
                .row("Kit F", "Light", "Sole", 2, 4, 0, -16);
    }
}
