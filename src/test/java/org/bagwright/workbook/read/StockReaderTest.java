package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.StockItem;
import org.bagwright.workbook.KitBook;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class StockReaderTest {
    private static TestBook stock(Object item, Object count) {
        return KitBook.sound().set("Stock!A2", item).set("Stock!B2", count);
    }

    @ParameterizedTest
    @CsvSource({
        "Front: 12,PIECE,Front,12",
        "front 12 g,PIECE,Front,12",
        "Front: 12 g,PIECE,Front,12",
        "Front:4g,PIECE,Front,4",
        "REAR: 0.007 kg,PIECE,Rear,7",
        "12 g,PIECE,,12",
        "7 g,PIECE,,7",
        "two  degree,SLEEVE,Two degree,",
        "7 Iron,HEAD,7 iron,"
    })
    void item_isReadInEveryForm(String text, StockItem.Kind kind, String name, Double massG) {
        StockItem item = stock(text, 3).book().stock().get(0);
        assertEquals(kind, item.kind());
        assertEquals(Optional.ofNullable(name), item.name());
        assertEquals(massG == null, item.massKg().isEmpty());
        assertEquals(massG == null ? 0 : massG / 1000, item.massKg().orElse(0), 1e-12);
        assertEquals(3, item.count());
        assertEquals("Stock!A2", item.cell());
    }

    @Test
    void headOfClubsThatTwoGolfersHave_isOneItem() {
        TestBook book = stock("7 iron", 2).set("Golfers!A3", "Bea");
        book.set("Clubs!A5", "Bea").set("Clubs!B5", 1).set("Clubs!C5", "7 Iron").set("Clubs!D5", "iron");
        book.set("Clubs!E5", 31).set("Clubs!F5", 62);
        assertEquals(Optional.of("7 iron"), book.book().stock().get(0).name());
    }

    @Test
    void sleeveAndHeadWithoutKits_areReadWithoutASheetWeights() {
        TestBook book = TestBook.sound().sheet("Stock").row("Item", "Count").row("Two degree", 1);
        assertEquals(1, book.book().stock().size());
        assertEquals(
                List.of(
                        "Stock!A2: item must be a piece of a kit such as Kit: 12 g, a sleeve, or the name of a club, found"
                                + " \"Front: 12 g\"."),
                book.set("Stock!A2", "Front: 12 g").problems());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Front: 13 g|a piece must have a mass that a weighting of the kit \"Front\" uses, found \"Front: 13 g\";"
                        + " expected 4 g or 12 g.",
                "Front: -4|a piece must have a mass that a weighting of the kit \"Front\" uses, found \"Front: -4\";"
                        + " expected 4 g or 12 g.",
                "Rear: 12|a piece must have a mass that a weighting of the kit \"Rear\" uses, found \"Rear: 12\"; expected"
                        + " 7 g.",
                "13 g|a piece must have a mass that a weighting of a kit on the sheet Weights uses, found \"13 g\";"
                        + " expected 4 g, 7 g or 12 g.",
                "12|item must give the unit of a piece's mass, found \"12\". Maybe \"12 g\"?",
                "Fron: 12 g|item must be a piece of a kit such as Front: 4 g, a sleeve, or the name of a club, found"
                        + " \"Fron: 12 g\". Maybe \"Front: 12 g\"?",
                "Two degre|item must be a piece of a kit such as Front: 4 g, a sleeve, or the name of a club, found"
                        + " \"Two degre\". Maybe \"Two degree\"?",
                "Putty|item must be a piece of a kit such as Front: 4 g, a sleeve, or the name of a club, found \"Putty\"."
            })
    void wrongItem_isAProblemAtItsCell(String item, String text) {
        assertEquals(List.of("Stock!A2: " + text), stock(item, 1).problems());
    }

    @Test
    void wrongCounts_areProblemsAtTheirCells() {
        assertEquals(
                List.of("Stock!B2: count must be 0 to 10000, found -1. Maybe 1?"),
                stock("12 g", -1).problems());
        assertEquals(
                List.of("Stock!B2: count must be a whole number, found 1.5."),
                stock("12 g", 1.5).problems());
        assertEquals(
                List.of("Stock!B2: count must be filled in, found nothing; expected how many are on the bench,"
                        + " without those in the clubs today. All golfers of the book share them, and"
                        + " whatever comes out of their clubs."),
                stock("12 g", null).problems());
    }

    @Test
    void sameItemAgain_isAProblemInWhicheverForm() {
        assertEquals(
                List.of("Stock!A3: item must have one row only, found \"front 12 g\" again, first in Stock!A2."),
                stock("Front: 12", 1)
                        .set("Stock!A3", "front 12 g")
                        .set("Stock!B3", 2)
                        .set("Stock!A4", "12 g")
                        .set("Stock!B4", 2)
                        .problems());
    }

    @Test
    void itemThatIsASleeveAndAClub_isAProblem() {
        assertEquals(
                List.of("Stock!A2: item must name one thing, found \"Two degree\", which is a sleeve and a club;"
                        + " expected different names for the two."),
                stock("Two degree", 1).set("Clubs!C4", "Two degree").problems());
    }

    @Test
    void itemOfAKitWhoseMassIsWrong_isNotBlamed() {
        assertEquals(
                List.of("Weights!D5"), KitBook.sound().set("Weights!D5", "x").problemCells());
    }
}
