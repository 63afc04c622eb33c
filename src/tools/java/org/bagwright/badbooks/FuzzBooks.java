package org.bagwright.badbooks;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.DemoBooks;
import org.bagwright.cli.text.Terminal;

/** The valid books that are spoilt, without looks and drop-downs so that thousands can be read and written. */
final class FuzzBooks {
    private final Map<String, byte[]> books = new LinkedHashMap<>();
    private final List<String> lots = new ArrayList<>();

    /** @param folder where a result book may be made */
    FuzzBooks(Path folder) throws IOException {
        add("trio", 20, DemoBooks.plain("trio"));
        add("everything", 72, bytes(everything()));
        add("full", 1, DemoBooks.plain("full"));
        add("team", 1, DemoBooks.plain("team"));
        add("result", 6, result(folder));
    }

    /** @param share how often the book is picked against the others */
    private void add(String name, int share, byte[] bytes) {
        books.put(name, bytes);
        lots.addAll(Collections.nCopies(share, name));
    }

    /** A book that was picked. */
    record Picked(String name, XSSFWorkbook workbook) {}

    Picked pick(Random random) throws IOException {
        String name = lots.get(random.nextInt(lots.size()));
        return new Picked(name, new XSSFWorkbook(new ByteArrayInputStream(books.get(name))));
    }

    /** A small book that fills every sheet and most columns. */
    private static XSSFWorkbook everything() {
        return new BookSketch()
                .sheet("Start", "Distance, yd")
                .row("Speed", "mph")
                .row("Length", "in")
                .row("Temperature", "C")
                .row("Air temperature", 18)
                .row("Altitude [ft]", 600)
                .row("Humidity", "60 %")
                .row("Ball model", "Bearman-Harvey")
                .row("Head wind", 2)
                .sheet(
                        "Golfers",
                        "Golfer, Hand, Driver speed, Iron speed, Shaft lean, Squares face, Keep shaft turned, Most open,"
                                + " Most closed, Gap wish, Gap least, Gap most, Most changes")
                .row("Golfer A", "R", 95, 80, 2, "yes", "yes", -2, 2, "even", 5, 30, 4)
                .row("Golfer B", "L", 80, 68, null, "no", "no", null, null, 12)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Face, Stated at, Length, Sleeve, Setting, Kit, Weighting,"
                                + " Loft bend, Lie bend, Pinned, Optional, Allowed, Bend limit, Bend step, Loft target,"
                                + " Lie target, Carry target, Gap wish, Golfer lie, Swingweight target, In bag")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 0, "1", 45, "S", "1", "Front", "Light")
                .row("Golfer A", 1, "Other driver", "driver", 9, 58, 0.5, null, 45.5, "S", "2", null, null)
                .row(
                        "Golfer A",
                        2,
                        "4 hybrid",
                        "hybrid",
                        22,
                        59,
                        null,
                        null,
                        40,
                        "S",
                        "3",
                        null,
                        null,
                        null,
                        null,
                        "yes",
                        null,
                        "1, 2, 3",
                        null,
                        null,
                        21,
                        59,
                        180,
                        20,
                        59,
                        "D2")
                .row(
                        "Golfer A",
                        3,
                        "7 iron",
                        "iron",
                        32,
                        62.5,
                        null,
                        null,
                        37,
                        null,
                        null,
                        null,
                        null,
                        0,
                        0,
                        null,
                        "yes",
                        null,
                        1,
                        1)
                .row("Golfer B", 1, "5 wood", "wood", 18, 58, null, null, 42, "S", "3")
                .row("Golfer B", 2, "Sand wedge", "wedge", 56, 64, null, null, 35.25, null, null, null, null, null)
                .put("Clubs", 1, "In bag", "yes")
                .put("Clubs", 1, "Head mass", 198)
                .put("Clubs", 1, "Head inertia", 4600)
                .put("Clubs", 1, "CG depth", 35)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft, Loft change, Lie change")
                .row("S", "1", 12, 1.5, "yes")
                .row("S", "2", "1:30", 1.5, "yes")
                .row("S", "3", 6, 1.5, "no")
                .row("Rated", "A", null, null, "yes", 0, 0)
                .row("Rated", "B", null, null, "yes", 1, -0.5)
                .sheet("Readings", "Golfer, Club, Setting, Loft, Lie, Face")
                .row("Golfer A", "Driver", "1", 11.9, 58.1)
                .row("Golfer A", "Driver", "3", 9.1, 58)
                .row("Golfer B", "Sand wedge", null, 56.2, 63.8)
                .sheet("Shots", "Golfer, Club, Head speed, Ball speed, Launch, Spin, Attack, Carry")
                .row("Golfer A", "Driver", 95, 139, 12, 2600, 1, 222)
                .row("Golfer A", "Driver", 94, 138, 12.5, 2500, null, 220)
                .row("Golfer B", "5 wood", 76, 108, 15, 3800)
                .weights()
                .row("Front", "Light", "A", 4, 20, 10, -5)
                .row("Front", "Heavy", "A", 12, 20, 10, -5)
                .stock()
                .row("Front: 12 g", 1)
                .row("S", 2)
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("gap", 3, 2, "no")
                .row("carry", 6, 1, "no")
                .row("spread", 1, 0.5)
                .workbook();
    }

    /** The result of planning the small book, to be planned again. */
    private static byte[] result(Path folder) throws IOException {
        Path file = Files.write(folder.resolve("small.xlsx"), bytes(everything()));
        Path result = folder.resolve("small-plan.xlsx");
        Terminal plan = Terminal.run("plan", file, "-o", result);
        if (plan.code() != 0 && plan.code() != 4) {
            throw new IllegalStateException("the small book cannot be planned: " + plan.err());
        }
        byte[] bytes = Files.readAllBytes(result);
        Files.delete(file);
        Files.delete(result);
        return bytes;
    }

    private static byte[] bytes(XSSFWorkbook workbook) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        workbook.write(bytes);
        return bytes.toByteArray();
    }
}
