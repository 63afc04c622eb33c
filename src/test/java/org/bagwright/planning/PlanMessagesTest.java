package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.plan.BookResult;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says: one line a cause, in one order, and what makes most of the penalty. */
@Tag("regression")
class PlanMessagesTest {
    @TempDir
    private Path folder;

    private static BookResult plan(EditedDemo book) throws Exception {
        return new Planning(1, 30).plan(book.write());
    }

    @Test
    void teamDemo_hasOneLineACause() throws Exception {
        List<Message> messages = plan(new EditedDemo(ShippedBook.TEAM, folder)).messages();
        Set<String> causes = new HashSet<>();
        for (Message message : messages) {
            assertTrue(causes.add(message.wording().lead() + message.wording().tail()), message::toString);
        }
        assertTrue(messages.size() <= 20, () -> messages.size() + " lines");
    }

    @Test
    void severities_neverGoBack() throws Exception {
        List<Message.Severity> found = plan(new EditedDemo(ShippedBook.FULL, folder)).messages().stream()
                .map(Message::severity)
                .toList();
        assertEquals(found.stream().sorted().toList(), found);
    }

    /** C2 read on a scale against a target of D1: 9 points, which no piece of a kit can give an iron. */
    @Test
    void measureThatMakesMostOfThePenalty_isNamedWithWhetherAnyChoiceHelps() throws Exception {
        EditedDemo book = new EditedDemo(ShippedBook.FULL, folder);
        book.put("Clubs", "7 iron", "Swingweight", "C2");
        book.put("Start", "Plan for", "Value", "best guess");
        BookResult result = plan(book);
        double points =
                result.bags().get(0).terms(result.bags().get(0).planned()).points(Measure.SWINGWEIGHT);
        Message said = result.messages().get(0);
        assertTrue(said.text().startsWith(Math.round(points) + " of "), said::text);
        assertTrue(said.text().contains(" points are swingweight, and no weighting brings it "), said::text);
        assertTrue(said.text().contains("closer: 7 iron ("), said::text);
    }

    @Test
    void smallPenalty_namesNothing() throws Exception {
        assertTrue(plan(new EditedDemo(ShippedBook.TRIO, folder)).messages().stream()
                .noneMatch(message -> message.text().contains(" points of miss are ")));
    }
}
