package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.workbook.TestBook.Formula;
import org.bagwright.workbook.TestBook.Shown;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("analytic")
class ValuesTest {
    private static final double M_PER_IN = 0.0254;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"10.5|10.5", "10,5|10.5", "' 9 deg '|9", "9.5°|9.5", "12 degrees|12", "+11|11", ".5|0.5", "8,125|"
            })
    void textInANumberCell_isReadWhenItHasOneMeaning(String typed, Double expectedDeg) {
        TestBook book = TestBook.sound().set("Clubs!E2", typed);
        if (expectedDeg == null) {
            assertEquals(
                    List.of("Clubs!E2: loft must be a number in degrees, found \"" + typed
                            + "\", which can be read two ways; write it without a thousands separator."),
                    book.problems());
        } else {
            assertEquals(expectedDeg, book.book().clubs().get(0).head().loftDeg(), 1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"43 in|43", "43\"|43", "43 1/2|43.5", "43 1/2 in|43.5", "1092.2 mm|43", "109,22 cm|43"})
    void lengthWithItsUnit_isReadInThatUnit(String typed, double expectedIn) {
        Book book = TestBook.sound().set("Clubs!G2", typed).book();
        assertEquals(
                expectedIn * M_PER_IN, book.clubs().get(0).parts().lengthM().orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"43 kg", "43 44", "about 43", "43-", "1.2.3", "4e1", "43 2/0", "43 3/2", "NaN", "Infinity"})
    void textThatIsNoLength_isAProblem(String typed) {
        assertEquals(
                List.of("Clubs!G2: length must be a number in in, found \"" + typed + "\".")
                        .toString()
                        .replace("number in in", "number in inches"),
                TestBook.sound().set("Clubs!G2", typed).problems().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2700|2700", "2700 rpm|2700", "2,700.0|2700", "2.700,0|2700", "2,700|", "2.700|"})
    void spinWithSeparators_isReadWhenItHasOneMeaning(String typed, Double expectedRpm) {
        TestBook book = TestBook.sound().set("Shots!F2", typed);
        if (expectedRpm == null) {
            assertEquals(List.of("Shots!F2"), book.problemCells());
        } else {
            assertEquals(
                    OptionalDouble.of(expectedRpm),
                    book.book().shots().get(0).measured().spinRpm());
        }
    }

    @Test
    void dateInANumberCell_isAProblem() {
        assertEquals(
                List.of("Clubs!E2: loft must be a number in degrees, found a date or a time of day."),
                TestBook.sound().set("Clubs!E2", new Shown(45123, "yyyy-mm-dd")).problems());
    }

    @Test
    void truthInANumberCell_isAProblem() {
        assertEquals(
                List.of("Clubs!E2: loft must be a number in degrees, found TRUE."),
                TestBook.sound().set("Clubs!E2", true).problems());
    }

    @Test
    void formulaWithoutSavedValue_isCalculated() {
        Book book = TestBook.sound()
                .set("Clubs!E2", new Formula("9+1.5"))
                .set("Clubs!C2", new Formula("\"Dri\"&\"ver\""))
                .book();
        assertEquals(10.5, book.clubs().get(0).head().loftDeg(), 1e-12);
        assertEquals("Driver", book.clubs().get(0).name());
    }

    @Test
    void formulaWithSavedValue_keepsTheSavedValue() {
        TestBook book = TestBook.sound().set("Clubs!E2", new Formula("9+1.5"));
        book.cell("Clubs!E2").getCTCell().setV("11.25");
        assertEquals(11.25, book.book().clubs().get(0).head().loftDeg(), 1e-12);
    }

    @Test
    void formulaWithAnEmptySavedValue_isCalculated() {
        TestBook book = TestBook.sound().set("Clubs!E2", new Formula("9+1.5"));
        book.cell("Clubs!E2").getCTCell().setV("");
        assertEquals(10.5, book.book().clubs().get(0).head().loftDeg(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1/0|#DIV/0!", "NA()|#N/A", "SQRT(-1)|#NUM!", "\"a\"*1|#VALUE!"})
    void formulaThatGivesAnError_namesTheError(String formula, String error) {
        assertEquals(
                List.of("Clubs!E2: loft must be a number in degrees, found the error " + error + "."),
                TestBook.sound().set("Clubs!E2", new Formula(formula)).problems());
    }

    @Test
    void formulaThatCannotBeCalculated_isAProblemThatShowsIt() {
        assertEquals(
                List.of(
                        "Clubs!E2: loft must be a number in degrees, found a formula without a saved value that cannot be"
                                + " calculated here, =CUBEVALUE(\"a\")."),
                TestBook.sound()
                        .set("Clubs!E2", new Formula("CUBEVALUE(\"a\")"))
                        .problems());
    }

    @Test
    void errorInATextCell_isAProblem() {
        assertEquals(
                List.of("Clubs!C2: club must be text, found the error #N/A; expected a name or a mark."),
                TestBook.sound().set("Clubs!C2", new Formula("NA()")).problems());
    }

    @Test
    void dateInAMarkCell_saysHowToMendIt() {
        assertEquals(
                List.of(
                        "Clubs!I2: setting must be text, found a date or a time of day; format the cell as text and type"
                                + " it again."),
                TestBook.sound().set("Clubs!I2", new Shown(45383, "d-mmm")).problems());
    }

    @ParameterizedTest
    @CsvSource({"yes,true", "Y,true", "TRUE,true", "x,true", "No,false", "n,false", "false,false"})
    void yesNoWords_areRead(String typed, boolean expected) {
        TestBook book = TestBook.sound().set("Clubs!K1", "Pinned").set("Clubs!K2", typed);
        assertEquals(expected, book.book().clubs().get(0).pinned());
    }

    @Test
    void yesNo_truthCellIsReadAndOtherWordIsAProblem() {
        TestBook book = TestBook.sound().set("Clubs!K1", "Pinned").set("Clubs!K2", true);
        assertTrue(book.book().clubs().get(0).pinned());
        assertEquals(
                List.of("Clubs!K2: pinned must be yes or no, found \"maybe\"."),
                book.set("Clubs!K2", "maybe").problems());
    }

    @Test
    void markOfANumberCell_isItsText() {
        Book book = TestBook.sound()
                .set("Sleeves!B2", 1.0)
                .set("Sleeves!B3", "2")
                .set("Clubs!I2", "1")
                .set("Clubs!I3", 2)
                .book();
        assertEquals("1", book.clubs().get(0).today().setting().orElseThrow());
        assertEquals("2", book.clubs().get(1).today().setting().orElseThrow());
        assertEquals("1", book.sleeves().get(0).settings().get(0).mark());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1:30|1.5", "01:30|1.5", "1:30:00|1.5", "1.5|1.5", "1,5|1.5", "1.5 h|1.5", "12:00|0", "12|0", "0|0"
            })
    void clockAsText_isReadAsHours(String typed, double expectedH) {
        assertEquals(expectedH, clockOf(TestBook.sound().set("Sleeves!C3", typed)), 1e-9);
    }

    @Test
    void clockAsNumberOrTimeOfDay_isReadAsHours() {
        assertEquals(1.5, clockOf(TestBook.sound().set("Sleeves!C3", 1.5)), 1e-12);
        assertEquals(0, clockOf(TestBook.sound().set("Sleeves!C3", 12)), 1e-12);
        assertEquals(1.5, clockOf(TestBook.sound().set("Sleeves!C3", new Shown(0.0625, "h:mm"))), 1e-9);
        assertEquals(
                7 + 1 / 3.0, clockOf(TestBook.sound().set("Sleeves!C3", new Shown(440 / 1440.0, "hh:mm:ss"))), 1e-9);
        assertEquals(0, clockOf(TestBook.sound().set("Sleeves!C3", new Shown(0.5, "h:mm"))), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"13", "1:75", "noon", "25:00", "-1"})
    void clockOffTheDial_isAProblem(String typed) {
        assertEquals(
                List.of("Sleeves!C3: clock must be an hour from 0 to 12 such as 1.5 or 1:30, found \"" + typed + "\"."),
                TestBook.sound().set("Sleeves!C3", typed).problems());
    }

    @Test
    void afternoonTimeOrDateInAClockCell_isAProblem() {
        assertEquals(
                List.of("Sleeves!C3"),
                TestBook.sound().set("Sleeves!C3", new Shown(0.75, "h:mm")).problemCells());
        assertEquals(
                List.of("Sleeves!C3"),
                TestBook.sound().set("Sleeves!C3", new Shown(45123, "d-mmm")).problemCells());
    }

    private static double clockOf(TestBook book) {
        Sleeve sleeve = book.book().sleeves().get(0);
        return sleeve.settings().get(1).rings().get(0).clockH();
    }
}
