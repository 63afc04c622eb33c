package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class BadKitsTest {
    @Test
    void badKits_areReportedAtOnceEachAtItsCell() {
        TestBook book = TestBook.empty()
                .sheet("Golfers")
                .row("Golfer", "Driver speed")
                .row("Ann", 95)
                .sheet("Clubs")
                .row("Slot", "Club", "Kind", "Loft", "Lie", "Length", "Kit", "Weighting", "Head mass", "Head inertia")
                .row(1, "Driver", "driver", 10.5, 58, 45, "Front", "Hevy", 190, 48000)
                .row(2, "3 wood", "wood", 15, 57, 43, "Front", "Heavy", 205, 2500)
                .sheet("Weights")
                .row("Kit", "Weighting", "Port", "Mass", "X", "Y", "Z")
                .row("Front", "Light", "A", 4, 20, 10, -5)
                .row("Front", "Light", "A", 4, 20, -10, -5)
                .row("Front", "Heavy", "A", 12, 20, 10, -5)
                .sheet("Stock")
                .row("Item", "Count")
                .row("Front: 9 g", 2)
                .row("Front: 12 g", -1);
        assertEquals(
                List.of(
                        "Weights!C3: port must appear only once in a weighting, found \"A\" of \"Front: Light\""
                                + " again, first in"
                                + " Weights!C2.",
                        "Clubs!H2: weighting must be one of the kit \"Front\", found \"Hevy\"; expected \"Light\" or"
                                + " \"Heavy\". Maybe \"Heavy\"?",
                        "Clubs!J2: head inertia must be 47.5 to 7661.2 g cm2 for a head of 190 g and at most 127 mm from"
                                + " heel to toe, found 48000. Maybe 4800?",
                        "Stock!A2: a piece must have a mass that a weighting of the kit \"Front\" uses, found \"Front: 9"
                                + " g\"; expected 4 g or 12 g.",
                        "Stock!B3: count must be 0 to 10000, found -1. Maybe 1?"),
                book.problems());
    }
}
