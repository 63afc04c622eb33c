package org.bagwright.workbook;

import static org.bagwright.workbook.TestClubs.ironWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bagwright.domain.club.Club;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class BalanceColumnsTest {
    private static Club iron(Object... headersAndValues) {
        return ironWith(headersAndValues).book().clubs().get(0);
    }

    @Test
    void shaftBalance_isReadInTheLengthUnitOfStart() {
        assertEquals(0.4064, iron("Shaft balance", 16).parts().shaftBalanceM().orElseThrow(), 1e-12);
        assertEquals(
                0.4,
                ironWith("Shaft balance", 400)
                        .set("Start!A2", "Length")
                        .set("Start!B2", "mm")
                        .book()
                        .clubs()
                        .get(0)
                        .parts()
                        .shaftBalanceM()
                        .orElseThrow(),
                1e-12);
    }

    @Test
    void massesAndInertia_areReadWithTheirUnits() {
        assertEquals(
                4 * 0.028349523125,
                iron("Shaft mass", "4 oz").parts().shaftMassKg().orElseThrow(),
                1e-12);
        assertEquals(0, iron("Grip mass", 0).parts().gripMassKg().orElseThrow(), 1e-12);
        assertEquals(
                2.6e-4, iron("Head inertia", "2.6 kg cm2").form().inertiaKgM2().orElseThrow(), 1e-12);
        assertEquals(
                2.6e-4,
                iron("Head inertia", "2600 g cm\u00b2").form().inertiaKgM2().orElseThrow(),
                1e-12);
        assertEquals(
                12.7, iron("CG depth", "0.5 in").form().centreOfGravityDepthMm().orElseThrow(), 1e-12);
    }

    @Test
    void wrongCells_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Clubs!Z2: swingweight target must be a letter A to G and points 0 to 9.9, such as D2 or C9.5, found"
                                + " 2.",
                        "Clubs!AE2: CG depth must be 0.5 to 80 mm, found -8. Maybe 8?",
                        "Clubs!AI2: shaft balance must be 6 to 39.3 in, found 165. Maybe 16.5?",
                        "Clubs!AH2: shaft mass must be 20 to 250 g, found 1050. Maybe 105?",
                        "Clubs!AJ2: grip mass must be a number in g, found \"light\".",
                        "Clubs!AG2: swingweight must be a letter A to G and points 0 to 9.9, such as D2 or C9.5, found"
                                + " \"D12\"."),
                ironWith(
                                "Swingweight target", 2,
                                "CG depth", -8,
                                "Shaft balance", 165,
                                "Shaft mass", 1050,
                                "Grip mass", "light",
                                "Swingweight", "D12")
                        .problems());
        assertEquals(
                List.of(
                        "Clubs!AI2: shaft balance must be less than the club's length, found 38; expected the balance point"
                                + " of the cut shaft from its butt end."),
                ironWith("Length", 37, "Shaft balance", 38).problems());
    }

    /** 250 g at radii of gyration of 5 mm and 63.5 mm: 62.5 and 10080.6 g cm2. */
    @Test
    void headInertia_isBoundedByTheStatedMass() {
        iron("Head mass", 250, "Head inertia", 62.6);
        iron("Head mass", 250, "Head inertia", 10080);
        assertEquals(
                List.of(
                        "Clubs!AF2: head inertia must be 62.5 to 10080.6 g cm2 for a head of 250 g and at most 127 mm from"
                                + " heel to toe, found 26000. Maybe 2600?"),
                ironWith("Head mass", 250, "Head inertia", 26000).problems());
        assertEquals(
                List.of("Clubs!AF2"),
                ironWith("Head mass", 250, "Head inertia", 62).problemCells());
    }

    /** A 37 in iron is assumed to have a head of 270 g: at 63.5 mm 10887.1 g cm2. */
    @Test
    void headInertia_isBoundedByTheAssumedMass() {
        iron("Length", 37, "Head inertia", 10887);
        assertEquals(
                List.of("Clubs!AF2: head inertia must be 67.5 to 10887 g cm2 for a head of 270 g (assumed) and at most"
                        + " 127 mm from heel to toe, found 10888. Maybe 1088.8?"),
                ironWith("Length", 37, "Head inertia", 10888).problems());
    }

    @Test
    void headInertiaOfAHeadWhoseMassIsWrong_isNotBlamed() {
        assertEquals(
                List.of("Clubs!AB2"),
                ironWith("Head mass", 2500, "Head inertia", 26000).problemCells());
    }

    @Test
    void putter_mayBeLongerFromHeelToToe() {
        TestBook book = ironWith("Head mass", 350, "Head inertia", 20000);
        assertEquals(List.of("Clubs!AF2"), book.problemCells());
        assertEquals(List.of(), book.set("Clubs!D2", "putter").problems());
    }
}
