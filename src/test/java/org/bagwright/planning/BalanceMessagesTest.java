package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.BookSketch;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which assumed masses and balances a book with this or that use for a swingweight is told of. */
@Tag("analytic")
class BalanceMessagesTest {
    @TempDir
    private Path folder;

    private BookSketch book;

    @BeforeEach
    void threeClubsWithLengthOnly() {
        book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Ann", 95)
                .sheet("Clubs", "Slot, Club, Kind, Loft, Lie, Length")
                .row(1, "7 iron", "iron", 32, 62.5, 37)
                .row(2, "9 iron", "iron", 41, 63.5, 36)
                .row(3, "Putter", "putter", 3, 70, 34);
    }

    @Test
    void noUseForASwingweight_saysNothing() throws Exception {
        assertEquals(List.of(), listed());
    }

    @Test
    void target_namesItsClubOnly() throws Exception {
        book.put("Clubs", 2, "Swingweight target", "D2").put("Clubs", 2, "Head mass", 285);
        assertEquals(
                List.of("Clubs!B3: shaft mass (107 g), shaft balance (17.28 in from the butt) and grip mass (50 g) are"
                        + " assumed for 1 club: 9 iron."
                        + " Swingweight depends on them"),
                listed());
    }

    @Test
    void spreadThatCounts_namesMatchedClubs_oneLineForTheSameClubs() throws Exception {
        book.put("Clubs", 1, "Head mass", 270).sheet("Aims", "Measure, Importance");
        book.row("spread", 1);
        assertEquals(
                List.of(
                        "Clubs!B3: head mass (284 g) is assumed for 1 club: 9 iron. Swingweight depends on it",
                        "Clubs!B2: shaft mass (107 to 110 g), shaft balance (17.28 to 17.76 in from the butt) and grip"
                                + " mass (50 g) are assumed for 2 clubs: 7 iron and 9 iron."
                                + " Swingweight depends on them"),
                listed());
    }

    @Test
    void matchByInertia_namesHeadInertiaToo() throws Exception {
        book.sheet("Aims", "Measure, Importance").row("spread", 1).sheet("Start", "Match by, inertia");
        assertEquals(
                List.of(
                        "Clubs!B2: head mass (270 to 284 g), head inertia (2430 to 2556 g cm2), shaft mass (107 to 110 g),"
                                + " shaft balance (17.28 to 17.76 in from the butt) and grip mass (50 g) are assumed for"
                                + " 2 clubs: 7 iron and 9 iron. Swingweight and club inertia depend on them"),
                listed());
    }

    @Test
    void kit_namesItsClub_andAReadSwingweightReplacesTheMasses() throws Exception {
        book.put("Clubs", 1, "Kit", "Kit A").put("Clubs", 1, "Weighting", "Light");
        book.weights().row("Kit A", "Light", "Toe", 2, 0, 0, 0);
        assertEquals(
                List.of(
                        "Clubs!B2: head mass (270 g), shaft mass (110 g), shaft balance (17.76 in from the butt) and grip mass"
                                + " (50 g) are assumed for 1 club: 7 iron."
                                + " Swingweight depends on them"),
                listed());
        book.put("Clubs", 1, "Swingweight", "D1");
        assertEquals(List.of(), listed());
    }

    @Test
    void manyClubs_areNotAllNamed() throws Exception {
        BookSketch many = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Ann", 95)
                .row("Ben", 95)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Head mass, Swingweight target");
        for (int slot = 1; slot <= 10; slot++) {
            many.row(slot > 5 ? "Ben" : "Ann", slot, "Club " + slot, "iron", 20 + 3 * slot, 62, 38, 260, "D2");
        }
        book = many;
        assertEquals(
                List.of(
                        "Clubs!C2: shaft mass (113 g), shaft balance (18.24 in from the butt) and grip mass (50 g) are assumed"
                                + " for 10 clubs: Club 1 of Ann,"
                                + " Club 2 of Ann, Club 3 of Ann, Club 4 of Ann, Club 5 of Ann, Club 6 of Ben, Club 7 of Ben,"
                                + " Club 8 of Ben and 2 more. Swingweight depends on them"),
                listed());
    }

    private List<String> listed() throws IOException {
        return new Charting(book.write(folder.resolve("book.xlsx")))
                .check().stream()
                        .filter(message -> message.severity() != Message.Severity.PROBLEM)
                        .filter(message -> message.text().contains("Swingweight"))
                        .map(message -> message.cell() + ": " + message.text())
                        .toList();
    }
}
