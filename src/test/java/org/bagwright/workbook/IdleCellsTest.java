package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.read.BookReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Rows and cells that do not do what they seem to do: one message each, at the cell; none in the books that we ship. */
@Tag("analytic")
class IdleCellsTest {
    /** A driver, a fairway wood, an iron and a putter, without anything that has no effect. */
    private static TestBook bag() {
        return TestBook.empty()
                .sheet("Start")
                .row("Distance", "yd")
                .sheet("Golfers")
                .row("Golfer", "Driver speed", "Gap wish", "Gap least", "Keep shaft turned", "Most open")
                .row("Ann", 95)
                .sheet("Clubs")
                .row(
                        "Golfer",
                        "Slot",
                        "Club",
                        "Kind",
                        "Loft",
                        "Lie",
                        "In bag",
                        "Pinned",
                        "Bend limit",
                        "Bend step",
                        "Loft target",
                        "Lie target",
                        "Carry target",
                        "Gap wish",
                        "Golfer lie",
                        "Sleeve",
                        "Setting")
                .row("Ann", 1, "Driver", "driver", 10.5, 58)
                .row("Ann", 2, "3 wood", "wood", 15, 57.5)
                .row("Ann", 3, "7 iron", "iron", 31, 62.5)
                .row("Ann", 4, "Putter", "putter", 3, 71)
                .sheet("Shots")
                .row("Golfer", "Club", "Carry")
                .row("Ann", "Driver", 225)
                .sheet("Aims")
                .row("Measure", "Tolerance", "Importance", "Must");
    }

    private static List<String> said(TestBook book) {
        return book.lines(Message.Severity.WARNING).stream()
                .filter(IdleCellsTest::isIdle)
                .toList();
    }

    private static boolean isIdle(String line) {
        return line.contains("no effect") || line.contains("taken for") || line.contains("not read");
    }

    private static void says(String expected, TestBook book) {
        assertEquals(List.of(expected), said(book));
    }

    @Test
    void plainBag_hasNone() {
        assertEquals(List.of(), said(bag()));
        assertEquals(List.of(), bag().problems());
    }

    @Test
    void shippedBooks_haveNone() throws IOException {
        try (Stream<Path> demos = Files.list(Path.of("demo-data"))) {
            Stream.concat(
                            demos.filter(file -> file.toString().endsWith(".xlsx")),
                            Stream.of(Path.of("templates/bag.xlsx")))
                    .forEach(file -> assertEquals(
                            List.of(),
                            BookReader.read(file).messages().stream()
                                    .map(Message::text)
                                    .filter(IdleCellsTest::isIdle)
                                    .toList(),
                            file.toString()));
        }
    }

    @Test
    void otherKindInTheSameSlot_isSaid() {
        says(
                "Clubs!B4: \"7 iron\" is taken for another club that might fill slot 2, where \"3 wood\" is in the bag. If"
                        + " both are in the bag, give each its own slot; if not, write no under In bag.",
                bag().set("Clubs!B4", 2));
    }

    @Test
    void sameKindInTheSameSlot_isSaidWhereBothHaveShots() {
        TestBook book = bag().set("Clubs!B4", 2).set("Clubs!D4", "fairway");
        assertEquals(List.of(), said(book));
        book.set("Shots!B3", "3 wood")
                .set("Shots!C3", 205)
                .set("Shots!B4", "7 iron")
                .set("Shots!C4", 150);
        assertEquals(1, said(book).size());
        assertEquals(List.of(), said(book.set("Clubs!G4", "no")));
    }

    @Test
    void gapWishOfTheLastClubThatFlies() {
        says("Clubs!N4: gap wish has no effect: no club that flies comes after 7 iron.", bag().set("Clubs!N4", 12));
        says("Clubs!N5: gap wish has no effect: no club that flies comes after Putter.", bag().set("Clubs!N5", 12));
        assertEquals(List.of(), said(bag().set("Clubs!N3", 12)));
    }

    @Test
    void carryTargetOfAPutter() {
        says("Clubs!M5: carry target has no effect: a putter has no carry.", bag().set("Clubs!M5", 10));
    }

