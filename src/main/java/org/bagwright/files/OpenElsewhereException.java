package org.bagwright.files;

import java.io.IOException;
import org.bagwright.domain.book.Message;

/** A book that should be replaced is open in another program. Nothing was written. */
public final class OpenElsewhereException extends IOException {
    private static final long serialVersionUID = 1;
    private final transient Message found;

    OpenElsewhereException(String name, String text) {
        super(name + ": " + text);
        this.found = Message.problem(name, text);
    }

    /** What to say about the book. */
    public Message found() {
        return found;
    }
}
