package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.bagwright.files.SavedMeanwhileException;
import org.bagwright.files.SourceFile;

/**
 * A book that another program may save while a command works on it. The result then belongs to a book that is no longer
 * there, so the work is done again with what was saved.
 *
 * @param book the book
 * @param err takes a line each time
 */
record SavedMeanwhile(Path book, PrintWriter err) {
    private static final int MOST_TRIES = 3;

    /** What a command makes of a book, up to the written result. */
    interface Work<T> {
        T from(SourceFile book) throws Exception;
    }

    /**
     * Does the work, at most three times.
     *
     * @throws SavedMeanwhileException if the book was saved each time
     */
    <T> T repeat(Work<T> work) throws Exception {
        for (int tries = 1; ; tries++) {
            SourceFile source = new SourceFile(book);
            try {
                return work.from(source);
            } catch (SavedMeanwhileException saved) {
                if (tries == MOST_TRIES) {
                    throw saved;
                }
                err.println("bagwright: " + book + " was saved meanwhile; starting again with what it holds now");
                source.awaitQuiet();
            }
        }
    }
}
