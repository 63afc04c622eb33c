package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan tells about small changes and about how sure it is. */
class OutlookTest {
    private static final String SHOTS = "Golfer, Club, Head speed, Ball speed, Launch, Spin, Carry";

    @TempDir
    Path folder;

    private BookSketch sketch(String golferColumns, Object... golfer) {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed" + golferColumns)
                .row(golfer)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Bend limit, Bend step, Pinned")
                .row("Golfer A", 1, "Driver", "driver", 8, 58, 45, "", "", "")
                .row("Golfer A", 2, "6 iron", "iron", 28, 61.5, 37.5, 1, 0.25, "yes")
                .row("Golfer A", 3, "8 iron", "iron", 36, 63, 36.5, 1, 0.25, "yes");
    }

    private JsonNode plan(BookSketch sketch, String name) throws Exception {
        Terminal run = Terminal.run("plan", sketch.write(folder.resolve(name)), "--json");
        assertEquals(0, run.code(), run.err());
        return run.json().get("golfers").get(0);
    }

    private static JsonNode named(JsonNode array, String field, String name) {
        for (JsonNode node : array) {
            if (node.get(field).asText().equals(name)) {
                return node;
            }
        }
        throw new AssertionError("no " + name + " in " + array);
    }

    @Tag("analytic")
    @Test
    void carryPerDegree_isTheDifferenceOfTwoBends() throws Exception {
        BookSketch sketch = sketch("", "Golfer A", 95, 80);
        JsonNode clubs = plan(sketch, "bag.xlsx").get("sensitivity").get("clubs");
        JsonNode chart =
                Terminal.run("chart", folder.resolve("bag.xlsx"), "--json").json();
        for (String club : new String[] {"6 iron", "8 iron"}) {
            JsonNode options = named(chart.get("clubs"), "club", club).get("options");
            JsonNode weak = bent(options, 0.25);
            JsonNode strong = bent(options, -0.25);
            double slope = (weak.get("carry").asDouble() - strong.get("carry").asDouble())
                    / (weak.get("addressLoftDeg").asDouble()
                            - strong.get("addressLoftDeg").asDouble());
            JsonNode answer = named(clubs, "club", club);
            assertEquals(slope, answer.get("carryPerLoftDeg").asDouble(), 1e-6, club);
            assertEquals("less", answer.get("loftForCarry").asText());
        }
    }

    private static JsonNode bent(JsonNode options, double loftBend) {
        for (JsonNode option : options) {
            if (option.get("loftBend").asDouble() == loftBend
                    && option.get("lieBend").asDouble() == 0) {
                return option;
            }
        }
        throw new AssertionError("no loft bend " + loftBend + " in " + options);
    }

    /** Common practice, no source: a driver gains two and a half to three yards for each mph; allowed as much again beyond. */
    @Tag("published")
    @Test
    void driverCarryPerSpeed_isTheUsual() throws Exception {
        JsonNode golfer = plan(sketch("", "Golfer A", 95, 80), "bag.xlsx");
        double perMph = named(golfer.get("sensitivity").get("clubs"), "club", "Driver")
                .get("carryPerHeadSpeed")
                .asDouble();
        assertEquals(2.75, perMph, 0.5);
    }

    /** Turned by 1 degree of lie, leading edge square, a face of loft L points atan(tan L sin 1) off: 0.353 at 10 for 2. */
    @Tag("analytic")
    @Test
    void facePerLie_isTheClosedForm() throws Exception {
        JsonNode club = named(
                plan(sketch("", "Golfer A", 95, 80), "bag.xlsx")
                        .get("sensitivity")
                        .get("clubs"),
                "club",
                "8 iron");
        double loft = Math.toRadians(club.get("presentedLoftDeg").asDouble());
        double expected = Math.toDegrees(Math.atan(Math.tan(loft) * Math.sin(Math.PI / 180)));
        assertEquals(expected, club.get("facePerLieDeg").asDouble(), 1e-12);
    }

