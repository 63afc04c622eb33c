package org.bagwright.sessions;

/** A row of a file cannot be used; the message says why, to a person. */
final class BadRowException extends Exception {
    private static final long serialVersionUID = 1;

    BadRowException(String message) {
        super(message);
    }
}