    @Test
    void bendsThatCannotBe() {
        says("Clubs!J4: bend step has no effect: without a bend limit 7 iron is not bent.", bag().set("Clubs!J4", 0.5));
        says("Clubs!I4: bend limit has no effect: it is less than one bend step.", bag().set("Clubs!I4", 0.25));
        assertEquals(List.of(), said(bag().set("Clubs!I4", 1).set("Clubs!J4", 0.5)));
        assertEquals(List.of("Clubs!I2"), bag().set("Clubs!I2", 1).problemCells());
    }

    @Test
    void pinOfAClubWithNothingToChange() {
        says("Clubs!H5: pinned has no effect: there is nothing to change on Putter.", bag().set("Clubs!H5", "yes"));
        assertEquals(List.of(), said(bag().set("Clubs!I4", 1).set("Clubs!H4", "yes")));
    }

    @Test
    void targetsOfAMeasureThatDoesNotCount_areSaidOnce() {
        TestBook book = bag().set("Aims!A2", "loft")
                .set("Aims!C2", 0)
                .set("Clubs!K2", 11)
                .set("Clubs!K4", 32);
        says(
                "Clubs!K2: loft target has no effect on the plan: loft has importance 0 on the sheet Aims and is no must."
                        + " The same in K4.",
                book);
        assertEquals(List.of(), said(book.set("Aims!D2", "yes")));
    }

    @Test
    void lieTargetOfAMeasureThatDoesNotCount_stillPlacesTheClub() {
        TestBook book = bag().set("Aims!A2", "lie").set("Aims!C2", 0).set("Clubs!L2", 57);
        assertEquals(List.of(), said(book));
        assertTrue(said(book.set("Clubs!O2", 58)).get(0).startsWith("Clubs!L2: lie target has no effect on the plan"));
    }

    @Test
    void aimsThatHaveNothingToWeigh() {
        TestBook book = bag().set("Aims!A2", "carry");
        says("Aims!D2: \"Must\" has no effect: no club has a Carry target.", book.set("Aims!D2", "yes"));
        says(
                "Aims!C2: importance has no effect: no club has a Carry target.",
                book.set("Aims!D2", null).set("Aims!C2", 3));
        says(
                "Aims!B2: tolerance has no effect: no club has a Carry target.",
                book.set("Aims!C2", null).set("Aims!B2", 3));
        assertEquals(List.of(), said(book.set("Clubs!M2", 220)));
    }

    @Test
    void usualAims_areNotSaid() {
        assertEquals(
                List.of(),
                said(bag().set("Aims!A2", "carry")
                        .set("Aims!B2", 5)
                        .set("Aims!C2", 1)
                        .set("Aims!D2", "no")));
    }

    @Test
    void mustOfChanges() {
        says(
                "Aims!D2: \"Must\" has no effect: no must limits the number of changes. Use Most changes on the sheet"
                        + " Golfers.",
                bag().set("Aims!A2", "change").set("Aims!D2", "yes"));
    }

    @Test
    void toleranceOfAMeasureThatDoesNotCount() {
        says(
                "Aims!B2: tolerance has no effect: its importance is 0, and it is no must.",
                bag().set("Aims!A2", "gap").set("Aims!B2", 9).set("Aims!C2", 0));
    }

    @Test
    void importanceOfLooksThatNobodyLimits() {
        TestBook book = bag().set("Aims!A2", "sits").set("Aims!C2", 5);
        says("Aims!C2: importance has no effect: no golfer has Most open or Most closed.", book);
        assertEquals(List.of(), said(book.set("Golfers!F2", -1)));
    }

    @Test
    void matchingThatDoesNotCount() {
        TestBook book = bag().set("Start!A2", "Match over").set("Start!B2", "bag");
        says("Start: Match over has no effect: spread has importance 0 on the sheet Aims and is no must.", book);
        assertEquals(List.of(), said(book.set("Aims!A2", "spread").set("Aims!C2", 1)));
    }

    @Test
    void cellsOfTheGolfer() {
        says(
                "Golfers!E2: keep shaft turned has no effect: no club has a sleeve that turns the shaft.",
                bag().set("Golfers!E2", "no"));
        says(
                "Golfers!C2: gap wish has no effect: every club that has a gap has a Gap wish of its own on the sheet"
                        + " Clubs.",
                bag().set("Golfers!C2", 15).set("Clubs!N2", 20).set("Clubs!N3", 30));
        says(
                "Golfers!D2: gap least has no effect: fewer than two clubs fly.",
                bag().set("Golfers!D2", 15).set("Clubs!D3", "putter").set("Clubs!D4", "putter"));
    }
}
