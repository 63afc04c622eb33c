package org.bagwright.domain.session;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.units.Units;

/**
 * What came of adding files of shots to a book.
 *
 * @param units the units of the book
 * @param files what each file held
 * @param added the shots that the book did not have
 * @param already the shots that the book had already
 * @param learnt the headings that the book remembers from now on; empty where that does not change
 * @param messages what could not be written, and what a person should know
 */
public record AddedShots(
        Units units,
        List<SessionShots> files,
        List<Shot> added,
        List<Shot> already,
        Optional<String> learnt,
        List<Message> messages) {
    public AddedShots {
        files = List.copyOf(files);
        added = List.copyOf(added);
        already = List.copyOf(already);
        messages = List.copyOf(messages);
    }

    /** Whether the book changes. */
    public boolean isAny() {
        return !added.isEmpty() || learnt.isPresent();
    }
}
