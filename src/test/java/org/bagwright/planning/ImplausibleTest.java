package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A message at the cell of what is implausible, with a figure and a likely cause; none for sound books. */
@Tag("regression")
class ImplausibleTest {
    @TempDir
    private Path folder;

    private EditedDemo full() throws IOException {
        return new EditedDemo(ShippedBook.FULL, folder);
    }

    private static List<Message> warnings(EditedDemo book) throws IOException {
        return book.messages().stream()
                .filter(message -> message.severity() == Message.Severity.WARNING)
                .toList();
    }

    /** One message and no other, at this cell, with these words. */
    private static void assertSaid(EditedDemo book, String cell, String... words) throws IOException {
        List<Message> found = book.messages().stream()
                .filter(message -> message.severity().compareTo(Message.Severity.WARNING) <= 0)
                .toList();
        assertEquals(1, found.size(), found::toString);
        assertEquals(cell, found.get(0).cell());
        for (String word : words) {
            assertTrue(found.get(0).text().contains(word), found::toString);
        }
    }

    @Test
    void metresInAYardBook_areSaidAtTheCarries() throws IOException {
        EditedDemo book = full().change("Shots", "Carry", yards -> Math.rint(yards * 0.9144));
        assertSaid(
                book, "Shots!N6", "Maybe they are in metres", "sheet Start says yards", "Driver (203 yd, flies about");
        assertEquals(10, warnings(book).get(0).cells().size());
    }

    @Test
    void yardsInAMetreBook_areSaidAtTheCarries() throws IOException {
        EditedDemo book = full();
        book.put("Start", "Distance", "Value", "m");
        assertSaid(book, "Shots!N6", "Maybe they are in yards", "sheet Start says metres");
    }

    @ParameterizedTest
    @CsvSource({"43, m/s", "154.5, km/h", "130, mistyped", "70, mistyped"})
    void driverSpeedThatNoShotAgreesWith_isSaidAtTheGolfer(double mph, String maybe) throws IOException {
        EditedDemo book = full();
        String cell = book.put("Golfers", "Golfer A", "Driver speed", mph);
        assertSaid(book, cell, "none of the golfer's shots agrees with", "Driver, 3 wood and 5 wood", maybe);
    }

    @Test
    void ironSpeedThatNoShotAgreesWith_isSaidAtTheGolfer() throws IOException {
        EditedDemo book = full();
        String cell = book.put("Golfers", "Golfer A", "Iron speed", 96);
        assertSaid(book, cell, "Iron speed that none", "5 iron, 7 iron, 9 iron, Pitching wedge and 54 wedge");
    }

    @Test
    void ballSlowerThanTheHead_isSaidAtTheShots() throws IOException {
        EditedDemo book = full();
        String cell = book.put("Shots", "7 iron", "Ball speed", 48);
        List<Message> found = warnings(book);
        assertEquals(cell, found.get(0).cell());
        assertTrue(
                found.get(0).text().contains("Ball slower than the head, so not counted: 7 iron (ball speed 48 mph"));
        assertTrue(found.get(0).text().contains("Maybe Ball speed is in m/s."), found::toString);
        assertTrue(found.get(1).text().contains("Planned without shots"), found::toString);
        assertEquals(2, found.size(), found::toString);
    }

    /** 170 mph at 96 mph of head speed; a perfect blow gives 1.63 times that at most. */
    @Test
    void onlyShotAboveThePerfectBlow_isNamedAndTheBookPlans() throws Exception {
        EditedDemo book = full();
        String cell = book.put("Shots", "Driver", "Ball speed", 170);
        List<Message> found = warnings(book);
        assertEquals(cell, found.get(0).cell());
        assertTrue(found.get(0).text().contains("above that of a perfect hit, so not counted: Driver"));
        assertTrue(found.get(1).text().contains("Planned without shots, since none with these clubs counts: Driver"));
        assertEquals(1, new Planning(1, 30).plan(book.write()).bags().size());
    }

