package org.bagwright.domain.book;

import org.bagwright.domain.units.Checks;

/**
 * Something a person should know, and where it comes from.
 *
 * @param cell {@code Sheet!C7}, or a sheet's name where no cell is meant
 * @param severity how much it matters
 * @param text what it is, in plain words
 */
public record Message(String cell, Severity severity, String text) {
    /** How much a message matters. */
    public enum Severity {
        /** Something wrong: nothing is planned until it is fixed. */
        PROBLEM,
        /** Something that may surprise. */
        WARNING,
        /** A sheet or column that is missing; its usual values are used, so by itself it stops nothing. */
        MISSING,
        /** A value that the book does not give and that matters. */
        ASSUMED,
        /** A rule of the game to check with the governing body. */
        CHECK,
        /** Something to know at the bench. */
        NOTE
    }

    public Message {
        Checks.named(cell, "cell");
        Checks.named(text, "text");
    }

    public static Message problem(String cell, String text) {
        return new Message(cell, Severity.PROBLEM, text);
    }

    public static Message warning(String cell, String text) {
        return new Message(cell, Severity.WARNING, text);
    }

    public static Message check(String cell, String text) {
        return new Message(cell, Severity.CHECK, text);
    }

    public static Message note(String cell, String text) {
        return new Message(cell, Severity.NOTE, text);
    }

    public static Message assumed(String cell, String text) {
        return new Message(cell, Severity.ASSUMED, text);
    }
}
