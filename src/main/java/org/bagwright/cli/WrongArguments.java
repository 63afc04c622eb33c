package org.bagwright.cli;

/** The arguments cannot be carried out; the message says why, to a person. */
final class WrongArguments extends Exception {
    private static final long serialVersionUID = 1;

    WrongArguments(String message) {
        super(message);
    }
}
