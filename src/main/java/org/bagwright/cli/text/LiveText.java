package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.CellChange;
import org.bagwright.planning.Planning;

/** What taking the live choices as today's set-up has written. */
public record LiveText(Book book, Planning.Written written) {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (written.changes().isEmpty() && written.notWritten().isEmpty()) {
            lines.add("The live choices are already today's set-up: the sheet Clubs does not change.");
            return lines;
        }
        lines.add("The live choices are now today's set-up. Written in the result:");
        for (CellChange change : written.changes()) {
            lines.add("  " + change.cell() + " " + change.what() + ": " + change.before() + " -> " + change.after());
        }
        lines.add((book.shots().isEmpty()
                        ? "Swingweights read on a scale count"
                        : "Shots and swingweights read on a scale count")
                + " only if they were taken with this set-up. Take them again where a club was set differently.");
        return lines;
    }
}
