package org.bagwright.domain;

import java.util.List;

/**
 * A book with every option of every club.
 *
 * @param book what was read
 * @param bags the bags with their options, in the order of the golfers
 * @param messages everything a person should know about it
 */
public record ChartedBook(Book book, List<BagOptions> bags, List<Message> messages) {
    public ChartedBook {
        bags = List.copyOf(bags);
        messages = List.copyOf(messages);
    }
}
