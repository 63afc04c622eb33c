package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sleeves of every kind and golfers of both kinds through chart and plan, against vector algebra of the test's own. */
@Tag("analytic")
class HeadAndSleeveTest {
    private static final VectorClub HEAD = new VectorClub(9.5, 58, 0);

    @TempDir
    Path folder;

    private static BookSketch golfer(String squares) {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed, Squares face")
                .row("Golfer B", 95, 80, squares)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Sleeve, Setting")
                .row("Golfer B", 1, "Driver", "driver", 9.5, 58, "S", "N");
    }

    private static JsonNode option(JsonNode chart, String mark) {
        for (JsonNode option : chart.at("/clubs/0/options")) {
            if (option.get("setting").asText().equals(mark)) {
                return option;
            }
        }
        throw new AssertionError("no option " + mark);
    }

    private JsonNode chart(BookSketch book) throws Exception {
        Terminal chart = Terminal.run("chart", book.write(folder.resolve("b.xlsx")), "--json");
        assertEquals(0, chart.code(), chart.err());
        return chart.json();
    }

    private static String messages(JsonNode chart) {
        return chart.get("messages").toString();
    }

    @Test
    void twoRings_areTurnedOneAfterTheOther() throws Exception {
        JsonNode chart = chart(golfer("yes")
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Clock 2, Bend 2")
                .row("S", "N", 12, 1, 6, 1)
                .row("S", "A", 3, 1.2, "1:30", 0.8)
                .row("S", "B", 9, 1.2, "1:30", 0.8)
                .row("S", "C", 3, 1, 9, 1));
        double[][] rings = {{12, 1, 6, 1}, {3, 1.2, 1.5, 0.8}, {9, 1.2, 1.5, 0.8}, {3, 1, 9, 1}};
        String[] marks = {"N", "A", "B", "C"};
        for (int index = 0; index < marks.length; index++) {
            double[] shaft = HEAD.shaft(rings[index]);
            JsonNode option = option(chart, marks[index]);
            assertEquals(HEAD.gaugeLoftDeg(shaft), option.get("gaugeLoftDeg").asDouble(), 1e-9);
            assertEquals(HEAD.gaugeLieDeg(shaft), option.get("gaugeLieDeg").asDouble(), 1e-9);
        }
        assertEquals(9.5, option(chart, "C").get("gaugeLoftDeg").asDouble(), 1e-9, "equal and opposite rings");
    }

    /** A table is the truth for loft and lie; a blank Face change leaves the face to the geometry, a 0 does not. */
    @Test
    void ratedTable_setsLoftAndLieAndTheFaceWhereItNamesOne() throws Exception {
        JsonNode chart = chart(golfer("yes")
                .sheet("Sleeves", "Sleeve, Setting, Loft change, Lie change, Face change")
                .row("S", "N", 0, 0, 0)
                .row("S", "up", 1.5, 0.2, null)
                .row("S", "level", 1.5, 0.2, 0)
                .row("S", "closed", 1.5, 0.2, 1.25));
        for (String mark : new String[] {"up", "level", "closed"}) {
            assertEquals(11, option(chart, mark).get("gaugeLoftDeg").asDouble(), 1e-9);
            assertEquals(58.2, option(chart, mark).get("gaugeLieDeg").asDouble(), 1e-9);
        }
        double sits = option(chart, "N").get("sitsClosedDeg").asDouble();
        assertEquals(sits, option(chart, "level").get("sitsClosedDeg").asDouble(), 1e-9);
        assertEquals(sits + 1.25, option(chart, "closed").get("sitsClosedDeg").asDouble(), 1e-9);
        double lean = Math.toRadians(1.5);
        double lie = Math.toRadians(58.2);
        double[] shaft = {Math.sin(lie) * Math.sin(lean), Math.cos(lie), Math.sin(lie) * Math.cos(lean)};
        assertEquals(
                HEAD.flatSitsDeg(shaft),
                option(chart, "up").get("sitsClosedDeg").asDouble(),
                0.005);
        assertTrue(messages(chart).contains("sleeve S, setting level: face change -2.4"), messages(chart));
    }

    /** Bends of the table by hand: acos of the cosine between bore and shaft; their mean and spread are told. */
    @Test
    void ratedOnlySleeve_isToldAsOneRing() throws Exception {
        JsonNode chart = chart(golfer("yes")
                .sheet("Sleeves", "Sleeve, Setting, Loft change, Lie change")
                .row("S", "N", 0, 1.4)
                .row("S", "F", 0, -1));
        assertTrue(
                messages(chart).contains("read as one ring: Driver (sleeve S, a bend of 1.2 degrees, misfit 0.2)"),
                messages(chart));
        assertFalse(messages(chart).contains("the table is used"), messages(chart));
    }

