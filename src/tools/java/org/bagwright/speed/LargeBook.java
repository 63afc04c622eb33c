package org.bagwright.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.BookSketch;

/**
 * Makes a book of many golfers, each with as many clubs as are wished: {@code LargeBook 200 14 large.xlsx}. With a fourth number
 * each bag gets about so many options, by finer bends: {@code LargeBook 1 14 fine.xlsx 12000}.
 */
public final class LargeBook {
    /** A club as it is sold: loft and lie in degrees, length in inches. */
    private record Model(String name, String kind, double loftDeg, double lieDeg, double lengthIn, int settings) {
        boolean bends() {
            return kind.equals("iron") || kind.equals("wedge");
        }
    }

    private static final List<Model> MODELS = List.of(
            new Model("Driver", "driver", 10.5, 58, 45, 8),
            new Model("3 wood", "wood", 15, 57.5, 43, 8),
            new Model("5 wood", "wood", 18.5, 58, 42.25, 8),
            new Model("4 hybrid", "hybrid", 23, 59, 39.75, 4),
            new Model("5 iron", "iron", 26, 61, 38, 0),
            new Model("6 iron", "iron", 29.5, 61.5, 37.5, 0),
            new Model("7 iron", "iron", 33, 62.5, 37, 0),
            new Model("8 iron", "iron", 37, 63, 36.5, 0),
            new Model("9 iron", "iron", 41.5, 63.5, 36, 0),
            new Model("Pitching wedge", "iron", 46, 64, 35.5, 0),
            new Model("50 wedge", "wedge", 50, 64, 35.5, 0),
            new Model("54 wedge", "wedge", 54.5, 64, 35.25, 0),
            new Model("58 wedge", "wedge", 58.5, 64, 35, 0),
            new Model("Putter", "putter", 3, 70, 34, 0));

    /** What bends come to where nothing is wished: about 260 options in a bag of 14 clubs. */
    private static final int USUAL_BENDS = 5;

    private static final double BEND_LIMIT_DEG = 2;
    private static final double FEWER_LIMIT_DEG = 1;

    private final int golfers;
    private final List<Model> models;
    private final int bends;

    private LargeBook(int golfers, int clubs, int bends) {
        this.golfers = golfers;
        this.models = MODELS.subList(0, Math.min(clubs, MODELS.size()));
        this.bends = bends;
    }

    /**
     * Writes a book.
     *
     * @param arguments golfers, clubs, the file and, if wished, how many options a bag has
     */
    public static void main(String[] arguments) throws IOException {
        int golfers = Integer.parseInt(arguments[0]);
        int clubs = Integer.parseInt(arguments[1]);
        Path file = Path.of(arguments[2]);
        if (arguments.length > 3) {
            ofOptions(clubs, Integer.parseInt(arguments[3])).write(file);
        } else {
            ofGolfers(golfers, clubs).write(file);
        }
    }

    static LargeBook ofGolfers(int golfers, int clubs) {
        return new LargeBook(golfers, clubs, USUAL_BENDS);
    }

    /** One bag with about so many options. */
    static LargeBook ofOptions(int clubs, int options) {
        List<Model> models = MODELS.subList(0, Math.min(clubs, MODELS.size()));
        int settings = models.stream().mapToInt(Model::settings).sum();
        long bent = models.stream().filter(Model::bends).count();
        int half = (int) Math.round((Math.sqrt(Math.max(1.0, options - settings) / bent) - 1) / 2);
        return new LargeBook(1, clubs, 2 * Math.max(1, half) + 1);
    }

    void write(Path file) throws IOException {
        BookSketch book = new BookSketch().sheet("Golfers", "Golfer, Hand, Driver speed, Gap wish");
        IntStream.range(0, golfers).forEach(number -> book.row(name(number), hand(number), driverMph(number), "even"));
        book.sheet(
                "Clubs",
                "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Bend limit, Bend step, Lie target");
        IntStream.range(0, golfers).forEach(number -> bag(book, number));
        sleeve(book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft"), "Eight", 8);
        sleeve(book, "Four", 4);
        book.sheet("Shots", "Golfer, Club, Head speed, Ball speed, Launch, Spin, Carry, Shots");
        IntStream.range(0, golfers).filter(number -> number % 2 == 0).forEach(number -> shots(book, number));
        book.write(file);
    }

    private static String name(int number) {
        return "Golfer " + (number + 1);
    }

    private static String hand(int number) {
        return number % 9 == 4 ? "L" : "R";
    }

    private static double driverMph(int number) {
        return 74 + number * 7 % 40;
    }

    private void bag(BookSketch book, int golfer) {
        double limitDeg = bends > 3 ? BEND_LIMIT_DEG : FEWER_LIMIT_DEG;
        for (int slot = 1; slot <= models.size(); slot++) {
            Model model = models.get(slot - 1);
            double madeDeg = ((golfer * 5 + slot * 7) % 5 - 2) * 0.5;
            boolean sleeved = model.settings() > 0;
            book.row(
                    name(golfer),
                    slot,
                    model.name(),
                    model.kind(),
                    model.loftDeg() + madeDeg,
                    model.lieDeg(),
                    model.lengthIn(),
                    sleeved ? model.settings() == 8 ? "Eight" : "Four" : null,
                    sleeved ? String.valueOf(1 + (golfer + slot) % model.settings()) : null,
                    model.bends() ? limitDeg : null,
                    model.bends() ? 2 * limitDeg / (bends - 1) : null,
                    model.bends() ? model.lieDeg() + golfer % 5 * 0.5 - 1 : null);
        }
    }

    private static void sleeve(BookSketch book, String name, int settings) {
        for (int mark = 0; mark < settings; mark++) {
            book.row(name, String.valueOf(mark + 1), 12.0 * mark / settings, 1.5, "yes");
        }
    }

    /** A driver's shots, such as a launch monitor reports them. */
    private static void shots(BookSketch book, int golfer) {
        double mph = driverMph(golfer);
        book.row(name(golfer), "Driver", mph, Math.round(mph * 1.46), 12.5, 2750, Math.round(mph * 2.3), 8);
    }
}
