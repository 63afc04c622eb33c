package org.bagwright.sessions;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;

/** Who hit the shots of a file: as a row, the lines above the table, or the person says, or the book's only golfer. */
final class GolferNames {
    private final List<Golfer> golfers;
    private final Optional<Golfer> given;
    private final boolean oneStranger;

    /**
     * The golfers of a book.
     *
     * @param given who hit the shots where the file does not say it
     * @param inFile every name that the file has
     */
    GolferNames(Book book, Optional<String> given, Set<String> inFile) throws WrongOptionException {
        this.golfers = book.golfers();
        Optional<Golfer> found = given.flatMap(this::called);
        if (given.isPresent() && found.isEmpty()) {
            throw new WrongOptionException("--golfer must be a golfer of the book, found \"" + given.get() + "\"."
                    + CloseNames.maybe(given.get(), names()));
        }
        this.given = found;
        this.oneStranger =
                inFile.size() == 1 && called(inFile.iterator().next()).isEmpty();
    }

    private List<String> names() {
        return golfers.stream().map(Golfer::name).toList();
    }

    private Optional<Golfer> called(String name) {
        return golfers.stream()
                .filter(golfer -> CloseNames.key(golfer.name()).equals(CloseNames.key(name)))
                .findFirst();
    }

    /**
     * Who hit a shot.
     *
     * @param written the name in the file, empty where it has none
     */
    Golfer of(String written) throws BadRowException {
        Optional<Golfer> found = called(written);
        if (written.isEmpty() || (found.isEmpty() && given.isPresent() && oneStranger)) {
            return given.or(() -> golfers.size() == 1 ? Optional.of(golfers.get(0)) : Optional.empty())
                    .orElseThrow(() -> new BadRowException("the row does not say who hit the shot; give --golfer "
                            + ListText.quotedOneOf(names()) + "."));
        }
        if (found.isEmpty()) {
            throw new BadRowException("the book has no golfer " + ShotCell.quoted(written) + "."
                    + CloseNames.maybe(written, names()) + (given.isPresent() ? "" : " Say who it is with --golfer."));
        }
        if (given.isPresent() && !given.equals(found)) {
            throw new BadRowException(
                    "hit by " + found.get().name() + ", not by " + given.get().name() + ".");
        }
        return found.get();
    }
}
