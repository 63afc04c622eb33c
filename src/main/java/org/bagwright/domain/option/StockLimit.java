package org.bagwright.domain.option;

import org.bagwright.domain.book.StockItem;
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
}
