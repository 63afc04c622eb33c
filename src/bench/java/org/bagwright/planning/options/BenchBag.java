package org.bagwright.planning.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.bagwright.ClubSketch;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.workbook.read.BookReader;

/** The first bag of a book with so many bends allowed that it has 1,500 options or more. */
public final class BenchBag {
    private static final int FEWEST_OPTIONS = 1500;

    private final Book book;

    private BenchBag(Book book) {
        this.book = book;
    }

    /** Reads the book and widens the bends of its clubs until the options are enough. */
    public static BenchBag read(Path file) {
        Book read = BookReader.read(file).book().orElseThrow();
        for (double limitDeg = 0.5; limitDeg <= 4; limitDeg += 0.5) {
            BenchBag bag = new BenchBag(widened(read, limitDeg));
            if (bag.options() >= FEWEST_OPTIONS) {
                return bag;
            }
        }
        throw new IllegalStateException("too few options in " + file);
    }

    /** Fits the golfer and computes every option. */
    public List<BagOptions> bags() {
        return new BagMaker(book).bags().bags();
    }

    public int clubs() {
        return book.clubs().size();
    }

    public int options() {
        return bags().stream()
                .flatMap(bag -> bag.slots().stream())
                .mapToInt(slot -> slot.options().size())
                .sum();
    }

    private static Book widened(Book read, double limitDeg) {
        Golfer golfer = read.golfers().get(0);
        List<Club> clubs = read.bagOf(golfer).stream()
                .map(club -> club.sleeve().isPresent() ? club : bendable(club, limitDeg))
                .toList();
        return new Book(
                read.settings(),
                read.aims(),
                List.of(golfer),
                clubs,
                read.equipment(),
                new Book.Measurements(read.shots(), List.of(), Set.of()),
                List.of(),
                List.of());
    }

    private static Club bendable(Club club, double limitDeg) {
        return ClubSketch.like(club).bends(new BendRange(limitDeg, 0.5)).made();
    }
}