    @Test
    void loftThatFallsAlongTheBag_isSaidAtItsCell() throws IOException {
        EditedDemo book = full();
        String cell = book.put("Clubs", "8 iron", "Loft", 31);
        assertSaid(
                book, cell, "Loft that does not rise along the bag: 8 iron (31 degrees, but 32.5 degrees for 7 iron");
    }

    @Test
    void lengthThatRisesAlongTheBag_isSaidAtItsCell() throws IOException {
        EditedDemo book = full();
        String cell = book.put("Clubs", "7 iron", "Length", 39);
        assertSaid(
                book, cell, "Length that does not fall along the bag: 7 iron (39 in, but 38 in for 5 iron before it)");
    }

    @ParameterizedTest
    @CsvSource({"7 iron, 3", "7 iron, -4", "5 wood, 4", "54 wedge, 3", "4 hybrid, -3", "Driver, -3"})
    void loftThatItsShotsDeny_isSaidAtItsCell(String club, double offDeg) throws IOException {
        EditedDemo book = full();
        double loftDeg = book.number("Clubs", club, "Loft") + offDeg;
        String cell = book.put("Clubs", club, "Loft", loftDeg);
        List<Message> found = warnings(book).stream()
                .filter(message -> message.text().startsWith("Loft that launch and spin"))
                .toList();
        assertEquals(1, found.size(), () -> club + found);
        assertEquals(List.of(cell), found.get(0).cells());
    }

    @ParameterizedTest
    @CsvSource({
        "Driver, Head mass, 350, mistyped",
        "Driver, CG height, 3, Maybe 30?",
        "Driver, CG depth, 3.6, Maybe 36?",
        "Driver, CG depth, 1.4 in, driver hardly has",
        "7 iron, Head mass, 190, iron hardly has",
        "3 wood, Head inertia, 4900, wood hardly has (1300 to 4200 g cm2)",
        "7 iron, Face, 5, iron hardly has (-3 to 3 degrees)",
        "8 iron, Lie, 73, iron hardly has",
        "6 iron, Grip mass, 5.0, Maybe 50?",
        "6 iron, Shaft mass, 220, iron hardly has",
        "54 wedge, Sole radius, 900, wedge hardly has",
        "Driver, Shaft balance, 30, shaft hardly has"
    })
    void figureThatNoHeadOfTheKindHas_isSaidAtItsCell(String club, String column, String value, String words)
            throws IOException {
        EditedDemo book = full();
        Object typed = value.matches("[0-9.]+") ? Double.valueOf(value) : value;
        String cell = book.put("Clubs", club, column, typed);
        List<Message> found = book.messages().stream()
                .filter(message -> message.severity().compareTo(Message.Severity.WARNING) <= 0)
                .toList();
        if (value.endsWith("in")) {
            assertEquals(List.of(), found);
        } else {
            assertEquals(List.of(cell), found.get(0).cells(), found::toString);
            assertTrue(found.get(0).text().contains(words), found::toString);
        }
    }

    @ParameterizedTest
    @CsvSource({"Driver, in, 115, 115 cm", "Driver, in, 1149, 1149 mm", "7 iron, mm, 37, 37 in", "7 iron, mm, 94, 94 cm"
    })
    void lengthInAnotherUnit_isGuessed(String club, String unit, double typed, String maybe) throws IOException {
        EditedDemo book = full();
        if (unit.equals("mm")) {
            book.put("Start", "Length", "Value", "mm");
            book.change("Clubs", "Length", inches -> inches * 25.4);
        }
        String cell = book.put("Clubs", club, "Length", typed);
        assertSaid(book, cell, "length must be", "Maybe " + maybe + "?");
    }

    @Test
    void lieThatFallsAlongTheBag_isSaidAtItsCell() throws IOException {
        EditedDemo book = full();
        String cell = book.put("Clubs", "6 iron", "Lie", 67.6);
        assertSaid(
                book,
                cell,
                "Lie that falls along the bag: 6 iron (67.6 degrees, but 62.5 degrees for 7 iron after it)");
    }

