package org.bagwright.workbook.cells;

import org.bagwright.domain.book.Message;

/** A file that is no readable .xlsx workbook; says in plain words why. */
public final class UnreadableBookException extends Exception {
    private final transient Message found;

    UnreadableBookException(Message found) {
        super(found.cell() + ": " + found.text());
        this.found = found;
    }

    public Message found() {
        return found;
    }
}
