package org.bagwright.domain.gauge;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;

/**
 * A book with what its gauge readings say.
 *
 * @param book what was read
 * @param repeatability how well the gauge repeats a reading
 * @param clubs the clubs that have readings, in the order of the book
 * @param corrections the cells whose numbers the readings determine, in the order of the book
 * @param messages everything a person should know
 */
public record GaugedBook(
        Book book,
        Repeatability repeatability,
        List<GaugedClub> clubs,
        List<Correction> corrections,
        List<Message> messages) {
    public GaugedBook {
        clubs = List.copyOf(clubs);
        corrections = List.copyOf(corrections);
        messages = List.copyOf(messages);
    }
}
