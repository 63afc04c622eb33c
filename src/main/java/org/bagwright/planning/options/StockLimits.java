package org.bagwright.planning.options;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.StockLimit;

/** How many of each item a whole plan may take. */
final class StockLimits {

    private StockLimits() {}

    /** Those on the bench and those in the clubs today, since a piece taken out of a club goes to the bench. */
    static List<StockLimit> of(Book book) {
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
