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
            lines.add("The live choices are today's set-up already: the sheet Clubs stays as it is.");
            return lines;
        }
        lines.add("The live choices are today's set-up now. Written in the result:");
        for (CellChange change : written.changes()) {
            lines.add("  " + change.cell() + " " + change.what() + ": " + change.before() + " -> " + change.after());
        }
        lines.add((book.shots().isEmpty()
                        ? "Swingweights read on a scale hold"
                        : "Shots and swingweights read on a scale hold")
                + " only if they were taken with this set-up: take them again where a club was set otherwise.");
        return lines;
    }
}
