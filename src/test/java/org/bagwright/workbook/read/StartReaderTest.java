package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class StartReaderTest {
    private static TestBook start(Object... labelsAndValues) {
        TestBook book = TestBook.sound().without("Start").sheet("Start");
        for (int index = 0; index < labelsAndValues.length; index += 2) {
            book.row(labelsAndValues[index], labelsAndValues[index + 1]);
        }
        return book;
    }

    @Test
    void everySetting_isRead() {
        BookSettings settings = start(
                        "Setting", "Value",
                        "Title", "Spring fitting",
                        "Distance", "m",
                        "SPEED", "km/h",
                        "Length", "mm",
                        "Temperature", "F",
                        "Air  temperature", 86,
                        "Altitude", 1600,
                        "Humidity", 0.3,
                        "Ball model", "smits and smith",
                        "Rules length limit", 46,
                        "Match by", "Inertia",
                        "Match over", "bag")
                .set("Golfers!C2", 150)
                .set("Golfers!D2", 125)
                .set("Clubs!G2", 1150)
                .set("Clubs!G3", 1100)
                .set("Clubs!G4", 940)
                .set("Shots!C2", 150)
                .set("Shots!D2", 225)
                .book()
                .settings();
        assertEquals(Optional.of("Spring fitting"), settings.title());
        assertEquals(LengthUnit.METRE, settings.units().distance());
        assertEquals(SpeedUnit.KILOMETRES_PER_HOUR, settings.units().speed());
        assertEquals(LengthUnit.MILLIMETRE, settings.units().length());
        assertEquals(30, settings.air().temperatureC(), 1e-9);
        assertEquals(1600, settings.air().altitudeM(), 1e-9);
        assertEquals(0.3, settings.air().humidityRatio(), 1e-12);
        assertEquals(BallModelKind.SMITS_SMITH, settings.ballModel());
        assertEquals(46 * 0.0254, settings.lengthLimitM(), 1e-12);
        assertEquals(new Matching(Matching.By.INERTIA, Matching.Over.BAG), settings.matching());
    }

    @Test
    void missingSheet_isAssumedAndNoProblem() {
        TestBook book = TestBook.sound().without("Start").without("Shots").without("Aims");
        assertEquals(BookSettings.DEFAULT, book.book().settings());
        List<String> assumed = book.read().messages().stream()
                .filter(message -> message.text().startsWith("the sheet is missing"))
                .map(message -> message.severity() + " " + message.cell())
                .toList();
        assertEquals(List.of("MISSING Start", "MISSING Shots", "MISSING Aims"), assumed);
    }

    @Test
    void planFor_isWhatIsLikelyUnlessTheBookAsksForTheBestGuess() {
        for (Measure measure : Measure.values()) {
            boolean uncertain = measure == Measure.GAP || measure == Measure.CARRY;
            for (String likely : Arrays.asList(null, "what is likely", "What is  Likely")) {
                Book book = start("Plan for", likely).book();
                assertEquals(
                        BookSettings.PlanFor.WHAT_IS_LIKELY, book.settings().planFor());
                assertEquals(uncertain, book.aims().of(measure).onWhatIsLikely(), measure + " " + likely);
            }
            Book guess = start("Plan for", "best guess").without("Aims").book();
            assertFalse(guess.aims().of(measure).onWhatIsLikely(), measure.toString());
            Book bare = TestBook.sound().without("Start").without("Aims").book();
            assertEquals(uncertain, bare.aims().of(measure).onWhatIsLikely(), measure.toString());
        }
        assertEquals(
                List.of("Start!B1: Plan for must be what is likely or best guess, found \"best\"."
                        + " Maybe \"best guess\"?"),
                start("Plan for", "best").problems());
    }

    @Test
    void blankSettings_areListedAsAssumed() {
        List<String> assumed = start("Distance", "m", "Speed", null).lines(Message.Severity.ASSUMED).stream()
                .filter(line -> line.startsWith("Start"))
                .toList();
        assertEquals(
                List.of(
                        "Start: not given, so assumed: Speed mph; Length in; Temperature C; Air temperature 20 C (68 F);"
                                + " Altitude sea level; Humidity 50; Head wind 0; Cross wind 0; Ball model Bearman-Harvey;"
                                + " Rules length limit 48; Match by swingweight; Match over kind; Plan for"
                                + " what is likely."),
                assumed);
    }

    @Test
    void labelInAnotherColumnWithNotesAround_isFound() {
        TestBook book = TestBook.sound().without("Start").sheet("Start").row("How to fill this book");
        book.rowAt(4, 2, "Altitude [ft]", 1000, "feet above the sea").rowAt(5, 0, "Phone", "555", "Distance", "m");
        BookSettings settings = book.book().settings();
        assertEquals(304.8, settings.air().altitudeM(), 1e-9);
        assertEquals(LengthUnit.METRE, settings.units().distance());
    }

    @ParameterizedTest
    @CsvSource({
        "Altitude,300 ft,91.44",
        "Altitude,250 m,250",
        "Altitude [ft],1000,304.8",
        "Altitude [ft],100 m,100",
        "Altitude,-400,-400"
    })
    void altitude_isReadInItsUnit(String label, String value, double expectedM) {
        assertEquals(expectedM, start(label, value).book().settings().air().altitudeM(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "mph, Head wind, 10, 4.4704, 0",
        "km/h, Head wind, -18, -5, 0",
        "mph, Cross wind, 5 m/s, 0, 5",
        "mph, Cross wind [km/h], -36, 0, -10",
        "mph, Cross wind [m/s], 25, 0, 25"
    })
    void wind_isReadInTheBooksSpeedUnit(String speed, String label, String value, double headMps, double crossMps) {
        AirConditions air =
                start("Speed", speed, label, value).book().settings().air();
        assertEquals(headMps, air.headWindMps(), 1e-9);
        assertEquals(crossMps, air.crossWindMps(), 1e-9);
    }

    @Test
    void stormInTheWindCells_isAProblem() {
        assertEquals(
                List.of(
                        "Start!B1: Head wind must be -55.9 to 55.9 mph, found 60.",
                        "Start!B2: Cross wind must be -55.9 to 55.9 mph, found \"-26 m/s\"."),
                start("Head wind", 60, "Cross wind", "-26 m/s").problems());
    }

    @ParameterizedTest
    @CsvSource({"0.4,0.4", "40,0.4", "1,1", "100,1", "40 %,0.4", "0.5 %,0.005", "0,0"})
    void humidity_isPercentAboveOne(String value, double expectedRatio) {
        assertEquals(
                expectedRatio, start("Humidity", value).book().settings().air().humidityRatio(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"68 F,20", "20 °C,20", "20,20", "-4 f,-20", "20°,20"})
    void airTemperature_isReadInItsUnit(String value, double expectedC) {
        assertEquals(
                expectedC,
                start("Air temperature", value).book().settings().air().temperatureC(),
                1e-9);
    }

    @Test
    void wrongSettings_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Start!B1: Distance must be yd or m, found \"feet\".",
                        "Start!B2: Speed must be mph, m/s or km/h, found \"mpf\". Maybe \"mph\"?",
                        "Start!B3: Length must be in or mm, found \"cm\".",
                        "Start!B4: Temperature must be C or F, found \"K\".",
                        "Start!B5: Air temperature must be -30 to 55 C, found 68.",
                        "Start!B6: Altitude must be -450 to 5000 m, found 9000.",
                        "Start!B7: Humidity must be 0 to 100 percent, found \"damp\".",
                        "Start!B8: Ball model must be Bearman-Harvey or Smits-Smith, found \"Smit-Smith\". Maybe"
                                + " \"Smits-Smith\"?",
                        "Start!B9: Rules length limit must be 48 or 46 (inches), found 47.",
                        "Start!B10: Match by must be swingweight or inertia, found \"inerta\". Maybe \"inertia\"?",
                        "Start!B11: Match over must be kind, irons or bag, found 3."),
                start(
                                "Distance", "feet",
                                "Speed", "mpf",
                                "Length", "cm",
                                "Temperature", "K",
                                "Air temperature", 68,
                                "Altitude", 9000,
                                "Humidity", "damp",
                                "Ball model", "Smit-Smith",
                                "Rules length limit", 47,
                                "Match by", "inerta",
                                "Match over", 3)
                        .problems());
    }

    @Test
    void unitAfterALabel_isReadInSquareBracketsAndCheckedThere() {
        assertEquals(
                List.of(
                        "Start!B2: the unit in brackets after Air temperature must be one of C, F, found \"K\".",
                        "Start!B1: the unit in brackets after Altitude must be one of m, ft, found \"furlong\"."),
                start("Altitude [furlong]", 3, "Air temperature [K]", 280).problems());
        assertEquals(304.8, start("Altitude (ft)", 1000).book().settings().air().altitudeM(), 1e-9);
        assertEquals(
                1000,
                start("Altitude (above the sea)", 1000).book().settings().air().altitudeM(),
                1e-9);
    }

    @Test
    void settingGivenTwice_isAProblem() {
        assertEquals(
                List.of("Start!B2: Distance is given twice, first in Start!B1; expected once."),
                start("Distance", "m", "Distance", "yd").problems());
    }

    @Test
    void sheetName_mayHaveOtherCase() {
        TestBook book = TestBook.sound().rename("Start", "START").set("START!B1", "m");
        assertEquals(LengthUnit.METRE, book.book().settings().units().distance());
        assertTrue(book.lines(Message.Severity.MISSING).stream().noneMatch(line -> line.contains("sheet is missing")));
    }
}
