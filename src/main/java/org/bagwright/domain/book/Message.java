package org.bagwright.domain.book;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/**
 * Something a person should know, and where it comes from.
 *
 * @param cells every cell it holds for, each {@code Sheet!C7}, or a sheet's name where no cell is meant; one or more
 * @param severity how much it matters
 * @param wording what it is, in plain words
 * @param heading the column that is meant in the rows of the cells; empty where the cells are meant as they are
 */
public record Message(List<String> cells, Severity severity, Wording wording, Optional<String> heading) {
    /** How much a message matters, in the order in which messages are shown. */
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
        Checks.that(!cells.isEmpty(), "a message needs a cell");
        cells = List.copyOf(cells);
        cells.forEach(cell -> Checks.named(cell, "cell"));
    }

    public Message(String cell, Severity severity, String text) {
        this(List.of(cell), severity, Wording.plain(text), Optional.empty());
    }

    public static Message problem(String cell, String text) {
        return new Message(cell, Severity.PROBLEM, text);
    }

    public static Message warning(String cell, String text) {
        return new Message(cell, Severity.WARNING, text);
    }

    /** A warning that may hold for other places of the book too. */
    public static Message warning(String cell, Wording wording) {
        return new Message(List.of(cell), Severity.WARNING, wording, Optional.empty());
    }

    public static Message check(String cell, String text) {
        return new Message(cell, Severity.CHECK, text);
    }

    public static Message note(String cell, String text) {
        return new Message(cell, Severity.NOTE, text);
    }

    /** A note that may hold for other places of the book too. */
    public static Message note(String cell, Wording wording) {
        return new Message(List.of(cell), Severity.NOTE, wording, Optional.empty());
    }

    public static Message assumed(String cell, String text) {
        return new Message(cell, Severity.ASSUMED, text);
    }

    /** An assumed value that other places of the book may share. */
    public static Message assumed(String cell, Wording wording) {
        return new Message(List.of(cell), Severity.ASSUMED, wording, Optional.empty());
    }

    /** The same message, for this column of the rows that its cells are in. */
    public Message in(String columnHeading) {
        return new Message(cells, severity, wording, Optional.of(columnHeading));
    }

    /** The same message at other cells, which are meant as they are. */
    public Message at(List<String> others) {
        return new Message(others, severity, wording, Optional.empty());
    }

    /** The first cell it holds for. */
    public String cell() {
        return cells.get(0);
    }

    /** All its cells as a person reads them. */
    public String where() {
        return new CellRanges(cells).text();
    }

    /** What it is, in plain words. */
    public String text() {
        return wording.text();
    }
}
