package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
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
            problems.addAll(limitProblems(club));
        }
        return problems;
    }

    /** Limits of a club that its golfer's limits leave no value for. */
    private List<Message> limitProblems(Club club) {
        Limits own = club.freedom().limits();
        return book.golfers().stream()
                .filter(golfer -> golfer.name().equalsIgnoreCase(club.golfer()))
                .flatMap(golfer -> own.orElse(golfer.limits()).contradictions().stream())
                .filter(both -> own.all().contains(both.get(0)) != own.all().contains(both.get(1)))
                .map(both -> limitProblem(club, both.get(0), both.get(1)))
                .toList();
    }

    private Message limitProblem(Club club, StatedLimit least, StatedLimit most) {
        boolean ownLeast = club.freedom().limits().all().contains(least);
        StatedLimit stated = ownLeast ? least : most;
        StatedLimit other = ownLeast ? most : least;
        return Message.problem(
                stated.cell(),
                stated.kind().label().toLowerCase(Locale.ROOT) + " of " + club.name() + " leaves no gap with "
                        + other.kind().label().toLowerCase(Locale.ROOT) + " of " + club.golfer() + " (" + other.cell()
                        + "), found " + shown(stated) + " against " + shown(other) + ".");
    }

    private String shown(StatedLimit limit) {
        LengthUnit distance = book.settings().units().distance();
        return Numbers.trimmed(distance.fromM(limit.valueMeasureUnits()), 2) + " " + distance.label();
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
