package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet Sessions, from the rows of the sheet Shots to its cells, the documents for programs and a comparison. */
@Tag("analytic")
class SessionsSheetTest {
    private static final String MAY = "2026-05-14";
    private static final String SEPTEMBER = "2026-09-20";
    private static final double CHANGE_YD = 15;

    @TempDir
    Path folder;

    private final List<Double> mayCarriesYd = new ArrayList<>();

    private static BookSketch bag() {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 96, 80)
                .sheet("Clubs", "Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Stated at")
                .row(1, "Driver", "driver", 10.5, 58, 45, "S", 1, 1)
                .row(2, "5 wood", "wood", 18, 58.5, 42)
                .row(3, "7 iron", "iron", 31, 62, 37)
                .row(4, "PW", "wedge", 45, 64, 35.5)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend")
                .row("S", 1, 12, 1.5)
                .row("S", 2, 6, 1.5)
                .sheet("Shots", "Club, Date, Setting, Carry, Side, Ball speed");
    }

    /** Eight shots with each club on one day, the 7 iron after something has changed. */
    private void session(BookSketch book, String day, double ironLongerYd) {
        Random random = new Random(day.hashCode());
        List<List<Object>> clubs = List.of(
                List.of("Driver", 222.0, 141.0), List.of("5 wood", 200.0, 127.0), List.of("7 iron", 150.0, 108.0));
        for (List<Object> club : clubs) {
            double longerYd = club.get(0).equals("7 iron") ? ironLongerYd : 0;
            for (int shot = 0; shot < 8; shot++) {
                double ratio = 1 + 0.02 * random.nextGaussian();
                double carryYd = Math.round(10 * ((double) club.get(1) * ratio + longerYd)) / 10.0;
                if (day.equals(MAY) && club.get(0).equals("7 iron")) {
                    mayCarriesYd.add(carryYd);
                }
                book.row(
                        club.get(0),
                        day,
                        club.get(0).equals("Driver") ? 1 : null,
                        carryYd,
                        shot - 3.5,
                        (double) club.get(2) * Math.sqrt(ratio));
            }
        }
    }

    private Path may() throws Exception {
        BookSketch book = bag();
        session(book, MAY, 0);
        return book.write(folder.resolve("may.xlsx"));
    }

    private Path september() throws Exception {
        BookSketch book = bag();
        session(book, MAY, 0);
        session(book, SEPTEMBER, CHANGE_YD);
        return book.write(folder.resolve("september.xlsx"));
    }

    private JsonNode sessions(Path book, Path result) throws Exception {
        Terminal run = Terminal.run("plan", book, "--json", "-o", result);
        assertEquals(0, run.code(), run.err());
        return run.json().at("/golfers/0/sessions");
    }

    private static JsonNode session(JsonNode sessions, String club, String day) {
        for (JsonNode session : sessions) {
            if (session.get("club").asText().equals(club)
                    && session.get("date").asText().equals(day)) {
                return session;
            }
        }
        throw new AssertionError("no session of " + club + " on " + day);
    }

    @Test
    void meanAndSpread_areThoseOfAnIndependentLibrary() throws Exception {
        JsonNode iron = session(sessions(september(), folder.resolve("x.xlsx")), "7 iron", MAY);
        DescriptiveStatistics carries = new DescriptiveStatistics();
        mayCarriesYd.forEach(carries::addValue);
        assertEquals(carries.getMean(), iron.at("/carry/mean").asDouble(), 1e-9);
        assertEquals(carries.getStandardDeviation(), iron.at("/carry/spread").asDouble(), 1e-9);
        assertEquals(0, iron.at("/side/mean").asDouble(), 1e-9);
        assertEquals(8, iron.get("shots").asInt());
        assertNull(iron.get("spin"));
    }

    /** What is predicted for September is the carry of today in the book of May. */
    @Test
    void predicted_isWhatTheEarlierBookSays_andLaterShotsDoNotChangeIt() throws Exception {
        Path may = may();
        JsonNode chart = Terminal.run("plan", may, "--json", "-o", folder.resolve("m.xlsx"))
                .json();
        JsonNode before = chart.at("/golfers/0/sessions");
        JsonNode after = sessions(september(), folder.resolve("s.xlsx"));
        assertEquals(3, before.size());
        assertEquals(6, after.size());
        for (String club : List.of("Driver", "5 wood", "7 iron")) {
            assertEquals(session(before, club, MAY), session(after, club, MAY));
            assertEquals(
                    "nothing to predict from",
                    session(after, club, MAY).get("cameOut").asText());
            assertNull(session(after, club, MAY).get("predicted"));
        }
        double ironYd = Terminal.run("chart", may, "--json")
                .json()
                .at("/clubs/2/options/0/carry")
                .asDouble();
        assertEquals(
                ironYd, session(after, "7 iron", SEPTEMBER).get("predicted").asDouble(), 0.15);
    }

    @Test
    void changeOfOneClub_isFound_andTheOthersAreAsPredicted() throws Exception {
        JsonNode sessions = sessions(september(), folder.resolve("s.xlsx"));
        JsonNode iron = session(sessions, "7 iron", SEPTEMBER);
        assertTrue(
                iron.get("cameOut").asText().matches("1[1-9] yd longer than predicted: more than chance"), "" + iron);
        assertTrue(iron.get("offBy").asDouble() > iron.get("range95").asDouble());
        assertEquals(
                "as predicted",
                session(sessions, "Driver", SEPTEMBER).get("cameOut").asText());
        assertEquals(
                "as predicted",
                session(sessions, "5 wood", SEPTEMBER).get("cameOut").asText());
    }

    /** Of a club its own shots of a day say nothing of the day. */
    @Test
    void day_isToldByTheOtherClubsAlone() throws Exception {
        JsonNode changed = sessions(september(), folder.resolve("s.xlsx"));
        BookSketch book = bag();
        session(book, MAY, 0);
        session(book, SEPTEMBER, 0);
        JsonNode same = sessions(book.write(folder.resolve("same.xlsx")), folder.resolve("x.xlsx"));
        assertEquals(
                session(same, "7 iron", SEPTEMBER).get("day").asDouble(),
                session(changed, "7 iron", SEPTEMBER).get("day").asDouble(),
                0.2);
        assertTrue(session(changed, "Driver", SEPTEMBER).get("day").asDouble()
                > session(same, "Driver", SEPTEMBER).get("day").asDouble());
    }

    @Test
    void sheet_showsWhatTheDocumentSays_withAChart() throws Exception {
        Path result = folder.resolve("s.xlsx");
        JsonNode sessions = sessions(september(), result);
        try (XSSFWorkbook workbook = ResultCells.open(result)) {
            XSSFSheet sheet = workbook.getSheet("Sessions");
            assertEquals("Golfer A", sheet.getRow(4).getCell(0).getStringCellValue());
            for (int row = 0; row < sessions.size(); row++) {
                JsonNode session = sessions.get(row);
                Row cells = sheet.getRow(5 + row);
                assertEquals(session.get("club").asText(), cells.getCell(0).getStringCellValue());
                assertEquals(
                        session.get("date").asText(),
                        cells.getCell(1)
                                .getLocalDateTimeCellValue()
                                .toLocalDate()
                                .toString());
                assertEquals(session.get("setUp").asText(), cells.getCell(2).getStringCellValue());
                assertEquals(
                        session.at("/carry/mean").asDouble(), cells.getCell(4).getNumericCellValue(), 1e-9);
                assertEquals(session.get("cameOut").asText(), cells.getCell(10).getStringCellValue());
            }
            assertEquals("setting 1", sheet.getRow(5).getCell(2).getStringCellValue());
            assertEquals(1, sheet.getDrawingPatriarch().getCharts().size());
        }
    }

    @Test
    void withoutDates_thereIsNoSheet_andAnOwnSheetOfThatNameStays() throws Exception {
        BookSketch book = bag();
        for (int shot = 0; shot < 5; shot++) {
            book.row("7 iron", null, null, 148 + shot, 0, 108);
        }
        book.sheet("Sessions", "My own notes");
        Path result = folder.resolve("plan.xlsx");
        Terminal run = Terminal.run("plan", book.write(folder.resolve("own.xlsx")), "--json", "-o", result);
        assertEquals(0, run.code(), run.err());
        assertEquals(0, run.json().at("/golfers/0/sessions").size());
        try (XSSFWorkbook workbook = ResultCells.open(result)) {
            assertEquals(
                    "My own notes",
                    workbook.getSheet("Sessions").getRow(0).getCell(0).getStringCellValue());
        }
    }

    @Test
    void ownSheetSessions_isAProblem_whereThePlanNeedsTheName() throws Exception {
        BookSketch book = bag();
        session(book, MAY, 0);
        book.sheet("Sessions", "My own notes");
        Terminal run = Terminal.run("plan", book.write(folder.resolve("own.xlsx")), "-o", folder.resolve("x.xlsx"));
        assertEquals(3, run.code());
        assertTrue(run.err().contains("Sessions: this sheet is your own"), run.err());
    }

    @Test
    void shotsWithoutDate_areTheFirstSession() throws Exception {
        BookSketch book = bag();
        for (int shot = 0; shot < 8; shot++) {
            book.row("7 iron", null, null, 148 + 0.7 * shot, 0, 108);
        }
        session(book, MAY, 0);
        JsonNode sessions = sessions(book.write(folder.resolve("b.xlsx")), folder.resolve("x.xlsx"));
        JsonNode first = session(sessions, "7 iron", "null");
        assertEquals("nothing to predict from", first.get("cameOut").asText());
        JsonNode may = session(sessions, "7 iron", MAY);
        // The mean of the eight carries, from which what is assumed of the club draws it a little.
        assertEquals(150.5, may.get("predicted").asDouble(), 0.5);
        JsonNode driver = session(sessions, "Driver", MAY);
        assertTrue(driver.get("range95").asDouble() > 1.5 * may.get("range95").asDouble(), "" + driver);
    }

    @Test
    void comparison_showsBothBooksSideBySide() throws Exception {
        Path out = folder.resolve("compare.xlsx");
        Terminal run = Terminal.run("compare", may(), september(), "--json", "-o", out);
        assertEquals(0, run.code(), run.err());
        JsonNode fields = run.json().at("/golfers/0/clubs/2/sessions");
        assertEquals(List.of(MAY, SEPTEMBER), values(fields, "last session"));
        List<String> cameOut = values(fields, "last session: came out");
        assertEquals("nothing to predict from", cameOut.get(0));
        assertTrue(cameOut.get(1).endsWith("more than chance"), cameOut.get(1));
        assertEquals("null", values(fields, SEPTEMBER + ": predicted").get(0));
        try (XSSFWorkbook workbook = ResultCells.open(out)) {
            assertNotNull(row(workbook.getSheet("Side by side"), "last session: predicted"));
            Row words = row(workbook.getSheet("Side by side"), "last session: came out");
            assertEquals("nothing to predict from", words.getCell(6).getStringCellValue());
        }
        Terminal text = Terminal.run("compare", folder.resolve("may.xlsx"), folder.resolve("september.xlsx"));
        assertTrue(text.out().contains("Came out other than predicted:"), text.out());
    }

    private static List<String> values(JsonNode fields, String what) {
        for (JsonNode field : fields) {
            if (field.get("what").asText().equals(what)) {
                return List.of(
                        field.at("/values/0").asText(), field.at("/values/1").asText());
            }
        }
        throw new AssertionError(what + " is not in " + fields);
    }

    private static Row row(XSSFSheet sheet, String what) {
        for (Row row : sheet) {
            if (row.getCell(3) != null && row.getCell(3).toString().equals(what)) {
                return row;
            }
        }
        return null;
    }
}
