package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.ClubGeometry;
import org.bagwright.geometry.SoleForm;

/** What no reader of cells can see: clubs whose numbers are each possible but not together. */
record ClubProblems(Book book) {

    /** A problem for every club of which no geometry can be made. */
    List<Message> all() {
        List<Message> problems = new ArrayList<>();
        for (Club club : book.clubs()) {
            SoleForm.problemOf(club)
                    .or(() -> headProblem(club))
                    .ifPresent(text -> problems.add(Message.problem(club.cell(), club.name() + ": " + text)));
        }
        return problems;
    }

    private Optional<String> headProblem(Club club) {
        if (ClubGeometry.isPossible(club, book.sleeveOf(club))) {
            return Optional.empty();
        }
        return Optional.of("no head can have this loft and lie, found "
                + Numbers.trimmed(club.head().loftDeg()) + " and "
                + Numbers.trimmed(club.head().lieDeg()) + " degrees stated at "
                + club.head().statedAt().map(mark -> "setting " + mark).orElse("the bore")
                + "; expected numbers that the sleeve's bend can reach.");
    }
}
