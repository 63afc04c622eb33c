package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.workbook.KitBook;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class WeightReaderTest {
    @Test
    void kits_areReadInTheOrderOfTheBook() {
        List<Kit> kits = KitBook.sound().set("Weights!A4", "FRONT").book().kits();
        assertEquals(List.of("Front", "Rear"), kits.stream().map(Kit::name).toList());
        assertEquals(
                List.of("Light", "Heavy"),
                kits.get(0).weightings().stream()
                        .map(weighting -> weighting.name())
                        .toList());
        assertEquals(
                List.of(new PortPiece("A", 0.004, 20, 10, -5), new PortPiece("B", 0.012, 20, -10, -5)),
                kits.get(0).weightings().get(1).pieces());
    }

    @Test
    void emptyPort_hasNoPieceAndNeedsNoPlace() {
        TestBook book = KitBook.sound();
        assertEquals(1, book.book().kits().get(0).weightings().get(0).pieces().size());
        assertEquals(
                List.of(),
                book.lines(Message.Severity.ASSUMED).stream()
                        .filter(line -> line.startsWith("Weights"))
                        .toList());
    }

    @Test
    void massAndPlaceInOtherUnits_areReadInThem() {
        PortPiece piece = KitBook.sound()
                .set("Weights!D1", "Mass [oz]")
                .set("Weights!D6", 0.25)
                .set("Weights!D2", "4 g")
                .set("Weights!D4", "4 g")
                .set("Weights!D5", "12 g")
                .set("Weights!E1", "X [in]")
                .set("Weights!E6", -1.5)
                .set("Weights!E2", 1)
                .set("Weights!E4", 1)
                .set("Weights!E5", 1)
                .set("Weights!G6", "-0.8 cm")
                .book()
                .kits()
                .get(1)
                .weightings()
                .get(0)
                .pieces()
                .get(0);
        assertEquals(0.25 * 0.028349523125, piece.massKg(), 1e-15);
        assertEquals(-38.1, piece.xMm(), 1e-12);
        assertEquals(-8, piece.zMm(), 1e-12);
    }

    @Test
    void blankPlace_isAssumedOnceForAKit() {
        TestBook book =
                KitBook.sound().set("Weights!F4", null).set("Weights!E5", null).set("Weights!G6", null);
        assertEquals(
                0, book.book().kits().get(1).weightings().get(0).pieces().get(0).zMm());
        assertEquals(
                List.of(
                        "Weights!F4: kit \"Front\": where 2 pieces sit is not fully given; each blank X, Y or Z"
                                + " counts as 0 mm, level with the centre of gravity of the head.",
                        "Weights!G6: kit \"Rear\": where a piece sits is not fully given; each blank X, Y or Z"
                                + " counts as 0 mm, level with the centre of gravity of the head."),
                book.lines(Message.Severity.ASSUMED).stream()
                        .filter(line -> line.startsWith("Weights"))
                        .toList());
    }

    @Test
    void wrongCells_areProblemsAtTheirCells() {
        assertEquals(
                List.of(
                        "Weights!C3: port must appear only once in a weighting, found \"a\" of \"Front: Light\""
                                + " again, first in"
                                + " Weights!C2.",
                        "Weights!D4: mass must be filled in, found nothing; expected mass of the piece in this port in"
                                + " grams, 0 where the port stays empty.",
                        "Weights!F5: Y must be -130 to 130 mm, found 140. Maybe 14?",
                        "Weights!D6: mass must be 0 to 100 g, found -7. Maybe 7?",
                        "Weights!D7: mass must be a number in g, found \"heavy\".",
                        "Weights!D8: mass must be 0 to 100 g, found 120. Maybe 12?",
                        "Weights!B9: weighting must be filled in, found nothing; expected your name for this way to"
                                + " fill the ports: one row for every port that holds a piece.",
                        "Weights!C9: port must be filled in, found nothing; expected the port, only once in a"
                                + " weighting.",
                        "Weights!A10: kit must be filled in, found nothing; expected your name for the kit, on each"
                                + " of its rows."),
                KitBook.sound()
                        .set("Weights!C3", "a")
                        .set("Weights!D4", null)
                        .set("Weights!F5", 140)
                        .set("Weights!D6", -7)
                        .set("Weights!A7", "Rear")
                        .set("Weights!B7", "Other")
                        .set("Weights!C7", "R")
                        .set("Weights!D7", "heavy")
                        .set("Weights!A8", "Rear")
                        .set("Weights!B8", "Third")
                        .set("Weights!C8", "R")
                        .set("Weights!D8", 120)
                        .set("Weights!A9", "Rear")
                        .set("Weights!D9", 2)
                        .set("Weights!B10", "Third")
                        .set("Weights!C10", "S")
                        .set("Weights!D10", 2)
                        .problems());
    }

    @Test
    void missingSheet_isAProblemWhereAClubNamesAKit() {
        assertEquals(
                List.of("Weights: the sheet is missing; the sheet Clubs names a kit of weights, and its weightings"
                        + " belong there."),
                KitBook.sound().without("Weights").without("Stock").problems());
    }
}
