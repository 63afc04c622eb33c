package org.bagwright.workbook;

import org.bagwright.domain.Message;

/** A file that is no readable .xlsx workbook; says in plain words why. */
final class UnreadableBookException extends Exception {
    private final transient Message found;

    UnreadableBookException(Message found) {
        super(found.cell() + ": " + found.text());
        this.found = found;
    }

    Message found() {
        return found;
    }
}
