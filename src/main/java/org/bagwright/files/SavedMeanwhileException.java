package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Path;
import org.bagwright.domain.book.Message;

/** A file was saved after it was read and before the result made from it was written. Nothing was written. */
public final class SavedMeanwhileException extends IOException {
    private static final long serialVersionUID = 1;
    private final transient Path file;

    SavedMeanwhileException(Path file) {
        super(file + " was saved by another program while bagwright was at work");
        this.file = file;
    }

    /** What to do, where it happens again and again. */
    public Message found() {
        return Message.problem(
                String.valueOf(file.getFileName()),
                "another program has saved this book again and again while bagwright was at work, so nothing was"
                        + " written. Wait until it is no longer saved, then try again.");
    }
}
