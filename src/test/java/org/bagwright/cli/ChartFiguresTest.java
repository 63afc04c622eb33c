package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code chart --json} says of a club and its options, against what the book says. */
@Tag("analytic")
class ChartFiguresTest {
    private static final double KM_PER_MILE = 1.609344;
    private static final double M_PER_YD = 0.9144;
    private static final String[] UPRIGHT_OPEN_FLAT_CLOSED = {"1", "2", "3", "4"};

    @TempDir
    Path folder;

    /** The club of this name in the chart of a book. */
    private JsonNode club(BookSketch sketch, String name) throws Exception {
        Terminal chart = Terminal.run("chart", sketch.write(folder.resolve("book.xlsx")), "--json");
        assertEquals(0, chart.code(), chart.err());
        for (JsonNode club : chart.json().get("clubs")) {
            if (club.get("club").asText().equals(name)) {
                return club;
            }
        }
        throw new AssertionError("no " + name);
    }

    private static Map<String, JsonNode> bySetting(JsonNode club) {
        Map<String, JsonNode> options = new LinkedHashMap<>();
        club.get("options")
                .forEach(option -> options.putIfAbsent(option.get("setting").asText(), option));
        return options;
    }

    /** The definition of the mile and of the yard, in metres, is exact. */
    @Test
    void speedsAndDistances_areInTheUnitsOfTheBook() throws Exception {
        JsonNode miles = bySetting(club(driver("yd", "mph", 95), "Driver")).get("fixed");
        JsonNode metres =
                bySetting(club(driver("m", "km/h", 95 * KM_PER_MILE), "Driver")).get("fixed");
        assertEquals(
                miles.get("ballSpeed").asDouble() * KM_PER_MILE,
                metres.get("ballSpeed").asDouble(),
                1e-9);
        assertEquals(
                miles.get("carry").asDouble() * M_PER_YD, metres.get("carry").asDouble(), 1e-9);
    }

    private static BookSketch driver(String distance, String speed, double driverSpeed) {
        return new BookSketch()
                .sheet("Start", "Distance, " + distance)
                .row("Speed", speed)
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", driverSpeed)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58);
    }

    /** With a shaft that leans up the toe rises and the head touches the ground at its heel; turned, the other way round. */
    @Test
    void contactPoint_movesToTheLowSide() throws Exception {
        Map<String, JsonNode> options = bySetting(club(ChoiceBook.sketch(), "Driver"));
        assertEquals(List.of(UPRIGHT_OPEN_FLAT_CLOSED), List.copyOf(options.keySet()));
        double toToeMm = options.get("1").get("contactShiftToToeMm").asDouble();
        double toFaceMm = options.get("4").get("contactShiftMm").asDouble();
        assertTrue(toToeMm < -1 && toFaceMm > 1, toToeMm + " " + toFaceMm);
        assertEquals(-toToeMm, options.get("3").get("contactShiftToToeMm").asDouble(), 1e-9);
        assertEquals(-toFaceMm, options.get("2").get("contactShiftMm").asDouble(), 1e-9);
        assertEquals(0, options.get("1").get("contactShiftMm").asDouble(), 1e-9);
        assertEquals(0, options.get("2").get("contactShiftToToeMm").asDouble(), 0.1);
    }

    @Test
    void today_isTheOptionInTheBagAndOnlyAnOptionalSlotMayBeEmpty() throws Exception {
        BookSketch sketch =
                ChoiceBook.sketch().put("Clubs", 2, "Optional", "no").put("Clubs", 3, "Optional", "no");
        JsonNode fixed = club(sketch, "5 wood");
        assertFalse(fixed.get("slotMayBeEmpty").asBoolean());
        JsonNode wood = club(ChoiceBook.sketch().put("Clubs", 2, "Optional", "yes"), "5 wood");
        assertTrue(wood.get("slotMayBeEmpty").asBoolean());
        assertEquals("Golfer A|2|5 wood|1|none|0|0", wood.get("today").asText());
        JsonNode driver = club(ChoiceBook.sketch(), "Driver");
        assertEquals("Golfer A|1|Driver|2|heel|0|0", driver.get("today").asText());
    }

    @Test
    void optionsThatAPlanMayNotUse_areNotOpen() throws Exception {
        JsonNode driver = club(ChoiceBook.sketch().put("Clubs", 1, "Allowed", "2, 4"), "Driver");
        for (JsonNode option : driver.get("options")) {
            assertEquals(
                    List.of("2", "4").contains(option.get("setting").asText()),
                    option.get("open").asBoolean(),
                    option.toString());
        }
    }
}
