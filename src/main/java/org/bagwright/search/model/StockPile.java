package org.bagwright.search.model;

import java.util.List;
import java.util.stream.IntStream;

/**
 * An item of the stock as the search sees it.
 *
 * @param item its place in the stock
 * @param available how many all bags together may take
 */
public record StockPile(int item, int available) {

    /** The whole stock. */
    public static List<StockPile> all(List<Integer> available) {
        return IntStream.range(0, available.size())
                .mapToObj(item -> new StockPile(item, available.get(item)))
                .toList();
    }
}
