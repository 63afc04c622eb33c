package org.bagwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;

/**
 * An invented bag with every kind of choice (sleeve, weights, another club, an empty slot, bends), and its best choice by
 * trying all of them: own penalties and carries come from the command chart, the gaps are worked out here.
 */
final class ChoiceBook {
    /** Gap wishes by club, yards; the last has none. */
    private static final Map<String, Double> WISHES = Map.of("Driver", 25.0, "5 wood", 40.0, "7 wood", 35.0);

    private static final double GAP_TOLERANCE_YD = 3;
    private static final double GAP_IMPORTANCE = 2;
    private static final double REACH_TOLERANCE_YD = 3;

    private ChoiceBook() {}

    static BookSketch sketch() {
        return sketch("yd");
    }

    /** The same book in a unit of distance; its wishes keep their numbers. */
    static BookSketch sketch(String distance) {
        return new BookSketch()
                .sheet("Start", "Plan for, best guess")
                .row("Distance", distance)
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Loft bend, Lie bend, Weighting,"
                                + " In bag, Optional, Bend limit, Gap wish, Loft target")
                .row(
                        "Golfer A",
                        1,
                        "Driver",
                        "driver",
                        10.5,
                        58,
                        45,
                        "S",
                        2,
                        null,
                        null,
                        "K: heel",
                        null,
                        null,
                        null,
                        25)
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "S", 1, null, null, null, null, null, null, 40)
                .row("Golfer A", 2, "7 wood", "wood", 21, 58.5, 41.5, "S", 3, null, null, null, null, "yes", null, 35)
                .row("Golfer A", 3, "7 iron", "iron", 31, 62, 37, null, null, 0.5, 0, null, null, null, 1, null, 31)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .row("S", 4, 9, 1.5, "yes")
                .weights()
                .row("K", "heel", "h", 10, -20, 30, 5)
                .row("K", "toe", "t", 10, -20, -30, 5);
    }

    /** Plans a book into another and changes that one as a person would. */
    static Path planned(Path book, Path result, Consumer<XSSFWorkbook> person) throws Exception {
        Terminal plan = Terminal.run("plan", book, "-o", result);
        if (plan.code() != 0) {
            throw new AssertionError(plan.err());
        }
        return edited(result, person);
    }

    static Path edited(Path book, Consumer<XSSFWorkbook> person) throws Exception {
        XSSFWorkbook workbook = ResultCells.open(book);
        person.accept(workbook);
        try (OutputStream output = Files.newOutputStream(book)) {
            workbook.write(output);
        }
        workbook.close();
        return book;
    }

    /** Every option of each slot by its name. */
    static List<Map<String, JsonNode>> slots(Path book) throws Exception {
        Map<Integer, Map<String, JsonNode>> slots = new LinkedHashMap<>();
        for (JsonNode club : Terminal.run("chart", book, "--json").json().get("clubs")) {
            Map<String, JsonNode> slot = slots.computeIfAbsent(club.get("slot").asInt(), key -> new LinkedHashMap<>());
            club.get("options").forEach(option -> slot.put(option.get("option").asText(), option));
        }
        return new ArrayList<>(slots.values());
    }

    /** The penalty of one option a slot; infinite where the carries do not fall. */
    static double penaltyPoints(List<Map<String, JsonNode>> slots, List<String> keys) {
        return penaltyPoints(slots, keys, WISHES);
    }

    /** As above with other gap wishes by club, yards. */
    static double penaltyPoints(List<Map<String, JsonNode>> slots, List<String> keys, Map<String, Double> wishesYd) {
        double points = reachPoints(slots.get(0), keys.get(0));
        for (int slot = 0; slot < keys.size(); slot++) {
            JsonNode option = slots.get(slot).get(keys.get(slot));
            points += option.get("ownPenalty").asDouble();
            if (slot + 1 < keys.size()) {
                double gapYd = option.get("carry").asDouble()
                        - slots.get(slot + 1)
                                .get(keys.get(slot + 1))
                                .get("carry")
                                .asDouble();
                double off = (gapYd - wishesYd.get(keys.get(slot).split("\\|")[2])) / GAP_TOLERANCE_YD;
                points += gapYd <= 0 ? Double.POSITIVE_INFINITY : GAP_IMPORTANCE * off * off;
            }
        }
        return points;
    }

    /** How much less far the first club flies than today, tolerance 3 yd, importance 1. */
    private static double reachPoints(Map<String, JsonNode> slot, String key) {
        double today = slot.values().stream()
                .filter(option -> option.get("changes").asInt() == 0)
                .mapToDouble(option -> option.get("carry").asDouble())
                .findFirst()
                .orElseThrow();
        double off = Math.max(0, today - slot.get(key).get("carry").asDouble()) / REACH_TOLERANCE_YD;
        return off * off;
    }

    /** The least penalty of all choices in which no slot is empty and every pinned option is taken. */
    static double leastPoints(List<Map<String, JsonNode>> slots, Set<String> pinned) {
        return leastPoints(slots, pinned, WISHES);
    }

    /** As above with other gap wishes by club, yards. */
    static double leastPoints(List<Map<String, JsonNode>> slots, Set<String> pinned, Map<String, Double> wishesYd) {
        List<List<String>> open = slots.stream()
                .map(slot -> {
                    List<String> kept =
                            slot.keySet().stream().filter(pinned::contains).toList();
                    return kept.isEmpty() ? List.copyOf(slot.keySet()) : kept;
                })
                .toList();
        double least = Double.POSITIVE_INFINITY;
        for (String first : open.get(0)) {
            for (String second : open.get(1)) {
                for (String third : open.get(2)) {
                    least = Math.min(least, penaltyPoints(slots, List.of(first, second, third), wishesYd));
                }
            }
        }
        return least;
    }
}
