package org.bagwright.badbooks;

import java.io.IOException;
import java.nio.file.Path;
import org.bagwright.BookSketch;

/** A sound bag of five clubs with a number in every column, also in those that the demos leave blank. */
final class HuntFilled {
    private static final String CLUBS =
            "Golfer, Slot, Club, Kind, Loft, Lie, Face, Stated at, Length, Sleeve, Setting, Loft bend,"
                    + " Lie bend, Bend limit, Bend step, Loft target, Lie target, Carry target, Gap wish, Golfer lie, Head mass,"
                    + " Sole radius, CG height, CG depth, Head inertia, Shaft mass, Shaft balance, Grip mass, Gap least, Gap most,"
                    + " Carry least, Carry most, Landing least, Swingweight target, Swingweight";

    private HuntFilled() {}

    static Path write(Path file) throws IOException {
        BookSketch book = new BookSketch()
                .sheet("Start", "Distance, yd")
                .row("Speed", "mph")
                .row("Length", "in")
                .row("Air temperature", 18)
                .row("Altitude", 150)
                .row("Humidity", 60)
                .row("Head wind", 2)
                .row("Cross wind", 2)
                .row("Rules length limit", 48);
        golfer(book);
        clubs(book);
        sleeves(book);
        readingsAndShots(book);
        book.weights()
                .row("Kit D", "Light", "Back", 4, -55, 0, -10)
                .row("Kit D", "Heavy", "Back", 10, -55, 0, -10)
                .put("Clubs", 1, "Kit", "Kit D")
                .put("Clubs", 1, "Weighting", "Light")
                .stock()
                .row("Kit D: 10 g", 1)
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("loft", 0.5, 1, "no")
                .row("lie", 1, 0.5, "no")
                .row("sits", 1, 1, "no")
                .row("carry", 5, 1, "no")
                .row("gap", 3, 2, "no")
                .row("reach", 3, 1, "no")
                .row("swingweight", 1, 0.5, "no")
                .row("spread", 1, 0.2, "no")
                .row("change", 1, 0.05, "no");
        return book.write(file);
    }

    private static void golfer(BookSketch book) {
        book.sheet(
                        "Golfers",
                        "Golfer, Driver speed, Iron speed, Shaft lean, Most open, Most closed, Gap wish, Gap least, Gap most,"
                                + " Most changes")
                .row("Golfer A", 96, 78, 2, -3, 3, 16, 5, 35, 8);
    }

    private static void clubs(BookSketch book) {
        book.sheet("Clubs", CLUBS)
                .row(
                        "Golfer A",
                        1,
                        "Driver",
                        "driver",
                        10.5,
                        58,
                        0.5,
                        "1",
                        45.25,
                        "Sleeve P",
                        "7",
                        null,
                        null,
                        null,
                        null,
                        11,
                        58,
                        221,
                        25,
                        57.5,
                        198,
                        220,
                        30,
                        36,
                        4500,
                        58,
                        22.5,
                        50,
                        8,
                        35,
                        200,
                        245,
                        25,
                        "D3")
                .row(
                        "Golfer A",
                        2,
                        "5 wood",
                        "wood",
                        18.5,
                        58,
                        0.5,
                        "1",
                        42.25,
                        "Sleeve P",
                        "3",
                        null,
                        null,
                        null,
                        null,
                        18,
                        58,
                        198,
                        16,
                        58,
                        212,
                        200,
                        22,
                        20,
                        2400,
                        60,
                        21,
                        50,
                        8,
                        30,
                        180,
                        215,
                        35,
                        "D2")
                .row(
                        "Golfer A",
                        3,
                        "4 hybrid",
                        "hybrid",
                        22,
                        59,
                        -0.5,
                        "A",
                        40,
                        "Sleeve R",
                        "D",
                        null,
                        null,
                        null,
                        null,
                        22,
                        59.5,
                        181,
                        14,
                        59.5,
                        232,
                        160,
                        21,
                        14,
                        2300,
                        72,
                        19.5,
                        50,
                        8,
                        30,
                        165,
                        195,
                        38,
                        "D2")
                .row(
                        "Golfer A",
                        4,
                        "7 iron",
                        "iron",
                        32,
                        62.5,
                        0.5,
                        null,
                        37,
                        null,
                        null,
                        0.5,
                        -0.5,
                        1,
                        0.5,
                        32,
                        62.5,
                        153,
                        13,
                        62,
                        270,
                        60,
                        20,
                        5,
                        2500,
                        95,
                        18.5,
                        50,
                        8,
                        30,
                        140,
                        170,
                        42,
                        "D2")
                .row(
                        "Golfer A",
                        5,
                        "9 iron",
                        "iron",
                        40,
                        63.5,
                        0.5,
                        null,
                        36,
                        null,
                        null,
                        0.5,
                        -0.5,
                        1,
                        0.5,
                        40,
                        63.5,
                        127,
                        12,
                        63,
                        284,
                        60,
                        19,
                        4,
                        2700,
                        95,
                        18,
                        50,
                        null,
                        null,
                        110,
                        145,
                        44,
                        "D2");
    }

    private static void sleeves(BookSketch book) {
        book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft, Loft change, Lie change, Face change");
        for (int mark = 0; mark < 8; mark++) {
            book.row("Sleeve P", Integer.toString(mark + 1), mark == 0 ? 12 : 1.5 * mark, 1.5, "yes");
        }
        book.row("Sleeve R", "A", null, null, "no", 0, 0, 0)
                .row("Sleeve R", "B", null, null, "no", 1.2, -1, 1.9)
                .row("Sleeve R", "C", null, null, "no", 0, -2, 0)
                .row("Sleeve R", "D", null, null, "no", -1.2, -1, -1.9);
    }

    private static void readingsAndShots(BookSketch book) {
        book.sheet("Readings", "Golfer, Club, Setting, Loft, Lie, Face")
                .row("Golfer A", "Driver", "1", 10.4, 58.1, 0.4)
                .row("Golfer A", "Driver", "3", 12.3, 56.6, 0.5)
                .row("Golfer A", "Driver", "7", 8.8, 56.5, 0.6)
                .row("Golfer A", "7 iron", null, 32.2, 62.4, 0.5)
                .sheet(
                        "Shots",
                        "Golfer, Club, Length, Head speed, Ball speed, Launch, Spin, Attack, Carry, Side, Landing, Shots,"
                                + " Spread, Loft bend, Lie bend")
                .row("Golfer A", "Driver", 45.25, 96.3, 140.9, 9, 2150, 0, 221, -3, 30, 6, 7)
                .row("Golfer A", "Driver", 45.25, 95.6, 139.8, 9.6, 2290, 0, 219, 4, 31, 6, 7)
                .row("Golfer A", "5 wood", 42.25, 88.4, 126.6, 14.6, 4300, -2, 196, 2, 42, 10, 6)
                .row("Golfer A", "4 hybrid", 40, 84.1, 118.3, 13.9, 4350, -3, 180, 2, 41, 10, 6)
                .row("Golfer A", "7 iron", 37, 78, 106, 18.6, 6100, -4, 153, 2, 46, 10, 5, 0.5, -0.5)
                .row("Golfer A", "9 iron", 36, 74, 94, 24, 7700, -4, 128, 2, 48, 10, 5, 0.5, -0.5);
    }
}
