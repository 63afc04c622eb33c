package org.bagwright.domain.option;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.units.Checks;

/**
 * How many of one item a whole plan may take, over all golfers of the book.
 *
 * @param item the item
 * @param available those on the bench and those in the clubs today
 */
public record StockLimit(StockItem item, int available) {

    public StockLimit {
        Checks.that(available >= 0, "what is available must be 0 or more");
    }

    /** The limits of a book. A piece taken out of a club goes to the bench, so those in the clubs today count too. */
    public static List<StockLimit> of(Book book) {
        return book.stock().stream()
                .map(item -> new StockLimit(item, item.count() + takenToday(book, item)))
                .toList();
    }

    private static int takenToday(Book book, StockItem item) {
        return book.clubs().stream()
                .filter(Club::inBag)
                .mapToInt(club -> item.takenBy(
                        club,
                        book.kitOf(club)
                                .flatMap(kit ->
                                        kit.weighting(club.today().weighting().orElseThrow()))))
                .sum();
    }
}
