package org.bagwright.sessions;

/** An option cannot be carried out for this book and these files; the message says why, to a person. */
public final class WrongOptionException extends Exception {
    private static final long serialVersionUID = 1;

    public WrongOptionException(String message) {
        super(message);
    }
}
