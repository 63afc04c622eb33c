package org.bagwright.planning;

import org.bagwright.domain.option.ChartedBook;
import org.bagwright.planning.options.BagMaker;

/**
 * A book with all its options, ready to be planned.
 *
 * @param book the book
 * @param maker what computed the options, with what it learned of the golfers
 */
public record Charted(ChartedBook book, BagMaker maker) {}