    /** Hour 3 and 1 degree give 1 / sin(58) = 1.18 degrees of loft and 0.0 of lie; the table says 2 and 0.5. */
    @Test
    void tableAndRingsThatDisagree_areWarnedOf() throws Exception {
        JsonNode chart = chart(golfer("yes")
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Loft change, Lie change, Face change")
                .row("S", "N", 12, 0)
                .row("S", "A", 3, 1, 2, 0.5, null)
                .row("S", "B", 3, 1, 1.2, 0.1, 1.9)
                .row("S", "C", 3, 1, null, null, 0.4));
        double loftOff = 2 - (HEAD.gaugeLoftDeg(HEAD.shaft(3, 1)) - 9.5);
        double lieOff = 0.5 - (HEAD.gaugeLieDeg(HEAD.shaft(3, 1)) - 58);
        for (String expected : List.of(
                String.format(Locale.ROOT, "sleeve S, setting A: loft change %+.2f degrees off", loftOff),
                String.format(Locale.ROOT, "sleeve S, setting A: lie change %+.2f degrees off", lieOff),
                "off the rings, and the table is used: Driver (",
                "sleeve S, setting C: face change -1.4")) {
            assertTrue(messages(chart).contains(expected), messages(chart));
        }
        assertFalse(messages(chart).contains("setting B"), messages(chart));
        assertEquals(
                HEAD.gaugeLoftDeg(HEAD.shaft(3, 1)),
                option(chart, "C").get("gaugeLoftDeg").asDouble(),
                1e-9);
    }

    @Test
    void halfATable_isAProblemAtItsCell() throws Exception {
        Path book = golfer("yes")
                .sheet("Sleeves", "Sleeve, Setting, Loft change, Lie change, Face change")
                .row("S", "N", 0, 0)
                .row("S", "A", 1, null, 2)
                .write(folder.resolve("half.xlsx"));
        Terminal check = Terminal.run("check", book);
        assertEquals(3, check.code());
        assertTrue(check.out().contains("Sleeves!D3: lie change must be filled in"), check.out());
    }

    private static BookSketch rings(BookSketch book) {
        return book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend")
                .row("S", "N", 12, 0)
                .row("S", "3", 3, 1.7)
                .row("S", "up", 12, 1.7);
    }

    /** The check table of the model: bend 1.7 at hour 3 sits 3.205 closed and gauges 2.004 more loft. */
    @Test
    void golferWhoLetsTheHeadSit_getsItsLoftAndItsFace() throws Exception {
        JsonNode sits = chart(rings(golfer("no")));
        JsonNode squares = chart(rings(golfer("yes")));
        assertEquals(3.205, option(sits, "3").get("deliveredFaceClosedDeg").asDouble(), 5e-4);
        assertEquals(0.003, option(squares, "3").get("deliveredFaceClosedDeg").asDouble(), 5e-4);
        double upHeading = HEAD.faceHeadingDeg(HEAD.shaft(12, 1.7), 58);
        assertEquals(
                upHeading, option(squares, "up").get("deliveredFaceClosedDeg").asDouble(), 1e-9);
        assertEquals(0.2844, upHeading, 5e-5);
        double dullCarry = option(sits, "3").get("launchDeg").asDouble()
                - option(sits, "N").get("launchDeg").asDouble();
        double squaredCarry = option(squares, "3").get("launchDeg").asDouble()
                - option(squares, "N").get("launchDeg").asDouble();
        assertEquals(0, dullCarry, 0.005, "as it sits the loft stays");
        assertTrue(squaredCarry > 1.4, "squared the loft rises by 2 degrees: " + squaredCarry);
    }

    @Test
    void squaringOrNot_isSaidInWordsWithNumbers() throws Exception {
        String sits = messages(chart(rings(golfer("no"))));
        assertTrue(
                sits.contains(
                        "since the golfer lets the head sit: Golfer B (setting 3 of Driver changes the face by +3.2 degrees (closed is"
                                + " positive) and the loft by 0.0; if squared, it would change the face by 0.0"
                                + " degrees (closed is"
                                + " positive) and the loft by +2.0"),
                sits);
        String squares = messages(chart(rings(golfer("yes"))));
        assertTrue(
                squares.contains(
                        "since the golfer squares the face: Golfer B (setting 3 of Driver changes the face by 0.0 degrees"),
                squares);
    }

    @Test
    void planOfAGolferWhoLetsTheHeadSit_showsTheDeliveredFace() throws Exception {
        Path book = rings(golfer("no")).write(folder.resolve("sits.xlsx"));
        assertEquals(0, Terminal.run("plan", book).code());
        try (XSSFWorkbook planned = GaugeBooks.open(folder.resolve("sits-plan.xlsx"))) {
            var settings = planned.getSheet("Settings");
            int column = -1;
            for (Cell heading : settings.getRow(3)) {
                column = heading.toString().equals("Delivered face [deg closed]") ? heading.getColumnIndex() : column;
            }
            for (Row row : settings) {
                if (row.getRowNum() > 3
                        && row.getCell(3) != null
                        && row.getCell(3).toString().startsWith("3")) {
                    // Three decimals of the number worked out by hand.
                    assertEquals(3.205, row.getCell(column).getNumericCellValue(), 5e-4);
                    return;
                }
            }
            throw new AssertionError("no row of setting 3");
        }
    }

    /** A centre of gravity above a sole radius would topple; that is said at the club's cell before anything is made. */
    @Test
    void headThatWouldTopple_isAProblemAtTheClub() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer")
                .row("Golfer B")
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Sole radius, CG height")
                .row("Golfer B", 1, "Driver", "driver", 9.5, 58, 25, 40)
                .write(folder.resolve("topple.xlsx"));
        for (String command : new String[] {"check", "chart", "plan"}) {
            Terminal wrong = Terminal.run(command, book);
            assertEquals(3, wrong.code(), wrong.err());
            String said = wrong.out() + wrong.err();
            assertTrue(said.contains("Clubs!C2: Driver: a head rests on its sole only while"), said);
        }
    }
}
