package org.bagwright.workbook.cells;

import java.nio.file.Path;
import org.bagwright.domain.book.Message;

/** A file that is no readable .xlsx workbook; says in plain words why. */
public final class UnreadableBookException extends Exception {
    static final String SAVE_AS = " Open it in a spreadsheet program and save it as an .xlsx workbook.";

    private static final long serialVersionUID = 1;
    private final transient Message found;

    public UnreadableBookException(Path file, String text) {
        this(Message.problem(String.valueOf(file.getFileName() == null ? file : file.getFileName()), text));
    }

    private UnreadableBookException(Message found) {
        super(found.cell() + ": " + found.text());
        this.found = found;
    }

    public static UnreadableBookException damaged(Path file) {
        return new UnreadableBookException(
                file,
                "the file is damaged or incomplete, or is not an .xlsx workbook; use an"
                        + " earlier copy, or repair it in a spreadsheet program.");
    }

    static UnreadableBookException otherKind(Path file) {
        return new UnreadableBookException(file, "this is a file of another kind, not an .xlsx workbook." + SAVE_AS);
    }

    /** @param wrong what is wrong with the part, such as "is empty" */
    static UnreadableBookException damagedPart(Path file, String part, String wrong) {
        return new UnreadableBookException(
                file,
                "the file is damaged: its part " + part + " " + wrong
                        + "; use an earlier copy, or repair it in a spreadsheet program.");
    }

    public Message found() {
        return found;
    }
}
