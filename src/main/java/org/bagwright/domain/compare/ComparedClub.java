package org.bagwright.domain.compare;

import java.util.ArrayList;
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
 * @param sessions what was hit with it on each day, what was predicted, and how it came out
 */
public record ComparedClub(
        String club,
        List<String> missingIn,
        List<ComparedField> setUp,
        List<ComparedField> today,
        List<ComparedField> planned,
        List<ComparedField> sessions) {

    public ComparedClub {
        missingIn = List.copyOf(missingIn);
        setUp = List.copyOf(setUp);
        today = List.copyOf(today);
        planned = List.copyOf(planned);
        sessions = List.copyOf(sessions);
    }

    /**
     * A club as several books have it.
     *
     * @param books the names of the books
     * @param clubs what each of them says
     */
    static ComparedClub of(String club, List<String> books, List<ClubOfBook> clubs) {
        List<String> missing = new ArrayList<>();
        for (int book = 0; book < books.size(); book++) {
            if (clubs.get(book).club().isEmpty()) {
                missing.add(books.get(book));
            }
        }
        List<ComparedField> setUp = new ArrayList<>(
                ComparedField.of(clubs.stream().map(ClubOfBook::setUp).toList()));
        setUp.add(numbered(
                "table of its sleeve",
                clubs.stream().map(ClubOfBook::sleeveTable).toList()));
        setUp.add(numbered(
                "table of its weights", clubs.stream().map(ClubOfBook::kitTable).toList()));
        return new ComparedClub(
                club,
                missing,
                setUp,
                ComparedField.of(clubs.stream().map(ClubOfBook::today).toList()),
                ComparedField.of(clubs.stream().map(ClubOfBook::planned).toList()),
                ComparedField.of(clubs.stream().map(ClubOfBook::sessions).toList()));
    }

    /** A sleeve and a kit count with all that their sheets say of them, under a number for each way of saying it. */
    private static ComparedField numbered(String what, List<String> tables) {
        List<String> distinct = tables.stream().distinct().toList();
        return new ComparedField(
                what,
                "",
                tables.stream()
                        .map(table -> table.isEmpty() ? "" : "no. " + (distinct.indexOf(table) + 1))
                        .toList());
    }

    /** Whether anything about it differs. */
    public boolean differs() {
        return !missingIn.isEmpty()
                || Stream.of(setUp, today, planned, sessions)
                        .flatMap(List::stream)
                        .anyMatch(ComparedField::differs);
    }
}
