package org.bagwright.domain.session;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;

/**
 * What one file of shots holds, read for a book.
 *
 * @param file the file
 * @param headings which headings were used, and as what
 * @param notUsed the other headings, each with a guess where there is one
 * @param shots its good shots, each with its set-up and its line as its cell
 * @param left one message for each row that is left out, with its line as its cell
 */
public record SessionShots(
        String file, List<UsedHeading> headings, List<String> notUsed, List<Shot> shots, List<Message> left) {
    public SessionShots {
        headings = List.copyOf(headings);
        notUsed = List.copyOf(notUsed);
        shots = List.copyOf(shots);
        left = List.copyOf(left);
    }

    /**
     * A heading that is used.
     *
     * @param heading the heading as the file has it
     * @param column the column of the sheet Shots that it fills
     * @param unit the unit of its numbers; empty for words and dates
     * @param unitFrom what tells the unit, such as "heading"; empty for words and dates
     */
    public record UsedHeading(String heading, String column, Optional<String> unit, String unitFrom) {}
}
