package org.bagwright.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.bagwright.BookSketch;

/** A book that is drawn at random and has no problem: one to four golfers with three to fourteen clubs each. */
final class RandomBook {
    private record Model(String name, String kind, double loftDeg, double lieDeg, double lengthIn) {
        boolean bends() {
            return kind.equals("iron") || kind.equals("wedge");
        }
    }

    private static final List<Model> MODELS = List.of(
            new Model("Driver", "driver", 10.5, 58, 45),
            new Model("3 wood", "wood", 15, 57.5, 43),
            new Model("5 wood", "wood", 18.5, 58, 42.25),
            new Model("4 hybrid", "hybrid", 23, 59, 39.75),
            new Model("5 iron", "iron", 26, 61, 38),
            new Model("6 iron", "iron", 29.5, 61.5, 37.5),
            new Model("7 iron", "iron", 33, 62.5, 37),
            new Model("8 iron", "iron", 37, 63, 36.5),
            new Model("9 iron", "iron", 41.5, 63.5, 36),
            new Model("Pitching wedge", "iron", 46, 64, 35.5),
            new Model("50 wedge", "wedge", 50, 64, 35.5),
            new Model("54 wedge", "wedge", 54.5, 64, 35.25),
            new Model("58 wedge", "wedge", 58.5, 64, 35),
            new Model("Putter", "putter", 3, 70, 34));

    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 2);

    private final Random random;
    private final BookSketch book = new BookSketch();

    RandomBook(long seed) {
        this.random = new Random(seed);
    }

    void write(Path file) throws IOException {
        start();
        int golfers = 1 + random.nextInt(4);
        List<List<Model>> bags = new ArrayList<>();
        book.sheet("Golfers", "Golfer, Hand, Driver speed, Shaft lean, Squares face, Most open, Most closed, Gap wish");
        for (int golfer = 0; golfer < golfers; golfer++) {
            boolean limits = chance(0.5);
            book.row(
                    name(golfer),
                    chance(0.2) ? "L" : "R",
                    between(72, 115),
                    chance(0.3) ? between(-2, 4) : null,
                    chance(0.2) ? "no" : "yes",
                    limits ? -2.5 : null,
                    limits ? 2.5 : null,
                    chance(0.7) ? "even" : 13);
            bags.add(drawn());
        }
        book.sheet(
                "Clubs",
                "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Kit, Weighting, Bend limit, Bend step,"
                        + " Lie target, Loft target, Carry target, Optional, Swingweight target");
        for (int golfer = 0; golfer < golfers; golfer++) {
            bag(name(golfer), bags.get(golfer));
        }
        pieces();
        book.sheet("Shots", "Golfer, Club, Head speed, Ball speed, Launch, Spin, Carry, Shots, Date");
        for (int golfer = 0; golfer < golfers; golfer++) {
            shots(name(golfer), bags.get(golfer));
        }
        book.write(file);
    }

    private static String name(int golfer) {
        return "Golfer " + (char) ('A' + golfer);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    /** A number with one decimal. */
    private double between(double least, double most) {
        return Math.round(10 * (least + random.nextDouble() * (most - least))) / 10.0;
    }

    private void start() {
        book.sheet("Start", "Distance, yd")
                .row("Ball model", chance(0.3) ? "Smits-Smith" : "Bearman-Harvey")
                .row("Air temperature", between(5, 30))
                .row("Altitude", between(0, 800));
        if (chance(0.3)) {
            book.row("Head wind", between(-4, 4));
        }
        if (chance(0.2)) {
            book.row("Cross wind", between(-3, 3));
        }
    }

    private List<Model> drawn() {
        List<Model> bag = new ArrayList<>();
        double share = 0.3 + 0.7 * random.nextDouble();
        MODELS.stream().filter(model -> chance(share)).forEach(bag::add);
        return bag.size() >= 3 ? bag : List.of(MODELS.get(0), MODELS.get(4), MODELS.get(8));
    }

    private void bag(String golfer, List<Model> models) {
        for (int slot = 1; slot <= models.size(); slot++) {
            Model model = models.get(slot - 1);
            boolean sleeved = !model.bends() && !model.kind().equals("putter") && chance(0.8);
            boolean ported = model.kind().equals("driver") && chance(0.5);
            boolean bent = model.bends() && chance(0.8);
            book.row(
                    golfer,
                    slot,
                    model.name(),
                    model.kind(),
                    model.loftDeg() + between(-0.5, 0.5),
                    model.lieDeg() + between(-0.5, 0.5),
                    model.lengthIn(),
                    sleeved ? "S" : null,
                    sleeved ? String.valueOf(1 + random.nextInt(4)) : null,
                    ported ? "K" : null,
                    ported ? "Light" : null,
                    bent ? 1 + random.nextInt(2) : null,
                    bent ? chance(0.5) ? 0.5 : 1 : null,
                    bent ? model.lieDeg() + between(-1, 1) : null,
                    bent && chance(0.2) ? model.loftDeg() : null,
                    model.kind().equals("hybrid") && chance(0.3) ? 180 : null,
                    model.bends() && chance(0.1) ? "yes" : null,
                    ported && chance(0.5) ? "D3" : null);
        }
    }

    private void pieces() {
        book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft");
        double bendDeg = between(1, 1.8);
        for (int mark = 0; mark < 4; mark++) {
            book.row("S", String.valueOf(mark + 1), 12 - 3 * mark, bendDeg, "yes");
        }
        book.weights()
                .row("K", "Light", "Front", 2, 24, -5, -24)
                .row("K", "Light", "Back", 2, -62, 0, -12)
                .row("K", "Back", "Front", 2, 24, -5, -24)
                .row("K", "Back", "Back", 12, -62, 0, -12);
        if (chance(0.3)) {
            book.stock().row("K: 12 g", 1);
        }
    }

    private void shots(String golfer, List<Model> models) {
        if (!models.get(0).kind().equals("driver") || chance(0.4)) {
            return;
        }
        double mph = between(80, 110);
        int days = 1 + random.nextInt(3);
        for (int day = 0; day < days; day++) {
            book.row(
                    golfer,
                    "Driver",
                    mph + between(-1, 1),
                    mph * 1.46 + between(-1, 1),
                    between(11, 14),
                    between(2400, 3000),
                    mph * 2.3 + between(-4, 4),
                    1 + random.nextInt(8),
                    days > 1 ? FIRST_DAY.plusDays(7L * day).toString() : null);
        }
    }
}
