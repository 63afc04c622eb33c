package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.bagwright.BookSketch;
import org.bagwright.cli.GaugeBooks.Truth;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command gauge on books whose readings come from a hidden truth by vector algebra apart from the program. */
@Tag("analytic")
class GaugeCommandTest {
    private static final Truth TRUTH = new Truth(new VectorClub(10.1, 57.2, 0), 1.23, 0.6);

    @TempDir
    Path folder;

    private Path book(Random noise, double noiseDeg, int... marks) throws Exception {
        BookSketch book = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        return GaugeBooks.read(book, "Driver", TRUTH, noise, noiseDeg, marks).write(folder.resolve("bag.xlsx"));
    }

    private static JsonNode fit(Path book, Object... more) throws Exception {
        List<Object> args = new ArrayList<>(List.of("gauge", book, "--json"));
        args.addAll(List.of(more));
        Terminal gauge = Terminal.run(args.toArray());
        assertEquals(0, gauge.code(), gauge.err());
        return gauge.json().at("/fits/0");
    }

    private static void assertNear(double truth, JsonNode found, double mostError) {
        double error = found.get("standardError").asDouble();
        assertTrue(error > 0 && error < mostError, found.toString());
        assertEquals(truth, found.get("value").asDouble(), 3 * error, found.toString());
    }

    /** Three standard errors hold the truth in 99.7 of 100 cases; these four numbers in these five books do. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void gauge_findsTheHiddenTruthWithinItsErrors(long seed) throws Exception {
        JsonNode fit = fit(book(new Random(seed), 0.25, 0, 1, 2, 3, 4, 5, 6, 7));
        assertNear(10.1, fit.get("designLoftDeg"), 0.15);
        assertNear(57.2, fit.get("designLieDeg"), 0.15);
        assertNear(1.23, fit.get("bendDeg"), 0.15);
        assertNear(0.6, fit.get("clockOffsetH"), 0.3);
        assertEquals(9.5, fit.at("/designLoftDeg/stated").asDouble(), 1e-9);
        assertEquals(1.5, fit.at("/bendDeg/stated").asDouble(), 1e-9);
    }

    @Test
    void gauge_ofReadingsWithoutNoiseGivesTheTruth() throws Exception {
        JsonNode fit = fit(book(new Random(1), 0, 0, 2, 3, 5));
        assertEquals(10.1, fit.at("/designLoftDeg/value").asDouble(), 1e-6);
        assertEquals(57.2, fit.at("/designLieDeg/value").asDouble(), 1e-6);
        assertEquals(1.23, fit.at("/bendDeg/value").asDouble(), 1e-6);
        assertEquals(0.6, fit.at("/clockOffsetH/value").asDouble(), 1e-6);
        fit.get("readings")
                .forEach(reading ->
                        assertEquals(0, reading.get("loftResidualDeg").asDouble(), 1e-6));
    }

    @Test
    void gauge_jsonHasTheFixedFields() throws Exception {
        JsonNode fit = fit(book(new Random(1), 0.1, 0, 2, 4));
        for (String field : List.of(
                "golfer",
                "club",
                "sleeve",
                "designLoftDeg",
                "designLieDeg",
                "bendDeg",
                "clockOffsetH",
                "readings",
                "held")) {
            assertTrue(fit.has(field), field);
        }
        assertEquals("Golfer A", fit.get("golfer").asText());
        assertEquals("Driver", fit.get("club").asText());
        assertEquals("S", fit.get("sleeve").asText());
        JsonNode reading = fit.at("/readings/1");
        assertEquals("m2", reading.get("setting").asText());
        assertTrue(reading.has("loftResidualDeg") && reading.has("lieResidualDeg"));
        assertFalse(reading.get("flagged").asBoolean());
        assertTrue(
                fit.at("/held/0").asText().contains("design face"),
                fit.get("held").toString());
    }

    /** The errors follow the gauge: a fifth of the repeatability, a fifth of the error. */
    @Test
    void repeatability_scalesTheErrors() throws Exception {
        Path book = book(new Random(1), 0, 0, 2, 4, 6);
        double usual = fit(book).at("/bendDeg/standardError").asDouble();
        double fine = fit(book, "--repeatability", "0.05")
                .at("/bendDeg/standardError")
                .asDouble();
        assertEquals(usual / 5, fine, 1e-6 * usual);
    }

    /** Eight readings of a gauge that repeats to 0.05 degrees: 12 numbers to spare show it, as far as the usual 0.25 allows. */
    @Test
    void manyReadings_showHowWellTheGaugeRepeats() throws Exception {
        Path book = book(new Random(1), 0.05, 0, 1, 2, 3, 4, 5, 6, 7);
        JsonNode document = Terminal.run("gauge", book, "--json").json();
        double shownDeg = document.get("repeatabilityDeg").asDouble();
        assertEquals("estimated", document.get("repeatabilityFrom").asText());
        assertEquals(12, document.get("repeatabilitySpareNumbers").asInt());
        assertEquals(Math.sqrt((6 * 0.0625 + 12 * 0.0025) / 18), shownDeg, 0.005);
        double given = fit(book, "--repeatability", "0.25")
                .at("/designLoftDeg/standardError")
                .asDouble();
        assertEquals(
                shownDeg / 0.25,
                document.at("/fits/0/designLoftDeg/standardError").asDouble() / given,
                1e-9);
        String said = Terminal.run("gauge", book).out();
        assertTrue(said.contains("repeats to 0.15 degrees (estimated from these readings)"), said);
        assertTrue(Terminal.run("gauge", book, "--repeatability", "0.1")
                .out()
                .contains("repeats to 0.1 degrees (as given)"));
    }

