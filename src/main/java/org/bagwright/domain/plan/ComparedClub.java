package org.bagwright.domain.plan;

import java.util.List;
import java.util.stream.Stream;

/**
 * A club of one golfer in several books.
 *
 * @param club its name
 * @param missingIn the books that have no such club of his
 * @param setUp how it is built and set today, every field
 * @param today what it does today
 * @param planned how it is set, and what it does, as planned
 */
public record ComparedClub(
        String club,
        List<String> missingIn,
        List<ComparedField> setUp,
        List<ComparedField> today,
        List<ComparedField> planned) {

    public ComparedClub {
        missingIn = List.copyOf(missingIn);
        setUp = List.copyOf(setUp);
        today = List.copyOf(today);
        planned = List.copyOf(planned);
    }

    /** Whether anything about it differs. */
    public boolean differs() {
        return !missingIn.isEmpty()
                || Stream.of(setUp, today, planned).flatMap(List::stream).anyMatch(ComparedField::differs);
    }
}
