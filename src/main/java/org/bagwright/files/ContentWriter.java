package org.bagwright.files;

import java.io.IOException;
import java.io.OutputStream;

/** Writes a file's content. */
@FunctionalInterface
public interface ContentWriter {
    /** Writes everything; the caller closes the stream. */
    void writeTo(OutputStream out) throws IOException;
}
