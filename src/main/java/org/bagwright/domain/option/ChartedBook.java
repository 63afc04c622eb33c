package org.bagwright.domain.option;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;

/**
 * A book with every option of every club.
 *
 * @param book what was read
 * @param options the bags with their options, and the stock that they share
 * @param messages everything a person should know about it
 */
public record ChartedBook(Book book, BookOptions options, List<Message> messages) {
    public ChartedBook {
        messages = List.copyOf(messages);
    }

    /** The bags with their options, in the order of the golfers. */
    public List<BagOptions> bags() {
        return options.bags();
    }
}
