package org.bagwright.domain.option;

import java.util.List;

/**
 * All bags of a book with all options, ready to be searched.
 *
 * @param bags the bags, in the order of the golfers
 * @param stock what all bags share
 */
public record BookOptions(List<BagOptions> bags, List<StockLimit> stock) {

    public BookOptions {
        bags = List.copyOf(bags);
        stock = List.copyOf(stock);
    }
}