    @Tag("analytic")
    @Test
    void lowLoftDriver_isToldOfItsBestLoft() throws Exception {
        Path book = sketch("", "Golfer A", 85, 70).write(folder.resolve("low.xlsx"));
        Terminal run = Terminal.run("plan", book);
        assertTrue(run.out().contains("Driver: more loft would carry further, up to "), run.out());
        assertTrue(run.out().contains("Least certain gap: "), run.out());
    }

    @Tag("analytic")
    @Test
    void ownShots_narrowTheBandAndReplaceTheAssumedSpread() throws Exception {
        JsonNode without = plan(sketch("", "Golfer A", 95, 80), "without.xlsx");
        BookSketch steady = sketch("", "Golfer A", 95, 80).sheet("Shots", SHOTS);
        double[] carries = {151, 153, 152, 154, 150, 152};
        for (double carry : carries) {
            steady.row("Golfer A", "6 iron", 82, 113, 16.5, 5600, carry);
        }
        JsonNode with = plan(steady, "with.xlsx");
        JsonNode assumed = named(without.get("sureness").get("clubs"), "club", "6 iron");
        JsonNode own = named(with.get("sureness").get("clubs"), "club", "6 iron");
        assertTrue(assumed.get("spreadAssumed").asBoolean());
        assertFalse(own.get("spreadAssumed").asBoolean());
        double middle = (own.get("carryHigh").asDouble() + own.get("carryLow").asDouble()) / 2;
        double[] logs = DoubleStream.of(carries).map(Math::log).toArray();
        double mean = DoubleStream.of(logs).average().orElseThrow();
        double squares =
                DoubleStream.of(logs).map(log -> (log - mean) * (log - mean)).sum();
        double pooled = Math.sqrt((10 * (0.03 * 0.03 + 0.007 * 0.007) + squares) / (10 + logs.length - 1));
        assertEquals(pooled * middle, own.get("spread").asDouble(), 1e-6);
        assertTrue(width(own) < width(assumed), own + " " + assumed);
    }

    private static double width(JsonNode band) {
        return band.get("carryHigh").asDouble() - band.get("carryLow").asDouble();
    }

    @Tag("analytic")
    @Test
    void statedGapLimits_replaceWishAndTolerance() throws Exception {
        JsonNode free = plan(sketch("", "Golfer A", 95, 80), "free.xlsx");
        JsonNode bound = plan(sketch(", Gap least, Gap most", "Golfer A", 95, 80, 1, 100), "bound.xlsx");
        JsonNode narrow = free.get("sureness").get("gaps").get(1);
        JsonNode wide = bound.get("sureness").get("gaps").get(1);
        assertEquals(6, narrow.get("most").asDouble() - narrow.get("least").asDouble(), 1e-9);
        assertEquals(100, wide.get("most").asDouble(), 1e-9);
        assertTrue(wide.get("chance").asDouble() > 95, wide.toString());
        assertTrue(narrow.get("chance").asDouble() < 60, narrow.toString());
    }

    @Tag("regression")
    @Test
    void sameSeed_givesTheSameShares() throws Exception {
        Path book = sketch("", "Golfer A", 95, 80).write(folder.resolve("bag.xlsx"));
        assertEquals(sureness(book, 1), sureness(book, 1));
    }

    private static JsonNode sureness(Path book, long seed) throws Exception {
        return Terminal.run("plan", book, "--json", "--seed", seed)
                .json()
                .get("golfers")
                .get(0)
                .get("sureness");
    }

    @Tag("analytic")
    @Test
    void assumedSpreads_areNamedInAMessage() throws Exception {
        Path book = sketch("", "Golfer A", 95, 80).write(folder.resolve("bag.xlsx"));
        String text = Terminal.run("plan", book, "--json").out().toLowerCase(Locale.ROOT);
        assertTrue(
                text.contains("no shots tell how far single shots scatter, so 3 % of the carry is assumed: golfer a"),
                text);
    }

