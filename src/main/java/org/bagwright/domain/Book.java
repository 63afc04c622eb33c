package org.bagwright.domain;

import java.util.List;
import java.util.Optional;

/**
 * A fitter's book: every input sheet as records, already checked against each other.
 *
 * @param settings what holds for the whole book
 * @param aims how much each measure counts
 * @param golfers the golfers, in the order of the book
 * @param clubs the clubs, in the order of the book
 * @param sleeves the sleeves
 * @param shots the shots
 * @param messages what reading found: warnings and assumed values
 */
public record Book(
        BookSettings settings,
        Aims aims,
        List<Golfer> golfers,
        List<Club> clubs,
        List<Sleeve> sleeves,
        List<Shot> shots,
        List<Message> messages) {
    public Book {
        golfers = List.copyOf(golfers);
        clubs = List.copyOf(clubs);
        sleeves = List.copyOf(sleeves);
        shots = List.copyOf(shots);
        messages = List.copyOf(messages);
    }

    /** The clubs of one golfer by slot. */
    public List<Club> bagOf(Golfer golfer) {
        return clubs.stream()
                .filter(club -> club.golfer().equalsIgnoreCase(golfer.name()))
                .sorted(java.util.Comparator.comparingInt(Club::slot))
                .toList();
    }

    /** The sleeve with this name, letter case apart. */
    public Optional<Sleeve> sleeve(String name) {
        return sleeves.stream()
                .filter(sleeve -> sleeve.name().equalsIgnoreCase(name))
                .findFirst();
    }
}
