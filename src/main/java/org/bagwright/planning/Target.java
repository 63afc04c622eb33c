package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bagwright.files.ContentWriter;
import org.bagwright.files.KeptFile;
import org.bagwright.files.OpenElsewhereException;
import org.bagwright.files.SafeFile;

/** Where a result goes. */
public final class Target {
    private Target() {}

    /**
     * Tells before any work is done whether a result can go there, as far as that can be known.
     *
     * @throws WorkbookProblems if a book stands there that is open in another program
     * @throws IOException if nothing can be written there, saying why in plain words
     */
    public static void requireWritable(Path target) throws WorkbookProblems, IOException {
        try {
            new SafeFile(target).requireWritable();
        } catch (OpenElsewhereException open) {
            throw new WorkbookProblems(List.of(open.found()));
        }
    }

    /** Writes a result whole and keeps what stands in its place. */
    static Optional<KeptFile> write(Path target, ContentWriter writer) throws WorkbookProblems, IOException {
        try {
            return new SafeFile(target).replace(writer);
        } catch (OpenElsewhereException open) {
            throw new WorkbookProblems(List.of(open.found()));
        }
    }
}
