package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bagwright.files.ContentWriter;
import org.bagwright.files.KeptFile;
import org.bagwright.files.OpenElsewhereException;
import org.bagwright.files.SafeFile;
import org.bagwright.files.SourceFile;

/**
 * Where a result goes.
 *
 * @param file the file that takes it
 */
public record Target(Path file) {

    /**
     * Checks before any work is done whether a result can go there, as far as that can be known.
     *
     * @throws WorkbookProblems if a book of that name is open in another program
     * @throws IOException if nothing can be written there, saying why in plain words
     */
    public void requireWritable() throws WorkbookProblems, IOException {
        try {
            new SafeFile(file).requireWritable();
        } catch (OpenElsewhereException open) {
            throw new WorkbookProblems(List.of(open.found()));
        }
    }

    /** Writes a whole result and keeps the file that it replaces. */
    Optional<KeptFile> write(ContentWriter writer) throws WorkbookProblems, IOException {
        try {
            return new SafeFile(file).replace(writer);
        } catch (OpenElsewhereException open) {
            throw new WorkbookProblems(List.of(open.found()));
        }
    }

    /** The same for a result made from a book, unless the book was saved since. */
    Optional<KeptFile> write(ContentWriter writer, SourceFile source) throws WorkbookProblems, IOException {
        try {
            return new SafeFile(file).replace(writer, source);
        } catch (OpenElsewhereException open) {
            throw new WorkbookProblems(List.of(open.found()));
        }
    }
}
