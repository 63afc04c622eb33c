package org.bagwright.domain.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** One line a cause with every cell it holds for, what decides first. */
class MessagesTest {
    private static Message assumed(int row, String golfer, String club, String detail) {
        return Message.assumed("Clubs!C" + row, Wording.ofClub("Assumed: ", golfer, club, detail, "."));
    }

    private static List<String> lines(Message... messages) {
        return new Messages(List.of(messages))
                .inOrder().stream()
                        .map(message -> message.where() + ": " + message.text())
                        .toList();
    }

    @Tag("analytic")
    @Test
    void oneCause_isOneLineWithItsCells() {
        assertEquals(
                List.of("Clubs!C6:C8, C11: Assumed: Driver (1 g), 3 wood, 5 wood and 7 iron."),
                lines(
                        assumed(6, "Ann", "Driver", "1 g"),
                        assumed(7, "Ann", "3 wood", ""),
                        assumed(8, "Ann", "5 wood", ""),
                        assumed(11, "Ann", "7 iron", "")));
    }

    @Tag("analytic")
    @Test
    void severalGolfers_areNamed() {
        assertEquals(
                List.of("Clubs!C6, C9: Assumed: Driver of Ann and Driver of Bob."),
                lines(assumed(6, "Ann", "Driver", ""), assumed(9, "Bob", "Driver", "")));
    }

    @Tag("analytic")
    @Test
    void manyPlaces_areCounted() {
        Message[] many = new Message[12];
        for (int index = 0; index < many.length; index++) {
            many[index] = assumed(6 + index, "Ann", "club " + index, "");
        }
        assertEquals(
                List.of(
                        "Clubs!C6:C17: Assumed: club 0, club 1, club 2, club 3, club 4, club 5, club 6, club 7 and 4 more."),
                lines(many));
    }

    @Tag("analytic")
    @Test
    void problems_keepALineEachAndComeFirst() {
        assertEquals(
                List.of("A!A1: wrong", "A!A2: wrong", "A!A3: odd", "Clubs!C6: Assumed: Driver.", "A!A4: to do"),
                lines(
                        Message.note("A!A4", "to do"),
                        assumed(6, "Ann", "Driver", ""),
                        Message.warning("A!A3", "odd"),
                        Message.problem("A!A1", "wrong"),
                        Message.problem("A!A2", "wrong")));
    }

    @Tag("regression")
    @Test
    void order_isTheSameAgain() {
        List<Message> once = new Messages(List.of(
                        assumed(6, "Ann", "Driver", ""),
                        Message.warning("A!A3", "odd"),
                        assumed(7, "Ann", "3 wood", "")))
                .inOrder();
        assertEquals(once, new Messages(once).inOrder());
    }
}