    /** A spread of a club's shots that is its own does not say how well its average is known: each has its own field. */
    @Tag("analytic")
    @Test
    void sureness_tellsSpreadsAndWhereCarriesComeFrom() throws Exception {
        JsonNode golfer = plan(sketch("", "Golfer A", 95, 80), "bag.xlsx");
        for (JsonNode club : golfer.get("sureness").get("clubs")) {
            assertTrue(club.get("carrySd").asDouble() >= 0, club.toString());
            assertTrue(club.get("changeSd").asDouble() >= 0, club.toString());
            assertTrue(club.get("origin").isTextual() && club.get("extended").isBoolean(), club.toString());
        }
        golfer.get("sureness")
                .get("gaps")
                .forEach(gap -> assertTrue(gap.get("gapSd").asDouble() >= 0, gap.toString()));
        for (JsonNode choice : golfer.get("sureness").get("choices")) {
            double cases = choice.get("bestInCases").asDouble();
            assertTrue(cases >= 0 && cases <= 100, choice.toString());
            assertTrue(choice.get("best").size() >= 1 && choice.get("best").size() <= 3, choice.toString());
        }
    }

    @Tag("analytic")
    @Test
    void measureNext_isTheLastLineAndInTheDocument() throws Exception {
        Path book = sketch("", "Golfer A", 95, 80).write(folder.resolve("bag.xlsx"));
        Terminal people = Terminal.run("plan", book, "-o", folder.resolve("people.xlsx"));
        List<String> lines = people.out().lines().toList();
        String last = lines.get(lines.size() - 1);
        assertTrue(last.startsWith("Measure next: "), last);
        JsonNode golfer = plan(sketch("", "Golfer A", 95, 80), "json.xlsx");
        JsonNode best = golfer.get("measureNext").get(0);
        for (String field : new String[] {"slot", "club", "what", "worthPoints", "words"}) {
            assertTrue(best.has(field), best.toString());
        }
        assertTrue(golfer.get("measureNext").size() <= 3);
        assertTrue(
                golfer.get("measuredEnough").asBoolean()
                        || last.endsWith(best.get("words").asText()),
                last);
    }

    @Tag("analytic")
    @Test
    void ladder_showsTheSameNumbersAndDrawsTheBand() throws Exception {
        JsonNode golfer = plan(sketch("", "Golfer A", 95, 80), "bag.xlsx");
        JsonNode bands = golfer.get("sureness").get("clubs");
        try (InputStream input = Files.newInputStream(folder.resolve("bag-plan.xlsx"));
                XSSFWorkbook book = new XSSFWorkbook(input)) {
            XSSFSheet ladder = book.getSheet("Ladder");
            double chance =
                    golfer.get("sureness").get("gaps").get(0).get("chance").asDouble();
            assertEquals(Math.rint(chance), ladder.getRow(5).getCell(9).getNumericCellValue(), 0, "whole per cent");
            int first = 5;
            int club = CellReference.convertColStringToIndex("T");
            int low = CellReference.convertColStringToIndex("Z");
            for (int index = 0; index < 3; index++) {
                Row row = ladder.getRow(first + index);
                JsonNode band = bands.get(index);
                assertEquals(band.get("club").asText(), row.getCell(club).getStringCellValue());
                assertEquals(band.get("carryLow").asDouble(), row.getCell(low).getNumericCellValue(), 1e-9);
                assertEquals(
                        band.get("carryHigh").asDouble(), row.getCell(low + 1).getNumericCellValue(), 1e-9);
            }
            String charts = ladder.getDrawingPatriarch().getCharts().stream()
                    .map(chart -> chart.getCTChart().xmlText())
                    .collect(Collectors.joining());
            assertTrue(charts.contains("Ladder!$Z$6:$Z$8"), charts);
            assertTrue(charts.contains("Ladder!$AA$6:$AA$8"), charts);
        }
    }
}
