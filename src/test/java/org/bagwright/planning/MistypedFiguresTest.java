package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures that are possible by themselves but off what the rest of the book tells: found by the hunt through numbers. */
@Tag("regression")
class MistypedFiguresTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "TRIO, Golfers, Golfer A, Driver speed, 105.6, Driver speed far from the head speed of the golfer's shots",
        "TRIO, Golfers, Golfer A, Shaft lean, -3, Maybe 3?",
        "TRIO, Golfers, Golfer A, Shaft lean, 15, Maybe it is mistyped.",
        "TRIO, Shots, 4 hybrid, Head speed, 92.5, Head speed that does not fit the golfer's other clubs",
        "TRIO, Shots, Driver, Carry, 243, The two shots with a club differ much",
        "TRIO, Clubs, 5 wood, Gap wish, 50, Gap wish that no options of its club and the next come near",
        "TRIO, Clubs, 5 wood, Lie target, 64, Lie target that no option of its club comes near",
        "TRIO, Clubs, 5 wood, Golfer lie, 64, Golfer lie far from the lie of the club",
        "TRIO, Clubs, Driver, Loft target, 16, the nearest has 12",
        "TRIO, Clubs, Driver, Carry target, 260, Carry target that no option of its club comes near",
        "FULL, Clubs, 7 iron, Head mass, 300, Swingweight target that no option of its club comes near",
        "FULL, Clubs, 7 iron, Loft, 35.8, Loft off the steps of the clubs next to it",
    })
    void figureOffTheRest_isToldAtItsRow(
            ShippedBook demo, String sheet, String name, String column, double typed, String words) throws IOException {
        EditedDemo book = new EditedDemo(demo, folder);
        String cell = book.put(sheet, name, column, typed);
        List<Message> found = book.messages().stream()
                .filter(message -> message.severity() == Message.Severity.WARNING)
                .filter(message -> message.text().contains(words))
                .toList();
        assertEquals(1, found.size(), () -> messages(book));
        assertTrue(row(found.get(0).cells()).contains(row(List.of(cell)).get(0)), found::toString);
    }

    private static List<String> row(List<String> cells) {
        return cells.stream().map(cell -> cell.replaceAll("![A-Z]+", "!")).toList();
    }

    private static String messages(EditedDemo book) {
        try {
            return book.messages().toString();
        } catch (IOException none) {
            return none.toString();
        }
    }

    /** One of ten clubs with shots: the golfer's other clubs tell how far its launch flies. */
    @ParameterizedTest
    @CsvSource({"Driver, 244", "5 iron, 186", "7 iron, 128"})
    void carryOffItsLaunch_isTold(String club, double yards) throws IOException {
        EditedDemo book = new EditedDemo(ShippedBook.FULL, folder);
        book.put("Shots", club, "Carry", yards);
        assertTrue(book.messages().stream()
                .anyMatch(message -> message.text().startsWith("Carry far from what its launch")
                        && message.text().contains(club)));
    }
}
