package org.bagwright.sessions;

import java.util.List;
import org.bagwright.domain.book.Message;

/** A file of shots that cannot be used as a whole; says in plain words why. */
public final class SessionFileException extends Exception {
    private static final long serialVersionUID = 1;
    private final transient List<Message> found;

    SessionFileException(String place, String text) {
        this(List.of(Message.problem(place, text)));
    }

    SessionFileException(List<Message> found) {
        super(found.get(0).cell() + ": " + found.get(0).text());
        this.found = List.copyOf(found);
    }

    /** The problems. */
    public List<Message> found() {
        return found;
    }
}
