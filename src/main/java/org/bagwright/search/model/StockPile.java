package org.bagwright.search.model;

/**
 * An item of the stock as the search sees it.
 *
 * @param item its place in the stock
 * @param available how many all bags together may take
 */
public record StockPile(int item, int available) {}