    /** The first of the trio's two shots with the driver has 2150 rpm, the second 2290. */
    @Test
    void twoShotsThatDisagree_areSaidTogether() throws IOException {
        EditedDemo book = new EditedDemo(ShippedBook.TRIO, folder);
        String cell = book.put("Shots", "Driver", "Spin", 4300);
        assertSaid(book, cell, "The two shots with a club differ much: Driver (spin)");
        assertEquals(2, warnings(book).get(0).cells().size());
    }

    @ParameterizedTest
    @CsvSource({
        "Bend, 2.5, is 2.5 degrees",
        "Clock, 3.4, hours apart",
        "Clock, 1.5, has the hour and bend of setting 2",
        "Clock, 11.99, has the hour and bend of setting 1"
    })
    void oddMarkOfASleeve_isSaidAtItsCell(String column, double typed, String words) throws IOException {
        EditedDemo book = full();
        String cell = book.putAt("Sleeves", 8, column, typed);
        assertSaid(book, cell, "etting 3 of sleeve Sleeve P", words);
    }

    /** The rings of a sleeve written as a table too, with the signs turned: one message for a column, not one a row. */
    @ParameterizedTest
    @CsvSource({"-1, 1, Loft change", "1, -1, Lie change"})
    void reversedTable_isSaidOnce(double loftSign, double lieSign, String column) throws IOException {
        EditedDemo book = full();
        for (int row = 6; row < 14; row++) {
            double hourRad = Math.toRadians(30 * 1.5 * (row - 6));
            book.putAt("Sleeves", row, "Loft change", loftSign * 1.77 * Math.sin(hourRad));
            book.putAt("Sleeves", row, "Lie change", lieSign * 1.5 * Math.cos(hourRad));
        }
        List<Message> found = warnings(book).stream()
                .filter(message -> message.text().contains("look reversed"))
                .toList();
        assertEquals(1, found.size(), found::toString);
        assertEquals(
                List.of(column.startsWith("Loft") ? "Sleeves!H6" : "Sleeves!I6"),
                found.get(0).cells());
        assertTrue(found.get(0).text().startsWith("The signs of " + column + " of sleeve Sleeve P look reversed"));
    }

    @Test
    void tableAgainstItsOwnMarks_isSaidOnce() throws IOException {
        EditedDemo book = new EditedDemo(ShippedBook.TRIO, folder);
        String[] marks = {"+1", "0", "-1", "-2"};
        for (int index = 0; index < marks.length; index++) {
            int row = 14 + index;
            book.putAt("Sleeves", row, "Setting", marks[index]);
            book.putAt("Sleeves", row, "Clock", "");
            book.putAt("Sleeves", row, "Bend", "");
            book.putAt("Sleeves", row, "Loft change", index - 1);
            book.putAt("Sleeves", row, "Lie change", 0);
        }
        book.put("Clubs", "4 hybrid", "Stated at", "0");
        book.put("Clubs", "4 hybrid", "Setting", "+1");
        assertSaid(book, "Sleeves!H14", "The signs of Loft change of sleeve Sleeve Q look reversed");
    }

    /** 100 books: the demos with lofts 0.5 degrees, lengths 0.25 in, masses 3 g and carries 2 % to either side. */
    @Test
    void soundBooks_getNoneOfTheseMessages() throws IOException {
        Random random = new Random(17);
        for (int count = 0; count < 100; count++) {
            ShippedBook demo = ShippedBook.demos().get(count % 20 == 0 ? 2 : count % 3 == 0 ? 1 : 0);
            EditedDemo book = new EditedDemo(demo, folder)
                    .change("Clubs", "Loft", deg -> deg + within(random, 0.5))
                    .change("Clubs", "Length", inches -> inches + within(random, 0.25))
                    .change("Clubs", "Head mass", grams -> grams + within(random, 3))
                    .change("Shots", "Carry", yards -> yards * (1 + within(random, 0.02)));
            assertEquals(List.of(), warnings(book), "book " + count + " from " + demo);
        }
    }

    private static double within(Random random, double most) {
        return most * (2 * random.nextDouble() - 1);
    }
}