    @Test
    void fewReadings_assumeTheUsualGauge() throws Exception {
        Path book = book(new Random(1), 0.05, 0, 2, 4);
        JsonNode document = Terminal.run("gauge", book, "--json").json();
        assertEquals(0.25, document.get("repeatabilityDeg").asDouble());
        assertEquals("assumed", document.get("repeatabilityFrom").asText());
        assertTrue(Terminal.run("gauge", book).out().contains("repeats to 0.25 degrees (assumed"));
    }

    /** A coarse gauge is named, not taken for a good one. */
    @Test
    void coarseGauge_isWarnedOf() throws Exception {
        Path book = book(new Random(2), 0.7, 0, 1, 2, 3, 4, 5, 6, 7);
        Terminal gauge = Terminal.run("gauge", book);
        assertTrue(
                gauge.err().contains("Readings!B2: the readings scatter more than those of a usual gauge"),
                gauge.err());
    }

    @Test
    void readingsAtOneHour_sayWhatTheyDoNotTell() throws Exception {
        Path book = book(new Random(1), 0.1, 2, 2, 2);
        JsonNode fit = fit(book);
        assertTrue(fit.at("/bendDeg/standardError").isNull());
        assertTrue(fit.at("/clockOffsetH/standardError").isNull());
        assertEquals(1.5, fit.at("/bendDeg/value").asDouble());
        assertFalse(fit.at("/designLoftDeg/standardError").isNull());
        String said = Terminal.run("gauge", book).out();
        assertTrue(said.contains("do not determine the bend"), said);
        assertTrue(said.contains("leaning one way"), said);
    }

    @Test
    void plantedBlunder_isFlaggedAndNamed() throws Exception {
        BookSketch sketch = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        GaugeBooks.read(sketch, "Driver", TRUTH, new Random(3), 0.1, 0, 1, 2, 3, 4, 5, 6, 7);
        double[] shaft = TRUTH.shaft(4);
        sketch.row(
                "Golfer A",
                "Driver",
                "m4",
                TRUTH.head().gaugeLoftDeg(shaft) + 3,
                TRUTH.head().gaugeLieDeg(shaft));
        Path book = sketch.write(folder.resolve("blunder.xlsx"));
        JsonNode readings = fit(book).get("readings");
        for (int index = 0; index < readings.size(); index++) {
            assertEquals(index == 8, readings.get(index).get("flagged").asBoolean(), readings.toString());
        }
        Terminal gauge = Terminal.run("gauge", book);
        assertTrue(gauge.out().contains("disagrees, left out"), gauge.out());
        assertTrue(gauge.err().contains("Readings!B10: this reading of Driver disagrees"), gauge.err());
        assertTrue(Terminal.run("plan", book).err().contains("Readings!B10"));
    }

    /** Two readings of a glued iron: their mean, good to the repeatability over the root of two. */
    @Test
    void gluedClub_needsNoSettingAndGivesTheMean() throws Exception {
        BookSketch sketch = GaugeBooks.clubs().row("Golfer A", 1, "7 iron", "iron", 32, 62);
        GaugeBooks.readings(sketch)
                .row("Golfer A", "7 iron", null, 33.1, 61.2)
                .row("Golfer A", "7 iron", null, 33.3, 61.4);
        JsonNode fit = fit(sketch.write(folder.resolve("iron.xlsx")));
        assertEquals(33.2, fit.at("/designLoftDeg/value").asDouble(), 1e-6);
        assertEquals(61.3, fit.at("/designLieDeg/value").asDouble(), 1e-6);
        assertEquals(0.25 / Math.sqrt(2), fit.at("/designLieDeg/standardError").asDouble(), 1e-6);
        assertTrue(fit.get("bendDeg").isNull() && fit.get("sleeve").isNull());
    }

    @Test
    void bookWithoutReadings_isAProblem() throws Exception {
        Path bare = GaugeBooks.sleeve(GaugeBooks.driver()).write(folder.resolve("bare.xlsx"));
        Terminal gauge = Terminal.run("gauge", bare, "--write");
        assertEquals(3, gauge.code());
        assertTrue(gauge.err().contains("Readings: there is no reading in this book"), gauge.err());
        assertFalse(Files.exists(folder.resolve("bare-gauged.xlsx")));
        Path empty = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver())).write(folder.resolve("empty.xlsx"));
        assertEquals(3, Terminal.run("gauge", empty).code());
    }

    @Test
    void gauge_writesNothingUnlessTold() throws Exception {
        Path book = book(new Random(1), 0.1, 0, 2, 4);
        byte[] before = Files.readAllBytes(book);
        assertEquals(0, Terminal.run("gauge", book).code());
        try (var files = Files.list(folder)) {
            assertEquals(List.of(book), files.toList());
        }
        assertArrayEquals(before, Files.readAllBytes(book));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gauge a.xlsx --repeatability 0",
                "gauge a.xlsx --repeatability NaN",
                "gauge a.xlsx --repeatability 50",
                "gauge a.xlsx -o b.xlsx",
                "gauge a.xlsx --in-place",
                "gauge a.xlsx --write -o b.xlsx --in-place",
                "gauge"
            })
    void wrongArguments_sayTwoAndWhy(String typed) {
        Terminal wrong = Terminal.run((Object[]) typed.split(" ", -1));
        assertEquals(2, wrong.code(), wrong.err());
        assertFalse(wrong.err().isBlank());
    }
}
