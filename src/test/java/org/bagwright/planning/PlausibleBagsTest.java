package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.BookSketch;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bags that are out of the ordinary but sound get no warning. Their figures are common practice, from memory. */
@Tag("regression")
class PlausibleBagsTest {
    private static final String GOLFERS = "Golfer, Hand, Driver speed, Iron speed, Shaft lean";
    private static final String CLUBS =
            "Golfer, Slot, Club, Kind, Loft, Lie, Length, Head mass, Swingweight target, Swingweight, Lie target, Golfer lie";
    private static final String SHOTS = "Golfer, Club, Head speed, Ball speed, Launch, Spin";

    @TempDir
    private Path folder;

    private static BookSketch bag(String hand, double driverMph, double ironMph, double leanDeg) {
        return new BookSketch()
                .sheet("Golfers", GOLFERS)
                .row("G", hand, driverMph, ironMph, leanDeg)
                .sheet("Clubs", CLUBS);
    }

    private void assertSilent(BookSketch book) throws IOException {
        List<Message> warnings = new Charting(book.write(folder.resolve("bag.xlsx")))
                .check().stream()
                        .filter(message -> message.severity().compareTo(Message.Severity.WARNING) <= 0)
                        .toList();
        assertEquals(List.of(), warnings);
    }

    @Test
    void ladies() throws IOException {
        assertSilent(bag("R", 68, 55, 0)
                .row("G", 1, "Driver", "driver", 12, 58, 44, 190, "C5")
                .row("G", 2, "5 wood", "wood", 20, 58, 41, 210)
                .row("G", 3, "6 hybrid", "hybrid", 29, 60, 37.5, 236)
                .row("G", 4, "7 iron", "iron", 32, 62.5, 36, 262, "C5")
                .row("G", 5, "9 iron", "iron", 41, 63.5, 35, 276)
                .row("G", 6, "Sand wedge", "wedge", 56, 64, 34.5, 292)
                .sheet("Shots", SHOTS)
                .row("G", "Driver", 68, 97, 14, 3000)
                .row("G", "5 wood", 62, 87, 15, 3700)
                .row("G", "6 hybrid", 57, 77, 19.5, 4700)
                .row("G", "7 iron", 55, 72, 21, 5000));
    }

    @Test
    void juniors() throws IOException {
        assertSilent(bag("R", 55, 45, 0)
                .row("G", 1, "Driver", "driver", 15, 56, 38, 172)
                .row("G", 2, "Hybrid", "hybrid", 26, 58, 33, 212)
                .row("G", 3, "7 iron", "iron", 36, 61, 31.5, 240)
                .row("G", 4, "Sand wedge", "wedge", 56, 62, 30.5, 270));
    }

    @Test
    void leftHanders() throws IOException {
        assertSilent(bag("L", 95, 79, 3)
                .row("G", 1, "Driver", "driver", 10.5, 58, 45.25)
                .row("G", 2, "7 iron", "iron", 31, 62.5, 37, 270, null, null, 64, 64)
                .sheet("Shots", SHOTS)
                .row("G", "Driver", 95, 138, 12, 2700)
                .row("G", "7 iron", 79, 108, 17.5, 6000));
    }

    @Test
    void longDrive() throws IOException {
        assertSilent(bag("R", 135, 105, 0)
                .row("G", 1, "Driver", "driver", 7.5, 58, 48, 190, "D9")
                .row("G", 2, "3 wood", "wood", 13, 57, 43.5)
                .row("G", 3, "7 iron", "iron", 31, 62.5, 37.5)
                .sheet("Shots", SHOTS)
                .row("G", "Driver", 136, 198, 10, 2600)
                .row("G", "7 iron", 104, 141, 16, 6800));
    }

    @Test
    void oneLengthIrons() throws IOException {
        BookSketch book = bag("R", 95, 78, 2);
        String[] names = {"4 iron", "5 iron", "6 iron", "7 iron", "8 iron", "9 iron"};
        for (int index = 0; index < names.length; index++) {
            book.row("G", index + 1, names[index], "iron", 20 + 4.0 * index, 62.5, 37, 272, "D1");
        }
        assertSilent(book.row("G", 7, "Wedge", "wedge", 46, 62.5, 37, 272, "D1"));
    }

    @Test
    void counterbalanced() throws IOException {
        assertSilent(bag("R", 95, 78, 0)
                .row("G", 1, "Driver", "driver", 10.5, 58, 45.25, 205, "C4")
                .row("G", 2, "7 iron", "iron", 32, 62.5, 37, 285, "C6")
                .put("Clubs", 1, "Grip mass", 85)
                .put("Clubs", 1, "Shaft balance", 20.5)
                .put("Clubs", 2, "Grip mass", 85));
    }

    @Test
    void heavyHeads() throws IOException {
        assertSilent(bag("R", 95, 78, 0)
                .row("G", 1, "Driver", "driver", 10.5, 58, 43.5, 215, "D8")
                .row("G", 2, "7 iron", "iron", 32, 62.5, 37, 290, "E2")
                .row("G", 3, "Sand wedge", "wedge", 56, 64, 35.25, 320, "E4"));
    }

    @Test
    void lobWedgeAndChipper() throws IOException {
        assertSilent(bag("R", 95, 78, 4)
                .row("G", 1, "7 iron", "iron", 32, 62.5, 37)
                .row("G", 2, "Chipper", "iron", 36, 69, 34.5)
                .row("G", 3, "9 iron", "iron", 41, 63.5, 36)
                .row("G", 4, "Gap wedge", "wedge", 52, 64, 35.5)
                .row("G", 5, "Lob wedge", "wedge", 64, 64, 35));
    }

    @Test
    void shortHybrids() throws IOException {
        assertSilent(bag("R", 85, 70, 0)
                .row("G", 1, "4 hybrid", "hybrid", 22, 59, 39.5)
                .row("G", 2, "5 hybrid", "hybrid", 25, 59.5, 39)
                .row("G", 3, "6 hybrid", "hybrid", 28, 60, 38.5)
                .row("G", 4, "7 hybrid", "hybrid", 32, 60.5, 37.5)
                .row("G", 5, "7 iron", "iron", 33, 62.5, 37));
    }

    /** Hitting down much with irons and up with the driver, and mishits that cost speed. */
    @Test
    void unevenStrikes() throws IOException {
        assertSilent(bag("R", 92, 76, 0)
                .row("G", 1, "Driver", "driver", 10.5, 58, 45)
                .row("G", 2, "3 wood", "wood", 15, 57.5, 43)
                .row("G", 3, "7 iron", "iron", 32, 62.5, 37)
                .row("G", 4, "Pitching wedge", "wedge", 45, 64, 35.75)
                .sheet("Shots", SHOTS)
                .row("G", "Driver", 94, 134, 14, 2500)
                .row("G", "3 wood", 84, 120, 11, 3600)
                .row("G", "7 iron", 77, 97, 17, 6200)
                .row("G", "Pitching wedge", 69, 82, 26, 7800));
    }
}
